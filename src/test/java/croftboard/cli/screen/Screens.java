package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.ledger.share.GrowerSeason;
import croftboard.measure.Ratio;
import croftboard.need.CheapestPrices;
import croftboard.need.ScaledRecipe;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Every screen there is, by name. */
final class Screens {
    private Screens() { }

    static Shown shown(Book book, WeekPlan plan) {
        return new Shown(book, plan, Optional.of(2), false, LocalDateTime.of(2027, 8, 13, 9, 0),
                "every must holds and every figure is confirmed.");
    }

    static Map<String, Consumer<Page>> of(Book book) {
        Map<String, Consumer<Page>> all = new LinkedHashMap<>();
        Shown shown = shown(book, SamplePlan.complete(book));
        all.put("headline", page -> Headline.print(shown(book, SamplePlan.incomplete(book)), page));
        for (Screen screen : new Screen[] {new MenuScreen(shown), new OrdersScreen(shown), new PrepScreen(shown),
            new MoneyScreen(shown), new CoverageScreen(shown), new ShareScreen(shown), new ProofScreen(shown)}) {
            all.put(screen.name(), screen::print);
        }
        all.put("scale", new ScaleScreen(book, ScaledRecipe.tree(book, book.recipe("lentil-bake"),
                ScaledRecipe.batchesForPortions(book.recipe("lentil-bake"), Ratio.of(120))),
                new CheapestPrices(book, SamplePlan.WEEK), "for 120 portions")::print);
        SharesShown shares = LedgerSample.shares(book);
        all.put("ledger-share", new LedgerShareScreen(shares)::print);
        all.put("ledger-share-by", new ShareGroups(shares)::print);
        all.put("ledger-share-trail", new ShareTrail(shares)::print);
        all.put("food-cost", new FoodCostScreen(LedgerSample.cost(), Optional.empty())::print);
        all.put("grower-season", new GrowerScreen(book, GrowerSeason.of(LedgerSample.ledger(book), "hollow-brook",
                LocalDate.of(2027, 8, 1), LocalDate.of(2027, 8, 14)))::print);
        return all;
    }

    static String text(Consumer<Page> screen, int width) {
        Page page = new Page(width, false);
        screen.accept(page);
        return page.toString();
    }
}
