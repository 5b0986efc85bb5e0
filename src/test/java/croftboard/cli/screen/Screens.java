package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Learned;
import croftboard.cli.SamplePlan;
import croftboard.forecast.Backtest;
import croftboard.forecast.Figures;
import croftboard.forecast.Learner;
import croftboard.forecast.Learning;
import croftboard.forecast.Prior;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.CheapestPrices;
import croftboard.need.ScaledRecipe;
import croftboard.plan.WeekPlan;
import croftboard.plan.look.LookingBack;
import croftboard.plan.look.PastWeeks;
import croftboard.plan.look.SoldDays;
import croftboard.plan.look.WeekForecast;
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
        learned(book, all);
        return all;
    }

    /** Twelve invented weeks, then the sample plan's. */
    private static void learned(Book book, Map<String, Consumer<Page>> all) {
        IsoWeek week = SamplePlan.WEEK;
        SoldDays days = SoldDays.of(PastWeeks.ledger(PastWeeks.of(12)), book, w -> Optional.empty(), PastWeeks.FIRST.monday(), week.monday());
        Learning learning = new Learner(Prior.of(book), days.curve()).learn(days.all(), week);
        Learned now = Figures.of(learning, days.all(), 1);
        all.put("learn", new LearnScreen(book, now, learning)::print);
        all.put("forecast", new ForecastScreen(book, WeekForecast.of(book, week, Optional.of(SamplePlan.complete(book))),
                Optional.of("2027-W33@1"))::print);
        all.put("backtest", new BacktestScreen(new Backtest(Prior.of(book), days.curve(), days.all()).over(week.plusWeeks(-2),
                week.plusWeeks(-1)))::print);
        all.put("look-back", new LookBackScreen(book, LookingBack.of(book, SamplePlan.complete(book), PastWeeks.ledger(PastWeeks.lookedAt())),
                "2027-W33@1, posted")::print);
    }

    static String text(Consumer<Page> screen, int width) {
        Page page = new Page(width, false);
        screen.accept(page);
        return page.toString();
    }
}
