package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions about a plan of the small kitchen, as a person asks them. */
class QuestionCommandsTest {
    private static final String WEEK = "2027-W33";
    @TempDir
    static Path folder;
    private static Desk desk;
    private static Book book;
    private static WeekPlan plan;

    @BeforeAll
    static void keepPlans() {
        desk = new Desk(folder, Desk.always(true));
        book = BookReader.read(desk.book).orElseThrow();
        plan = MadePlan.of(book, SamplePlan.WEEK);
        new PlanStore(desk.book).writeDraft(plan);
        new PlanStore(desk.book).writeDraft(plan);
    }

    private static Map<String, String> plansOnDisk() {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(desk.book.resolve("plans"))) {
            for (Path p : all.filter(Files::isRegularFile).toList()) {
                files.put(p.toString(), Files.readString(p));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    private static String filledSlot() {
        return plan.menu().stream().filter(r -> r.recipe().isPresent()).findFirst().orElseThrow().slot();
    }

    private static String other() {
        return "lentil-bake".equals(plan.choices().get("tue/hot-main-1")) ? "penne-bake" : "lentil-bake";
    }

    private static String ordered() {
        return plan.orders().get(0).vendor() + "/" + plan.orders().get(0).lines().get(0).item();
    }

    private static Desk.Run asked(String question) {
        return desk.run(question.replace("SLOT", filledSlot()).replace("OTHER", other()).replace("ORDER", ordered())
                .replace("PICTURE", folder.resolve("p.svg").toString()).split(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"compare 2027-W33@1 2027-W33@2", "why 2027-W33", "why 2027-W33 SLOT", "why 2027-W33 ORDER",
        "why-not 2027-W33 tue/hot-main-1 OTHER", "why-not 2027-W33 mill-run-depot/carrot", "exposure 2027-W33..2027-W33 --runs 3 --picture PICTURE", "clash 2027-W33", "worth 2027-W33",
        "exposure 2027-W33 --runs 8 --picture PICTURE"})
    void question_isAnswered_inEachFormat_andNoPlanOnDiskMoves(String question) {
        Map<String, String> before = plansOnDisk();
        for (String format : new String[] {"", " --format csv", " --format json"}) {
            Desk.Run run = asked(question + format);
            assertThat(run.code()).as(run.err()).isZero();
            assertThat(run.out()).isNotBlank();
        }
        assertThat(plansOnDisk()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "compare 2027-W33@1 2027-W33@9 | there is no plan 2027-W33@9", "why 2027-W50 | there is no plan of 2027-W50",
        "why 2027-W33 mon/nowhere | no place mon/nowhere", "why 2027-W33 hollow-brok/carrot | did you mean hollow-brook?",
        "why 2027-W33 hollow-brook/carot | did you mean carrot?", "why 2027-W33 soup | DAY/LINE",
        "why-not 2027-W33 mon/hot-main-1 penne-bak | did you mean penne-bake?", "why-not 2027-W33 mon/nowhere penne-bake | no place",
        "why-not 2027-W33 mon/hot-main-1 | RECIPE", "why-not 2027-W33 hollow-brok | did you mean hollow-brook?",
        "clash 2027-W33 --keep mon/hot-main-1 | DAY/LINE=DISH", "clash 2027-W33 --keep mon/nowhere=penne-bake | no slot mon/nowhere",
        "exposure 2027-W33 --runs 0 | 1 to", "exposure 2027-W35..2027-W33 | the earlier week first", "exposure soon | is no plan",
        "worth 2027-W33 --now yesterday | a date and a time"})
    void badInput_isOneLine_exitTwo(String question, String says) {
        Desk.Run run = asked(question);
        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.WRONG_USE);
        assertThat(run.err()).contains(says);
        assertThat(run.err().strip().lines().count()).as(run.err()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void exposure_sameSeed_sameBytes_pictureAmongThem() throws IOException {
        Path a = folder.resolve("a.svg");
        Path b = folder.resolve("b.svg");
        Desk.Run one = desk.run("exposure", WEEK, "--runs", "12", "--seed", "5", "--format", "csv", "--picture", a.toString());
        Desk.Run two = desk.run("exposure", WEEK, "--runs", "12", "--seed", "5", "--format", "csv", "--picture", b.toString());
        assertThat(two.out()).isEqualTo(one.out());
        assertThat(Files.readString(b)).isEqualTo(Files.readString(a)).startsWith("<svg");
        assertThat(one.out().lines().filter(l -> l.startsWith("run,")).count()).isEqualTo(12);
    }

    /** The same dish twice within the gap: both and the gap are named. */
    @Test
    void keptTwiceTooNear_clashes_exitThree() {
        Desk.Run run = desk.run("clash", WEEK, "--keep", "mon/hot-main-1=lentil-bake", "--keep", "tue/hot-main-1=lentil-bake");
        if (book.kitchen().gapDays() > 1) {
            assertThat(run.code()).as(run.err()).isEqualTo(Exit.INCOMPLETE);
            assertThat(run.out()).contains("is kept on mon/hot-main-1", "is kept on tue/hot-main-1", "A dish comes back after");
        }
    }
}
