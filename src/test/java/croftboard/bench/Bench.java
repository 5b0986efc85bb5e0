package croftboard.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code Bench FOLDER [demo] [random] [start] [paper] [--seconds N] [--print]}: measures the parts named, or
 * all, and writes their sections of {@code docs/benchmarks.md}; with {@code --print} only prints them.
 */
public final class Bench {
    private static final int SECONDS = 20;

    private Bench() { }

    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Path.of(args[0]).toAbsolutePath().normalize();
        List<String> parts = new ArrayList<>();
        int seconds = SECONDS;
        boolean print = false;
        for (int a = 1; a < args.length; a++) {
            switch (args[a]) {
                case "--seconds" -> seconds = Integer.parseInt(args[++a]);
                case "--print" -> print = true;
                case "demo", "random", "start", "paper" -> parts.add(args[a]);
                default -> throw new IllegalArgumentException(
                        args[a] + " -> demo, random, start, paper, --seconds N or --print");
            }
        }
        List<String> wanted = parts.isEmpty() ? List.of("demo", "random", "start", "paper") : parts;
        Duration time = Duration.ofSeconds(seconds);
        Sections document = new Sections(folder.resolve("docs/benchmarks.md"));
        for (String part : wanted) {
            String command = "./bench " + part
                    + (seconds == SECONDS || part.equals("start") || part.equals("paper") ? "" : " --seconds " + seconds);
            String load = Machine.load();
            String figures = switch (part) {
                case "demo" -> Weeks.demo(folder, time);
                case "random" -> Weeks.random(time);
                case "paper" -> Papers.measure(folder);
                default -> Starts.measure(folder);
            };
            String section = Machine.line(command, load) + "\n\n" + figures;
            System.out.println(section);
            if (!print) {
                document.put(part, section);
            }
        }
    }
}
