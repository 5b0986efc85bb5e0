package croftboard.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanStoreTest {
    private static final IsoWeek WEEK = new IsoWeek(2027, 33);
    @TempDir
    private Path book;
    private PlanStore store;

    @BeforeEach
    void open() {
        store = new PlanStore(book);
    }

    private static WeekPlan complete(long seed) {
        WeekPlan p = RandomPlan.of(seed, WEEK);
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), p.menu(), p.batches(), p.orders(), p.needs(), p.flows(),
                p.surplus(), p.account(), p.promises(), p.share(), p.proof(), List.of(), p.swaps());
    }

    private static WeekPlan incomplete(long seed) {
        WeekPlan p = complete(seed);
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), p.menu(), p.batches(), p.orders(), p.needs(), p.flows(),
                p.surplus(), p.account(), p.promises(), p.share(), p.proof(),
                List.of(new WeekPlan.Missing("2.00 lb of carrots", "another dish")), p.swaps());
    }

    private static WeekPlan plan(PlanReading reading) {
        return reading.fold(PlanReading.Read::plan, a -> {
            throw new AssertionError(a.why());
        }, r -> {
            throw new AssertionError(r.why());
        });
    }

    private static String why(PlanReading reading) {
        return reading.fold(r -> "read", a -> "absent: " + a.why(), r -> "refused: " + r.why());
    }

    @Test
    void noPlanYet_nothingIsThereAndNothingIsMade() throws IOException {
        assertThat(store.current(WEEK)).isEmpty();
        assertThat(store.postedVersion(WEEK)).isEmpty();
        assertThat(store.versions(WEEK)).isEmpty();
        assertThat(why(store.read(WEEK))).startsWith("absent: ").contains("2027-W33");
        assertThat(why(store.read(WEEK, 2))).startsWith("absent: ").contains("2027-W33@2");
        try (var files = Files.list(book)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void writeDraft_countsUpAndKeepsEveryVersion() {
        for (int n = 1; n <= 12; n++) {
            assertThat(store.writeDraft(complete(n))).isEqualTo(n);
            assertThat(store.current(WEEK)).hasValue(n);
        }
        for (int n = 1; n <= 12; n++) {
            assertThat(plan(store.read(WEEK, n))).isEqualTo(complete(n));
        }
        assertThat(plan(store.read(WEEK))).isEqualTo(complete(12));
        assertThat(plan(store.read(PlanRef.parse("2027-W33@7").orElseThrow()))).isEqualTo(complete(7));
        assertThat(plan(store.read(PlanRef.parse("2027-W33").orElseThrow()))).isEqualTo(complete(12));
        assertThat(store.versions(WEEK)).extracting(PlanVersion::number)
                .isEqualTo(IntStream.rangeClosed(1, 12).boxed().toList());
        assertThat(store.versions(WEEK)).extracting(PlanVersion::status).containsOnly(PlanVersion.Status.DRAFTED);
    }

    @Test
    void folder_holdsThePlansAndTheRegisterOnly() throws IOException {
        store.writeDraft(complete(1));
        store.writeDraft(complete(2));
        store.post(WEEK, 1);
        assertThat(names(book.resolve("plans"))).containsExactly(".lock", "2027-W33");
        assertThat(names(book.resolve("plans/2027-W33"))).containsExactly("1.json", "2.json", "current");
        assertThat(Files.readString(book.resolve("plans/2027-W33/current"))).isEqualTo("""
                {
                  "format": 1,
                  "current": 1,
                  "posted": 1,
                  "versions": {"1": "posted", "2": "drafted"}
                }
                """);
    }

    private static TreeSet<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return new TreeSet<>(files.map(f -> f.getFileName().toString()).toList());
        }
    }

    @Test
    void post_takesACompletePlanOnly() {
        store.writeDraft(complete(1));
        store.writeDraft(incomplete(2));
        assertThat(store.post(WEEK, 2)).isInstanceOf(Posting.Incomplete.class);
        assertThat(store.postedVersion(WEEK)).isEmpty();
        assertThat(store.current(WEEK)).hasValue(2);
        assertThat(store.post(WEEK, 3)).isInstanceOf(Posting.NoPlan.class);
        assertThat(store.post(WEEK, 1)).isEqualTo(new Posting.Posted(1));
        assertThat(store.postedVersion(WEEK)).hasValue(1);
        assertThat(store.current(WEEK)).hasValue(1);
        assertThat(store.posted(WEEK)).contains(complete(1));
    }

    @Test
    void post_laterVersionTakesItsPlaceAndTheEarlierStaysPosted() {
        store.writeDraft(complete(1));
        store.post(WEEK, 1);
        store.writeDraft(complete(2));
        assertThat(store.postedVersion(WEEK)).hasValue(1);
        assertThat(store.current(WEEK)).hasValue(2);
        store.post(WEEK, 2);
        assertThat(store.postedVersion(WEEK)).hasValue(2);
        assertThat(store.versions(WEEK)).extracting(PlanVersion::status).containsOnly(PlanVersion.Status.POSTED);
    }

    @Test
    void existingFile_isNeverOverwritten() throws IOException {
        store.writeDraft(complete(1));
        Path stray = book.resolve("plans/2027-W33/2.json");
        Files.writeString(stray, "somebody's own file");
        assertThat(store.writeDraft(complete(3))).isEqualTo(3);
        assertThat(stray).hasContent("somebody's own file");
        assertThat(WholeFile.create(stray, "another")).isFalse();
        assertThat(stray).hasContent("somebody's own file");
        assertThat(why(store.read(WEEK, 2))).startsWith("refused: ").contains("2.json");
    }

    @Test
    void leftoversOfDeadProcesses_areIgnoredAndCleaned() throws IOException {
        store.writeDraft(complete(1));
        Path folder = book.resolve("plans/2027-W33");
        Path dead = folder.resolve("2.json.tmp-99999999-1");
        Path own = folder.resolve("current.tmp-" + ProcessHandle.current().pid() + "-7");
        Path others = folder.resolve("notes.tmp-x");
        for (Path p : List.of(dead, own, others)) {
            Files.writeString(p, "{\"half\": ");
        }
        assertThat(store.versions(WEEK)).hasSize(1);
        assertThat(store.writeDraft(complete(2))).isEqualTo(2);
        assertThat(dead).doesNotExist();
        assertThat(own).doesNotExist();
        assertThat(others).exists();
    }

    @Test
    void planNotNamedInTheRegister_isADraftAndTheNextNumberPassesIt() throws IOException {
        store.writeDraft(complete(1));
        Files.writeString(book.resolve("plans/2027-W33/2.json"), PlanFile.write(complete(2)));
        assertThat(store.current(WEEK)).hasValue(1);
        assertThat(store.versions(WEEK)).contains(new PlanVersion(2, PlanVersion.Status.DRAFTED));
        assertThat(store.post(WEEK, 2)).isEqualTo(new Posting.Posted(2));
    }

    @Test
    void planOfAnotherWeek_isRefusedInItsFolder() throws IOException {
        store.writeDraft(complete(1));
        Files.writeString(book.resolve("plans/2027-W33/2.json"), PlanFile.write(RandomPlan.of(1, WEEK.plusWeeks(1))));
        assertThat(why(store.read(WEEK, 2))).isEqualTo("refused: " + book.resolve("plans/2027-W33/2.json")
                + " holds a plan of 2027-W34, not of 2027-W33");
    }

    @Test
    void bytesThatAreNoText_areRefused() throws IOException {
        store.writeDraft(complete(1));
        Files.write(book.resolve("plans/2027-W33/2.json"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertThat(why(store.read(WEEK, 2))).startsWith("refused: ").contains("UTF-8");
    }

    @Test
    void threadsWritingAtOnce_getDifferentNumbers() throws InterruptedException {
        List<Integer> numbers = Collections.synchronizedList(new ArrayList<>());
        List<Thread> threads = new ArrayList<>();
        for (int t = 0; t < 4; t++) {
            int seed = t;
            Thread thread = new Thread(() -> {
                PlanStore own = new PlanStore(book);
                for (int n = 0; n < 10; n++) {
                    int version = own.writeDraft(complete(seed * 100 + n));
                    numbers.add(version);
                    assertThat(plan(own.read(WEEK, version))).isEqualTo(complete(seed * 100 + n));
                }
            });
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
        assertThat(numbers).containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(1, 40).boxed().toList());
        assertThat(store.current(WEEK)).isEqualTo(OptionalInt.of(40));
        assertThat(store.versions(WEEK)).hasSize(40);
    }
}
