package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Fault;
import croftboard.book.Learned;
import croftboard.book.ManagersFigure;
import croftboard.book.Seasons;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.WeekRange;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearnedFileTest {
    private static final IsoWeek WEEK = new IsoWeek(2027, 33);
    static final Learned LEARNED = new Learned(3, new IsoWeek(2027, 32), "0123456789abcdef".repeat(4), 140, 33,
            new TreeMap<>(Map.of("hot-main-1", new Learned.Line(Ratio.of(241, 1000), 72, new TreeMap<>(Map.of(DayOfWeek.MONDAY,
                    new Learned.Day(Ratio.of(433, 10), 12, 5), DayOfWeek.FRIDAY, new Learned.Day(Ratio.of(60), 12, 0)))),
                    "gone-line", new Learned.Line(Ratio.of(1, 4), 1, Map.of()))),
            new TreeMap<>(Map.of("lentil-bake", new Learned.Dish(Ratio.of(1123, 1000), 30, 9), "gone-dish", new Learned.Dish(Ratio.of(1), 0, 0))),
            List.of(new Seasons.DemandFactor(new WeekRange(33, 33), Ratio.of(12, 10))));

    static final ManagersFigure OWN = new ManagersFigure(WEEK, "hot-main-1", DayOfWeek.MONDAY, Ratio.of(75), Optional.of(Ratio.of(41)),
            "a \"fair\", C:\\rain");

    private static BookReading with(String path, String text) {
        SortedMap<String, byte[]> files = new TreeMap<>(SmallKitchen.files(SmallKitchen.FOLDER));
        files.put(path, text.getBytes(StandardCharsets.UTF_8));
        return BookReader.readFiles(files);
    }

    @Test
    void whatIsWritten_isReadBackEqual_alsoWhereTheBookHasChanged() {
        assertThat(with(LearnedText.FILE, LearnedText.of(LEARNED)).orElseThrow().seasons().learned()).contains(LEARNED);
    }

    @Test
    void learnedFigures_holdInsteadOfTheBooks_andTheManagersInsteadOfBoth() {
        Seasons plain = SmallKitchen.files(SmallKitchen.FOLDER).isEmpty() ? null : BookReader.read(SmallKitchen.FOLDER).orElseThrow().seasons();
        var book = with(LearnedText.FILE, LearnedText.of(LEARNED)).orElseThrow();
        Seasons learned = book.seasons();
        assertThat(plain.expected("hot-main-1", DayOfWeek.MONDAY, WEEK)).isEqualTo(Ratio.of(38).times(Ratio.of(11, 10)));
        assertThat(learned.expected("hot-main-1", DayOfWeek.MONDAY, WEEK)).isEqualTo(Ratio.of(433, 10).times(Ratio.of(12, 10)));
        assertThat(learned.expected("hot-main-1", DayOfWeek.TUESDAY, WEEK)).as("not learned").isEqualTo(Ratio.of(40).times(Ratio.of(12, 10)));
        assertThat(learned.expected("hot-main-1", DayOfWeek.TUESDAY, new IsoWeek(2027, 31))).as("the manager's factor").isEqualTo(Ratio.of(44));
        assertThat(learned.variation("hot-main-1")).isEqualTo(Ratio.of(241, 1000));
        assertThat(learned.variation("cold-salad-1")).isEqualTo(plain.variation("cold-salad-1"));
        assertThat(learned.draw(book.recipe("lentil-bake"))).isEqualTo(Ratio.of(1123, 1000));
        assertThat(learned.draw(book.recipe("penne-bake"))).isEqualTo(Ratio.ONE);
        Seasons set = with(LearnedText.OVERRIDES, LearnedText.of(OWN)).orElseThrow().seasons();
        assertThat(set.overrides()).containsExactly(OWN);
        assertThat(set.expected("hot-main-1", DayOfWeek.MONDAY, WEEK)).isEqualTo(Ratio.of(75));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"version: 3|version: three|learned.yaml:4", "2027-W32|2027-W61|is no week", "0123456789abcdef|xyz|no fingerprint",
        "draw: 1.123|draw: 7|learned.yaml", "mon:|moon:|learned.yaml", "portions: 43.3|portions: -1|learned.yaml", "ran_out: 33|ranout: 33|ran_out"})
    void whatIsWrong_isTold_withItsPlace(String text, String wrong, String told) {
        List<Fault> faults = with(LearnedText.FILE, LearnedText.of(LEARNED).replace(text, wrong)).faultsFound();
        assertThat(faults).isNotEmpty();
        assertThat(faults.toString()).contains("seasons/learned.yaml").contains(told);
    }

    @Test
    void figuresOfTheManagers_forOneDayTwice_orOfNoLine_areFaults() {
        String one = "- {week: 2027-W33, line: hot-main-1, day: fri, portions: 60, reason: \"a\"}\n";
        assertThat(with(LearnedText.OVERRIDES, one + one).faultsFound().toString()).contains("two figures of the manager's", "overrides.yaml:2");
        assertThat(with(LearnedText.OVERRIDES, one.replace("hot-main-1", "hot-main-7")).faultsFound().toString()).contains("hot-main-7");
        assertThat(with(LearnedText.OVERRIDES, one.replace(", reason: \"a\"", "")).faultsFound().toString()).contains("reason");
    }
}
