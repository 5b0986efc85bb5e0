package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.ChoiceWeek;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same book, week, seed and steps give the same plan file, byte for byte: again, on another number of cores, and
 * whatever order the book's files were made in.
 */
class RepeatedPlanTest {
    private static final String WEEK = "2027-W34";
    private static final Path DEMO = Path.of("").toAbsolutePath();
    @TempDir
    private Path folder;

    @Test
    void weekOfTheSmallKitchen() throws Exception {
        holds(SamplePlan.KITCHEN, "1200");
    }

    @Test
    void weekOfTheDemo() throws Exception {
        Path book = folder.resolve("demo");
        for (String part : List.of("kitchen", "recipes", "farms", "seasons")) {
            copyTree(DEMO.resolve(part), book.resolve(part), 0);
        }
        holds(book, "200");
    }

    @Test
    void weekOfWorthOnly() throws Exception {
        ChoiceWeek week = ChoiceWeek.of(ChoiceWeek.Kind.CORRELATED, 20, 5, true, 5, 1);
        Path book = folder.resolve("worth");
        Files.createDirectories(book.resolve("kitchen"));
        Files.createDirectories(book.resolve("recipes"));
        Files.writeString(book.resolve("kitchen/kitchen.yaml"), week.kitchen());
        List<String> dishes = week.recipes().lines().toList();
        Files.writeString(book.resolve("recipes/z-first.yaml"), String.join("\n", dishes.subList(0, 30)) + "\n");
        Files.writeString(book.resolve("recipes/a-second.yaml"), String.join("\n", dishes.subList(30, dishes.size())) + "\n");
        holds(book, "3000");
    }

    private void holds(Path book, String steps) throws Exception {
        byte[] first = plan(book, steps, List.of());
        assertThat(first).isNotEmpty();
        assertThat(plan(book, steps, List.of())).as("again").isEqualTo(first);
        assertThat(plan(book, steps, List.of("-XX:ActiveProcessorCount=1"))).as("one core").isEqualTo(first);
        assertThat(plan(book, steps, List.of("-XX:ActiveProcessorCount=7"))).as("seven cores").isEqualTo(first);
        Path other = folder.resolve("other-" + steps);
        copyTree(book, other, 5);
        assertThat(plan(other, steps, List.of())).as("files made in another order").isEqualTo(first);
    }

    /** In a Java machine of its own. */
    private byte[] plan(Path book, String steps, List<String> options) throws IOException, InterruptedException {
        Path out = folder.resolve("plan.json");
        Files.deleteIfExists(out);
        List<String> words = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
        words.addAll(options);
        words.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName(), "plan", WEEK,
                "--steps", steps, "--seed", "3", "--out", out.toString(), "--book=" + book));
        Process process = new ProcessBuilder(words).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(folder.resolve("errors.txt").toFile()).start();
        assertThat(process.waitFor()).as(Files.readString(folder.resolve("errors.txt"))).isIn(Exit.DONE, Exit.INCOMPLETE);
        return Files.readAllBytes(out);
    }

    /** @param seed of the order in which files are made; 0: by name */
    private static void copyTree(Path from, Path to, long seed) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = new ArrayList<>(all.filter(Files::isRegularFile).sorted().toList());
        }
        if (seed != 0) {
            Collections.shuffle(files, new Random(seed));
        }
        for (Path file : files) {
            Path copy = to.resolve(from.relativize(file).toString());
            Files.createDirectories(copy.getParent());
            Files.copy(file, copy);
        }
    }
}
