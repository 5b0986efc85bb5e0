package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.IsoWeek;
import croftboard.plan.file.PlanReading;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.PlanVersion;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real program is killed at random moments of {@code plan}: no half plan, the book as it was,
 * nothing left in the temp folder, and the next plan succeeds. How often the slow test kills: {@code -Dcroftboard.kills=N}.
 */
class PlanKillTest {
    private static final Path SMALL = Path.of("src/test/resources/kitchens/small");
    private static final IsoWeek WEEK = new IsoWeek(2027, 33);
    private static final long LEFT_IN_TEMP = 1_000_000;
    private static final List<List<String>> PLANS =
            List.of(List.of("--steps", "400"), List.of("--time", "2s"));
    @TempDir
    private Path folder;
    private Path book;
    private Path temp;
    private Path cache;

    @BeforeEach
    void layOut() throws IOException {
        book = folder.resolve("book");
        temp = Files.createDirectory(folder.resolve("temp"));
        cache = folder.resolve("cache");
        for (Path from : files(SMALL)) {
            Path to = book.resolve(SMALL.relativize(from).toString());
            Files.createDirectories(to.getParent());
            Files.copy(from, to);
        }
    }

    @Test
    void killedAtTenMoments_leavesNothingHalf() throws IOException, InterruptedException {
        killed(10, 21);
    }

    @Test
    @Tag("slow")
    void killedAtManyMoments_leavesNothingHalf() throws IOException, InterruptedException {
        killed(Integer.getInteger("croftboard.kills", 200), 22);
    }

    private void killed(int times, long seed) throws IOException, InterruptedException {
        Random g = new Random(seed);
        Map<Path, List<Byte>> before = bookFiles();
        long whole = wholePlan(PLANS.get(0));
        for (int n = 0; n < times; n++) {
            if (n % 5 == 0) {
                delete(cache);
            }
            Process plan = start(PLANS.get(n % PLANS.size()));
            Thread.sleep(1 + g.nextInt((int) (whole + whole / 4)));
            plan.destroyForcibly().waitFor();
            assertThat(bookFiles()).as("the book after kill %d", n).isEqualTo(before);
            assertThat(bytesIn(temp)).as("left in the temp folder after kill %d", n).isLessThan(LEFT_IN_TEMP);
            everyPlanReadsBack();
        }
        wholePlan(PLANS.get(0));
        everyPlanReadsBack();
        assertThat(new PlanStore(book).current(WEEK)).isPresent();
        assertThat(bookFiles()).isEqualTo(before);
        assertThat(names(book.resolve("plans"))).noneMatch(f -> f.contains(".tmp-"));
    }

    /** @return milliseconds that it took */
    private long wholePlan(List<String> how) throws IOException, InterruptedException {
        long t0 = System.nanoTime();
        Process plan = start(how);
        assertThat(plan.waitFor(5, TimeUnit.MINUTES)).isTrue();
        assertThat(plan.exitValue()).isIn(Exit.DONE, Exit.INCOMPLETE);
        return (System.nanoTime() - t0) / 1_000_000;
    }

    private Process start(List<String> how) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> words = new ArrayList<>(List.of(java, "-XX:+UseSerialGC", "-Djava.io.tmpdir=" + temp,
                "-Dcroftboard.cache=" + cache, "-cp", System.getProperty("java.class.path"), Main.class.getName(),
                "plan", WEEK.toString(), "--book", book.toString()));
        words.addAll(how);
        return new ProcessBuilder(words).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
    }

    private void everyPlanReadsBack() {
        PlanStore store = new PlanStore(book);
        List<PlanVersion> versions = store.versions(WEEK);
        for (PlanVersion version : versions) {
            assertThat(store.read(WEEK, version.number())).isInstanceOf(PlanReading.Read.class);
        }
        if (store.current(WEEK).isPresent()) {
            assertThat(store.read(WEEK)).isInstanceOf(PlanReading.Read.class);
        }
    }

    private Map<Path, List<Byte>> bookFiles() throws IOException {
        Map<Path, List<Byte>> all = new TreeMap<>();
        for (Path file : files(book)) {
            if (!file.startsWith(book.resolve("plans"))) {
                byte[] bytes = Files.readAllBytes(file);
                List<Byte> list = new ArrayList<>(bytes.length);
                for (byte b : bytes) {
                    list.add(b);
                }
                all.put(book.relativize(file), list);
            }
        }
        return all;
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static List<String> names(Path folder) throws IOException {
        return files(folder).stream().map(f -> f.getFileName().toString()).toList();
    }

    private static long bytesIn(Path folder) throws IOException {
        return files(folder).stream().map(Path::toFile).mapToLong(File::length).sum();
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                Path[] deepestFirst = all.toArray(Path[]::new);
                for (int i = deepestFirst.length - 1; i >= 0; i--) {
                    Files.delete(deepestFirst[i]);
                }
            }
        }
    }
}
