package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.cli.SampleAnswers;
import croftboard.cli.SamplePlan;
import croftboard.measure.Ratio;
import croftboard.need.CheapestPrices;
import croftboard.need.ScaledRecipe;
import croftboard.plan.WeekPlan;
import croftboard.plan.ask.Comparison;
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
        all.put("not-sent", page -> Headline.notSent(SampleChanges.doubtful(book), page));
        all.put("headline", page -> Headline.print(shown(book, SamplePlan.incomplete(book)), page));
        for (Screen screen : new Screen[] {new MenuScreen(shown), new OrdersScreen(shown), new PrepScreen(shown),
            new MoneyScreen(shown), new CoverageScreen(shown), new ShareScreen(shown), new ProofScreen(shown)}) {
            all.put(screen.name(), screen::print);
        }
        all.put("scale", new ScaleScreen(book, ScaledRecipe.tree(book, book.recipe("lentil-bake"),
                ScaledRecipe.batchesForPortions(book.recipe("lentil-bake"), Ratio.of(120))),
                new CheapestPrices(book, SamplePlan.WEEK), "for 120 portions")::print);
        answers(book).forEach((name, screen) -> all.put(name, screen::print));
        return all;
    }

    private static Map<String, Screen> answers(Book book) {
        String plan = "2027-W33@2";
        Map<String, Screen> all = new LinkedHashMap<>();
        all.put("compare", new ComparisonScreen(book, "2027-W33@1", plan,
                Comparison.of(SamplePlan.complete(book), SampleAnswers.other(book))));
        all.put("why-dish", new WhyScreen(book, plan, SampleAnswers.whyDish(book)));
        all.put("why-order", new WhyScreen(book, plan, SampleAnswers.whyOrder(book)));
        all.put("why-week", new WhyScreen(book, plan, SampleAnswers.whyWeek()));
        all.put("why-not", new WhyNotScreen(book, plan, "Lentil bake on tue/hot-main-1", SampleAnswers.whyNot(book)));
        all.put("why-not-cannot", new WhyNotScreen(book, plan, "Carrot slaw on tue/hot-main-1", SampleAnswers.cannot()));
        all.put("clash", new ClashScreen(book, plan, SampleAnswers.clash()));
        all.put("worth", new WorthScreen(book, plan, SampleAnswers.worth()));
        all.put("changes", new ChangesScreen(SampleChanges.repaired(book)));
        all.put("changes-nothing", new ChangesScreen(SampleChanges.nothing(book)));
        all.put("surplus", SampleChanges.surplus(book));
        all.put("exposure", new ExposureScreen(book, SampleAnswers.exposure()));
        return all;
    }

    static String text(Consumer<Page> screen, int width) {
        Page page = new Page(width, false);
        screen.accept(page);
        return page.toString();
    }
}
