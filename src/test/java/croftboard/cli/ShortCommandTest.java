package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Repairs of the small kitchen, from the shell to the plan on disk. */
class ShortCommandTest {
    private static final IsoWeek WEEK = new IsoWeek(2027, 33);
    private static final String TUESDAY = "2027-08-17T07:00";
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void planned() {
        desk = new Desk(folder, Wiring.tools().planner(), new Checking(), new Desk.Stop());
        assertThat(desk.run("plan", "2027-W33", "--steps", "200").code()).isZero();
    }

    private Desk.Run brokenAt(String now, String... sentences) {
        String[] all = Stream.concat(Stream.of("short", "2027-W33", "--steps", "50", "--now", now),
                Stream.of(sentences).flatMap(s -> Stream.of("--change", s))).toArray(String[]::new);
        return desk.run(all);
    }

    private List<String> onDisk() throws IOException {
        try (Stream<Path> all = Files.walk(desk.book.resolve("plans"))) {
            return all.filter(Files::isRegularFile).sorted().map(p -> p + " " + size(p)).toList();
        }
    }

    private static long size(Path p) {
        try {
            return Files.size(p);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private WeekPlan plan(int version) {
        return new PlanStore(desk.book).read(WEEK, version).fold(r -> r.plan(), a -> null, r -> null);
    }

    @Test
    void nobodyWorksFromAPlan_exit2_saysPostFirst() {
        Desk.Run run = brokenAt(TUESDAY, "closed thu");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines()).singleElement().asString().contains("croftboard post 2027-W33").contains("2027-W33@1");
    }

    @Test
    void repair_isADraft_postedBecomesTheWorkingOne_andASecondCarriesTheFirst() {
        desk.run("post", "2027-W33");
        Desk.Run run = brokenAt(TUESDAY, "closed thu");
        assertThat(run.code()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("At once\n").contains("Settled").contains("Check: every figure and every must holds");
        assertThat(run.out().strip().lines().reduce((a, b) -> b)).hasValueSatisfying(l -> assertThat(run.out().strip())
                .endsWith("."));
        assertThat(new PlanStore(desk.book).postedVersion(WEEK)).hasValue(1);
        assertThat(plan(2).inputs().revision()).hasValueSatisfying(r -> {
            assertThat(r.of()).isEqualTo(1);
            assertThat(r.changes()).containsExactly("closed thu");
        });
        assertThat(desk.run("show", "2027-W33@2", "proof").out()).contains("every figure and every must holds");
        assertThat(desk.run("post", "2027-W33@2").code()).isZero();
        Desk.Run second = brokenAt("2027-08-18T07:00", "closed fri");
        assertThat(second.code()).as(second.out() + second.err()).isZero();
        assertThat(second.out()).contains("Check: every figure and every must holds");
        assertThat(plan(3).inputs().revision().orElseThrow().changes()).containsExactly("closed thu", "closed fri");
        assertThat(plan(3).menu()).noneMatch(r -> r.days().stream().anyMatch(d -> d.getDayOfWeek().getValue() == 4
                || d.getDayOfWeek().getValue() == 5) && r.slot().startsWith("fri"));
    }

    @Test
    void dryRun_writesNothing() throws IOException {
        desk.run("post", "2027-W33");
        List<String> before = onDisk();
        assertThat(desk.run("short", "2027-W33", "--steps", "50", "--now", TUESDAY, "--change", "closed thu", "--dry-run").code())
                .isZero();
        assertThat(onDisk()).isEqualTo(before);
    }

    @Test
    void sameSteps_sameAnswer() {
        desk.run("post", "2027-W33");
        Desk.Run first = desk.run("short", "2027-W33", "--steps", "50", "--now", TUESDAY, "--change", "closed thu", "--dry-run");
        Desk.Run second = desk.run("short", "2027-W33", "--steps", "50", "--now", TUESDAY, "--change", "closed thu", "--dry-run");
        assertThat(second.out()).isEqualTo(first.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"nobody/carrot got 2", "hollow-brook/carrot got 999", "closed someday", "carrot lost 5000 lb",
        "hollow-brook late mon until tue", "(((", "batch house-marinara sat lost"})
    void whatCannotBeSo_exit2_oneLine_nothingWritten(String sentence) throws IOException {
        desk.run("post", "2027-W33");
        List<String> before = onDisk();
        Desk.Run run = brokenAt(TUESDAY, sentence);
        assertThat(run.code()).as(run.err()).isEqualTo(2);
        assertThat(run.err().lines()).singleElement().asString().contains("->");
        assertThat(run.out()).isEmpty();
        assertThat(onDisk()).isEqualTo(before);
    }

    @Test
    void contradiction_exit2_nothingWritten() {
        desk.run("post", "2027-W33");
        assertThat(brokenAt(TUESDAY, "hollow-brook out", "hollow-brook/carrot got 1").code()).isEqualTo(2);
        assertThat(brokenAt(TUESDAY).code()).isEqualTo(2);
        assertThat(brokenAt("2027-09-01T07:00", "closed thu").err()).contains("is over");
        assertThat(plan(2)).isNull();
    }

    @Test
    void twoTerminals_oneWins_theOtherIsTold() {
        desk.run("post", "2027-W33");
        PlanStore store = new PlanStore(desk.book);
        PlanStore.Seen seen = store.seen(WEEK);
        assertThat(store.writeRevision(plan(1), seen)).hasValue(2);
        assertThat(store.writeRevision(plan(1), seen)).isEqualTo(OptionalInt.empty());
        assertThat(plan(3)).isNull();
        store.post(WEEK, 2);
        assertThat(store.writeRevision(plan(1), new PlanStore.Seen(OptionalInt.of(1), 2))).isEqualTo(OptionalInt.empty());
    }

    @Test
    void repairOfAVersionThatIsNoLongerPosted_cannotBePosted() {
        desk.run("post", "2027-W33");
        brokenAt(TUESDAY, "closed thu");
        brokenAt(TUESDAY, "closed fri");
        assertThat(desk.run("post", "2027-W33@3").code()).isZero();
        Desk.Run run = desk.run("post", "2027-W33@2");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("people work from version 3");
    }

    @Test
    void help_namesEverySentence() {
        Desk.Run help = desk.runAsTyped("short", "--help");
        assertThat(help.out()).contains("VENDOR/ITEM got PACKS [DAY]").contains("batch RECIPE DAY lost");
    }

    @Test
    void keptDish_staysInPlanAndRepair_untilReleased() {
        String dish = plan(1).choices().get("fri/hot-main-1");
        assertThat(desk.run("keep", "2027-W33", "fri/hot-main-1", "--who", "the manager", "--why", "members asked").code()).isZero();
        desk.run("plan", "2027-W33", "--steps", "100", "--seed", "9");
        assertThat(plan(2).inputs().kept()).containsEntry("fri/hot-main-1", dish);
        desk.run("post", "2027-W33@2");
        brokenAt(TUESDAY, "closed thu");
        assertThat(plan(3).choices()).containsEntry("fri/hot-main-1", dish);
        assertThat(desk.run("release", "2027-W33", "fri/hot-main-1", "--who", "the manager", "--why", "no more").code()).isZero();
        assertThat(desk.run("release", "2027-W33", "fri/hot-main-1", "--who", "x", "--why", "y").code()).isEqualTo(2);
        desk.run("plan", "2027-W33", "--steps", "100", "--seed", "9");
        assertThat(plan(4).inputs().kept()).isEmpty();
    }

    @Test
    void order_livesFromDraftedToConfirmed() throws IOException {
        WeekPlan.Order order = plan(1).orders().get(0);
        String day = order.delivery().toString();
        assertThat(desk.run("sent", "2027-W33", order.vendor()).code()).as("nothing is posted").isEqualTo(2);
        desk.run("post", "2027-W33");
        assertThat(desk.run("sent", "2027-W33", order.vendor() + "x").code()).isEqualTo(2);
        assertThat(desk.run("sent", "2027-W33", order.vendor(), "--delivery", day).code()).isZero();
        Path reply = folder.resolve("reply.txt");
        Files.writeString(reply, "All of it will come.\n");
        Desk.Run run = desk.run("confirmed", "2027-W33", order.vendor(), reply.toString(), "--delivery", day);
        assertThat(run.code()).isZero();
        assertThat(Files.readString(desk.book.resolve("plans/2027-W33/reply-" + order.vendor() + "-1.txt"))).startsWith("All of it");
        assertThat(new croftboard.plan.file.WeekNotes(desk.book).orders(WEEK).steps()).hasSize(2);
        assertThat(new croftboard.plan.file.WeekNotes(desk.book).orders(WEEK).doubts(plan(1), true, order.cutOff().plusHours(1)).notSent())
                .noneMatch(o -> o.vendor().equals(order.vendor()) && o.delivery().equals(order.delivery()));
    }
}
