package croftboard.cli;

import croftboard.cli.screen.CoverageScreen;
import croftboard.cli.screen.EachWeekScreen;
import croftboard.cli.screen.MenuScreen;
import croftboard.cli.screen.OrdersScreen;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.PrepScreen;
import croftboard.cli.screen.RotationHeadline;
import croftboard.cli.screen.RotationMoneyScreen;
import croftboard.cli.screen.RotationProofScreen;
import croftboard.cli.screen.RotationShown;
import croftboard.cli.screen.RotationWeeksScreen;
import croftboard.cli.screen.Screen;
import croftboard.cli.screen.ShareScreen;
import croftboard.cli.screen.VarietyScreen;
import croftboard.plan.Rotation;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One rotation, some of its parts, one format. */
final class RotationPrint {
    private RotationPrint() { }

    /** What a person wants to see of a rotation just made. */
    static List<Screen> ofANewOne(RotationShown shown) {
        return List.of(new RotationWeeksScreen(shown), new VarietyScreen(shown), new RotationMoneyScreen(shown),
                new RotationProofScreen(shown));
    }

    /** The parts of a plan, and the weeks and variety beside the menu. */
    static List<Screen> of(RotationShown shown, Part part) {
        return switch (part) {
            case ALL -> List.of(new RotationWeeksScreen(shown), new EachWeekScreen(shown, MenuScreen::new),
                    new VarietyScreen(shown), new EachWeekScreen(shown, OrdersScreen::new), new RotationMoneyScreen(shown),
                    new RotationProofScreen(shown));
            case MENU -> List.of(new EachWeekScreen(shown, MenuScreen::new), new VarietyScreen(shown));
            case ORDERS -> List.of(new EachWeekScreen(shown, OrdersScreen::new));
            case PREP -> List.of(new EachWeekScreen(shown, PrepScreen::new));
            case COVERAGE -> List.of(new EachWeekScreen(shown, CoverageScreen::new));
            case SHARE -> List.of(new EachWeekScreen(shown, ShareScreen::new));
            case MONEY -> List.of(new RotationMoneyScreen(shown), new RotationWeeksScreen(shown));
            case PROOF -> List.of(new RotationProofScreen(shown));
        };
    }

    static String text(RotationShown shown, List<Screen> screens, Page page) {
        RotationHeadline.print(shown, page);
        screens.forEach(s -> s.print(page));
        return page.toString();
    }

    static String json(RotationShown shown, List<Screen> screens) {
        Rotation r = shown.rotation();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("weeks_span", r.span());
        all.put("version", shown.version());
        all.put("complete", r.complete());
        all.put("valueCents", r.value());
        all.put("boundCents", r.proof().bestAtAll());
        all.put("steps", r.inputs().steps() > 0 ? Optional.of(r.inputs().steps()) : Optional.empty());
        all.put("verdict", shown.verdict());
        all.put("localShare", BigDecimal.valueOf(r.share().low().times(10_000).floor(), 4));
        screens.forEach(s -> all.put(s.name(), JsonText.objects(s.rows())));
        return JsonText.of(all);
    }
}
