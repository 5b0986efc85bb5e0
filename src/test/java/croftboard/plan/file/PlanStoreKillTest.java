package croftboard.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes are killed while they write: whatever was said to be written is there, whole; nothing is there by half. */
class PlanStoreKillTest {
    static final IsoWeek WEEK = new IsoWeek(2027, 33);
    @TempDir
    private Path book;

    private Process start(long seed, long plans) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(java, "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"),
                KilledWriter.class.getName(), book.toString(), Long.toString(seed), Long.toString(plans))
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private static BufferedReader output(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** What a writer said it had finished: seed by version. */
    private static void take(String line, Map<Integer, Long> written) {
        if (line.matches("\\d+ \\d+")) {
            String[] words = line.split(" ");
            written.put(Integer.valueOf(words[0]), Long.valueOf(words[1]));
        }
    }

    @Test
    void killedWhileWriting_leavesNoHalfFile() throws IOException, InterruptedException {
        Random g = new Random(11);
        Map<Integer, Long> written = new TreeMap<>();
        for (int round = 0; round < 12; round++) {
            Process writer = start(round * 1000L, 1000);
            try (BufferedReader said = output(writer)) {
                assertThat(said.readLine()).isEqualTo("begun");
                for (int n = g.nextInt(12); n > 0; n--) {
                    take(said.readLine(), written);
                }
                Thread.sleep(g.nextInt(12));
                writer.toHandle().destroyForcibly();
                said.lines().forEach(line -> take(line, written));
                writer.waitFor();
            }
            checkAll(written);
            checkCurrentIsTheLast(written);
        }
        assertThat(written).isNotEmpty();
        PlanStore store = new PlanStore(book);
        store.writeDraft(KilledWriter.plan(1));
        try (var files = Files.list(book.resolve("plans/2027-W33"))) {
            assertThat(files.map(f -> f.getFileName().toString())).noneMatch(f -> f.contains(".tmp-"));
        }
    }

    private void checkAll(Map<Integer, Long> written) {
        PlanStore store = new PlanStore(book);
        List<PlanVersion> versions = store.versions(WEEK);
        assertThat(versions.stream().map(PlanVersion::number).toList()).containsAll(written.keySet());
        for (PlanVersion version : versions) {
            WeekPlan plan = store.read(WEEK, version.number()).fold(PlanReading.Read::plan, a -> {
                throw new AssertionError(a.why());
            }, r -> {
                throw new AssertionError(r.why());
            });
            if (written.containsKey(version.number())) {
                assertThat(plan).isEqualTo(KilledWriter.plan(written.get(version.number())));
            }
        }
    }

    /** One writer writes and posts in turn, so that no older version is posted after a newer one was written. */
    private void checkCurrentIsTheLast(Map<Integer, Long> written) {
        PlanStore store = new PlanStore(book);
        if (!written.isEmpty()) {
            assertThat(store.current(WEEK).getAsInt()).isGreaterThanOrEqualTo(written.keySet().stream().mapToInt(n -> n).max().getAsInt());
            assertThat(store.read(WEEK)).isInstanceOf(PlanReading.Read.class);
        }
    }

    @Test
    void processesWritingAtOnce_getDifferentNumbers() throws IOException, InterruptedException {
        List<Process> writers = List.of(start(0, 25), start(1000, 25), start(2000, 25));
        Map<Integer, Long> written = new TreeMap<>();
        List<Integer> numbers = new ArrayList<>();
        List<Integer> lastOfEach = new ArrayList<>();
        for (Process writer : writers) {
            try (BufferedReader said = output(writer)) {
                said.lines().forEach(line -> {
                    Map<Integer, Long> one = new TreeMap<>();
                    take(line, one);
                    numbers.addAll(one.keySet());
                    written.putAll(one);
                });
            }
            assertThat(writer.waitFor()).isZero();
            lastOfEach.add(numbers.get(numbers.size() - 1));
        }
        assertThat(numbers).hasSize(75).doesNotHaveDuplicates();
        checkAll(written);
        assertThat(lastOfEach).as("current is what was written or posted last, by whichever process")
                .contains(new PlanStore(book).current(WEEK).getAsInt());
    }
}
