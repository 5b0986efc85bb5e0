package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.ledger.store.LedgerStore;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.plan.look.PastWeeks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ForecastCommandsTest {
    private static final IsoWeek WEEK = new IsoWeek(2027, 33);
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void sitDown() {
        desk = new Desk(folder, Desk.always(true));
    }

    private void book(int weeks) {
        try (LedgerStore ledger = LedgerStore.toWrite(desk.book.resolve("ledger.db").toString())) {
            ledger.book(PastWeeks.draft(PastWeeks.of(weeks)));
        }
    }

    private Book read() {
        return BookReader.read(desk.book).orElseThrow();
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void learn_writesWhatItLearned_andThePlanUsesIt() throws IOException {
        book(12);
        Book was = read();
        Ratio before = was.seasons().expected("hot-main-1", DayOfWeek.FRIDAY, WEEK);
        Desk.Run run = desk.run("learn", "all");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(flat(run.out())).contains("Learned through 2027-W32", "12 days, 3 ran out.", "Hot main, Fri: 52.0 ->",
                "Written: seasons/learned.yaml, version 1");
        Book now = read();
        assertThat(now.seasons().learned().orElseThrow().lines().get("hot-main-1").seen()).isEqualTo(72);
        assertThat(now.seasons().learned().orElseThrow().lines()).doesNotContainKey("standing-dip");
        assertThat(now.seasons().forecast("hot-main-1", DayOfWeek.FRIDAY, WEEK)).isGreaterThan(before);
        assertThat(now.fingerprint()).as("a plan tells by which figures it was made").isNotEqualTo(was.fingerprint());
        assertThat(Files.readString(desk.book.resolve("learned/1.yaml"))).isEqualTo(Files.readString(desk.book.resolve("seasons/learned.yaml")));
        assertThat(desk.run("check").code()).isZero();
    }

    @Test
    void learningAgain_saysNothingNew_andAnEarlierWeekIsAnotherVersion() throws IOException {
        book(12);
        desk.run("learn", "2027-W30");
        String first = Files.readString(desk.book.resolve("seasons/learned.yaml"));
        Desk.Run again = desk.run("learn", "2027-W30");
        assertThat(flat(again.out())).contains("Nothing new", "None of 5 % or more.");
        assertThat(Files.readString(desk.book.resolve("seasons/learned.yaml"))).isEqualTo(first);
        assertThat(flat(desk.run("learn", "all", "--dry-run").out())).contains("Nothing was written");
        assertThat(Files.readString(desk.book.resolve("seasons/learned.yaml"))).isEqualTo(first);
        desk.run("learn", "all");
        assertThat(read().seasons().learned().orElseThrow().version()).isEqualTo(2);
        assertThat(Files.readString(desk.book.resolve("learned/1.yaml"))).isEqualTo(first);
        desk.run("learn", "2027-W30");
        assertThat(Files.readString(desk.book.resolve("learned/3.yaml"))).isEqualTo(first.replace("version: 1", "version: 3"));
        try (Stream<Path> files = Files.list(desk.book.resolve("seasons"))) {
            assertThat(files.map(p -> p.getFileName().toString()).filter(n -> n.contains("tmp"))).isEmpty();
        }
    }

    @Test
    void withoutALedger_orWithoutSales_itSaysWhatToDo() {
        assertThat(desk.run("learn", "all").code()).isEqualTo(2);
        assertThat(desk.run("learn", "all").err()).contains("there is no ledger yet");
        book(0);
        assertThat(desk.run("learn", "all").err()).contains("no sale and no production sheet yet", "croftboard sold");
        assertThat(desk.run("learn", "2027-W32").err()).contains("nothing can be learned up to 2027-W32");
        assertThat(desk.run("learn", "august").err()).contains("'august' is no week", "or all");
        assertThat(desk.run("backtest").err()).contains("no sale and no production sheet yet");
    }

    @Test
    void forecast_withoutAPlan_andWithOne() {
        assertThat(flat(desk.run("forecast", "2027-W33").out())).contains("Nothing was learned yet", "There is no plan of 2027-W33 yet",
                "House dip");
        desk.run("plan", "2027-W33");
        Desk.Run run = desk.run("forecast", "2027-W33");
        assertThat(run.code()).isZero();
        assertThat(flat(run.out())).contains("Portions of 2027-W33@1", "Lentil bake", "the chance that more are asked for");
        assertThat(desk.run("forecast", "2027-W33", "--format", "csv").out()).startsWith("kind,line,dish,first,last,expected")
                .contains("dish,hot-main-1,lentil-bake,2027-08-16,2027-08-16,43.9,");
        assertThat(desk.run("forecast", "2027-W33@7").code()).isEqualTo(2);
    }

    @Test
    void aFigureOfTheManagers_isKeptWithItsReason_andHoldsInThePlan() throws IOException {
        Desk.Run run = desk.run("forecast", "2027-W33", "--set", "hot-main-1/fri=90", "--reason", "parade on \"Main\" Street");
        assertThat(run.err()).isEmpty();
        assertThat(flat(run.out())).contains("Written: seasons/overrides.yaml", "57 % above the forecast", "90*",
                "90 by the manager, the forecast says 57. \"parade on \"Main\" Street\"");
        assertThat(read().seasons().expected("hot-main-1", DayOfWeek.FRIDAY, WEEK)).isEqualTo(Ratio.of(90));
        assertThat(read().seasons().expected("hot-main-1", DayOfWeek.FRIDAY, WEEK.plusWeeks(1))).isNotEqualTo(Ratio.of(90));
        String text = Files.readString(desk.book.resolve("seasons/overrides.yaml"));
        assertThat(desk.run("forecast", "2027-W33", "--set", "hot-main-1/fri=60", "--reason", "x").err())
                .contains("has a figure of yours for that day already: 90");
        assertThat(Files.readString(desk.book.resolve("seasons/overrides.yaml"))).isEqualTo(text);
        assertThat(desk.run("forecast", "2027-W33", "--set", "hot-main-1/sat=40.5", "--reason", "rain").code()).isZero();
        assertThat(read().seasons().overrides()).hasSize(2);
        assertThat(desk.run("check").code()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"hot-main-1/fri=60||needs its reason", "hot-main-1/fri=60|' '|needs its reason", "hot-main-9/fri=60|x|no line 'hot-main-9'",
        "hot-main-1/fry=60|x|cannot be read", "hot-main-1/fri=-3|x|cannot be read", "hot-main-1/fri=1e9|x|cannot be read", "|x|of which figure?"})
    void figuresThatCannotBeRead_areRefused_andNothingIsWritten(String set, String reason, String told) {
        java.util.List<String> args = new java.util.ArrayList<>(java.util.List.of("forecast", "2027-W33"));
        if (set != null) {
            args.add("--set=" + set);
        }
        if (reason != null) {
            args.add("--reason=" + reason);
        }
        Desk.Run run = desk.run(args.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(told);
        assertThat(desk.book.resolve("seasons/overrides.yaml")).doesNotExist();
    }

    @Test
    void backtest_setsTheWaysSideBySide() {
        book(12);
        Desk.Run run = desk.run("backtest", "--weeks", "6");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(flat(run.out())).contains("Forecasts of 2027-W27 to 2027-W32", "72 days of a dish on a line", "same weekday, last week",
                "same weekday, mean of all before");
        assertThat(desk.run("backtest", "--weeks=200").code()).isEqualTo(2);
        assertThat(desk.run("backtest", "--format=csv").out()).startsWith("forecast,from,to,days,ran_out,sold,off_portions");
    }

    @Test
    void lookBack_takesThePostedPlan_andNeedsOne() {
        assertThat(desk.run("look-back", "2027-W33").err()).contains("croftboard plan 2027-W33");
        desk.run("plan", "2027-W33");
        assertThat(desk.run("look-back", "2027-W33").err()).contains("there is no ledger yet");
        book(1);
        assertThat(flat(desk.run("look-back", "2027-W33").out())).contains("2027-W33@1, never posted", "0 planned, 0 sold",
                "The register has no sale of a dish this week");
        desk.run("post", "2027-W33");
        try (LedgerStore ledger = LedgerStore.toWrite(desk.book.resolve("ledger.db").toString())) {
            ledger.book(PastWeeks.draft(PastWeeks.lookedAt()));
        }
        desk.run("plan", "2027-W33");
        Desk.Run run = desk.run("look-back", "2027-W33");
        assertThat(run.code()).isZero();
        assertThat(flat(run.out())).contains("2027-W33@1, posted", "at 12:45", "yours was closer", "got 94 % of what the recipe says",
                "raise price or cut cost", "70 % of an even share");
        assertThat(desk.run("look-back", "2027-W33", "--format", "json").out()).contains("\"kind\"");
    }

    /** Prints the screens: {@code -Dtest=ForecastCommandsTest#look -Dlook=true}. */
    @Test
    void look() {
        book(12);
        desk.run("learn", "2027-W28");
        StringBuilder all = new StringBuilder(desk.run("learn", "all").out());
        desk.run("plan", "2027-W33");
        all.append(desk.run("forecast", "2027-W33", "--set", "hot-main-1/fri=90", "--reason", "parade").out()).append(desk.run("backtest").out());
        if (Boolean.getBoolean("look")) {
            System.out.println(all);
        }
        assertThat(all.toString().lines()).allMatch(l -> l.length() <= 90);
    }
}
