package croftboard.cli;

import croftboard.cli.screen.CoverageScreen;
import croftboard.cli.screen.MenuScreen;
import croftboard.cli.screen.MoneyScreen;
import croftboard.cli.screen.OrdersScreen;
import croftboard.cli.screen.PrepScreen;
import croftboard.cli.screen.ProofScreen;
import croftboard.cli.screen.Screen;
import croftboard.cli.screen.ShareScreen;
import croftboard.cli.screen.Shown;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** The parts of a plan, each a screen of its own. */
enum Part {
    MENU(MenuScreen::new),
    ORDERS(OrdersScreen::new),
    PREP(PrepScreen::new),
    MONEY(MoneyScreen::new),
    COVERAGE(CoverageScreen::new),
    SHARE(ShareScreen::new),
    PROOF(ProofScreen::new),
    ALL(shown -> {
        throw new IllegalStateException("all parts are no part");
    });

    private final transient Function<Shown, Screen> screen;

    Part(Function<Shown, Screen> screen) {
        this.screen = screen;
    }

    List<Screen> screens(Shown shown) {
        return this != ALL ? List.of(screen.apply(shown))
                : List.of(values()).stream().filter(p -> p != ALL).map(p -> p.screen.apply(shown)).toList();
    }

    /** What a person wants to see of a plan just made: what is broken of the promises, not what is kept. */
    static List<Screen> ofANewPlan(Shown shown) {
        return List.of(new MenuScreen(shown), new OrdersScreen(shown), MoneyScreen.brief(shown),
                CoverageScreen.brokenOnly(shown), ShareScreen.sumsOnly(shown), new ProofScreen(shown));
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
