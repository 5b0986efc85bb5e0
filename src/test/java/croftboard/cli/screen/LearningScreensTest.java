package croftboard.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.forecast.Backtest;
import croftboard.forecast.Figures;
import croftboard.forecast.Learner;
import croftboard.forecast.Learning;
import croftboard.forecast.Prior;
import croftboard.measure.IsoWeek;
import croftboard.plan.look.LookingBack;
import croftboard.plan.look.PastWeeks;
import croftboard.plan.look.SoldDays;
import croftboard.plan.look.WeekForecast;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The screens of learning and looking back, as they stand in {@code src/test/resources/screens}: {@code -Dscreens=write}. */
class LearningScreensTest {
    private static final Path FOLDER = Path.of("src/test/resources/screens");
    private static final Map<String, Screen> SCREENS = screens(SamplePlan.book());

    /** Twelve invented weeks, then the sample plan's. */
    private static Map<String, Screen> screens(Book book) {
        IsoWeek week = SamplePlan.WEEK;
        SoldDays days = SoldDays.of(PastWeeks.ledger(PastWeeks.of(12)), book, w -> Optional.empty(), PastWeeks.FIRST.monday(), week.monday());
        Learning learning = new Learner(Prior.of(book), days.curve()).learn(days.all(), week);
        Map<String, Screen> all = new LinkedHashMap<>();
        all.put("learn", new LearnScreen(book, Figures.of(learning, days.all(), 1), learning));
        all.put("forecast", new ForecastScreen(book, WeekForecast.of(book, week, Optional.of(SamplePlan.complete(book))),
                Optional.of("2027-W33@1")));
        all.put("backtest", new BacktestScreen(new Backtest(Prior.of(book), days.curve(), days.all()).over(week.plusWeeks(-2),
                week.plusWeeks(-1))));
        all.put("look-back", new LookBackScreen(book, LookingBack.of(book, SamplePlan.complete(book), PastWeeks.ledger(PastWeeks.lookedAt())),
                "2027-W33@1, posted"));
        return all;
    }

    @ParameterizedTest
    @CsvSource({"learn,80", "learn,120", "forecast,80", "forecast,120", "backtest,80", "backtest,120", "look-back,80", "look-back,120"})
    void screen_isAsItWasRead(String name, int width) throws IOException {
        String text = Screens.text(SCREENS.get(name)::print, width);
        Path file = FOLDER.resolve(name + "-" + width + ".txt");
        if ("write".equals(System.getProperty("screens"))) {
            Files.writeString(file, text);
        }
        assertThat(text).isEqualTo(Files.readString(file));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 55, 80, 100, 132})
    void noLine_isWiderThanThePage(int width) {
        SCREENS.forEach((name, screen) -> assertThat(Screens.text(screen::print, width).lines()).as(name)
                .allMatch(line -> PlainText.width(line) <= width));
    }

    @Test
    void noSolverWord_isOnThem_andEveryTableHasRows() {
        SCREENS.forEach((name, screen) -> {
            String text = Screens.text(screen::print, 100).toLowerCase(Locale.ROOT).replace('\n', ' ');
            ScreensFitTest.SOLVER_WORDS.forEach(word -> assertThat(text).as(name).doesNotContain(word));
            assertThat(screen.rows().rows()).as(name).isNotEmpty();
        });
    }
}
