package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NativesTest {
    private static final long NOBODY = 999_999_999L;
    @TempDir
    private Path folder;

    /** Run in a process of its own: prints whether the solver is there. */
    public static final class Probe {
        private Probe() { }

        public static void main(String[] args) {
            boolean there = Natives.available();
            boolean works = there && JointRelaxation.of(TinyWeek.of(1)).isPresent();
            System.out.println(there + " " + works);
        }
    }

    private Process start(Path cache, Path temp, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m", "-Djava.io.tmpdir=" + temp, "-D" + Natives.CACHE + "=" + cache));
        command.addAll(List.of(more));
        command.addAll(List.of("-cp", System.getProperty("surefire.test.class.path",
                System.getProperty("java.class.path")), Probe.class.getName()));
        return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private static String said(Process process) throws IOException, InterruptedException {
        String all = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        return all.strip();
    }

    private static List<String> names(Path in) throws IOException {
        try (Stream<Path> all = Files.list(in)) {
            return all.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void twoProcessesAtOnce_unpackOneWholeFolder_andNothingElsewhere() throws Exception {
        Path cache = folder.resolve("cache");
        Path temp = Files.createDirectory(folder.resolve("temp"));
        Files.createDirectories(cache.resolve("ortools-old.tmp-" + NOBODY + "-1"));
        Process a = start(cache, temp);
        Process b = start(cache, temp);
        assertThat(said(a)).isEqualTo("true true");
        assertThat(said(b)).isEqualTo("true true");
        assertThat(names(cache)).hasSize(1).allMatch(n -> n.matches("ortools-[a-z0-9-]+-[0-9.]+"));
        assertThat(names(temp)).noneMatch(n -> n.contains("ortools"));
    }

    @Test
    void brokenFolder_isUnpackedAgain() throws Exception {
        Path cache = folder.resolve("cache");
        Path temp = Files.createDirectory(folder.resolve("temp"));
        assertThat(said(start(cache, temp))).isEqualTo("true true");
        Path whole = cache.resolve(names(cache).get(0));
        Files.write(whole.resolve(names(whole).get(0)), new byte[0]);
        assertThat(said(start(cache, temp))).isEqualTo("true true");
        assertThat(names(cache)).hasSize(1);
    }

    @Test
    void cacheThatCannotBeWritten_isNoSolver_andNoError() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "not a folder");
        Path temp = Files.createDirectory(folder.resolve("temp"));
        assertThat(said(start(file.resolve("cache"), temp))).isEqualTo("false false");
    }

    @Test
    void switchedOff_ordersAreFoundBySearchAndNothingIsProved() {
        WeekProblem problem = TinyWeek.of(2);
        int[] menu = croftboard.need.Enumeration.bestPlan(problem).orElseThrow().choice();
        System.setProperty(Natives.SWITCH, "off");
        try {
            assertThat(Natives.available()).isFalse();
            assertThat(JointRelaxation.of(problem)).isEmpty();
            Sourcing sourcing = new Sourcing(problem, 0.1);
            Sourcing.Orders orders = sourcing.search(menu, 1, 200, () -> false);
            assertThat(orders.complete()).isTrue();
            assertThat(sourcing.exact(menu, orders, 0, 10)).isEqualTo(orders);
            assertThat(JointRoot.bound(problem, menu, orders.packs(), 0, 1)).isEmpty();
        } finally {
            System.clearProperty(Natives.SWITCH);
        }
    }
}
