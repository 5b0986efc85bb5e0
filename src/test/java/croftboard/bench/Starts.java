package croftboard.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** How long commands take, beside a Java machine that does nothing, and the memory of a plan. */
final class Starts {
    private static final int TIMES = 5;
    private static final String FIRST_PLAN = "First complete plan";
    private static final String WEEK = "2027-W33";
    private final Path folder;
    private final Path scratch;

    private Starts(Path folder, Path scratch) {
        this.folder = folder;
        this.scratch = scratch;
    }

    static String measure(Request request) throws IOException, InterruptedException {
        Path scratch = Files.createTempDirectory("croftboard-bench");
        try {
            return new Starts(request.folder(), scratch).run();
        } finally {
            Files.deleteIfExists(scratch.resolve("plan.json"));
            Files.deleteIfExists(scratch);
        }
    }

    /** @param until a line of the command's errors that ends the measuring; empty: its end does */
    private record Command(List<String> words, String until) { }

    private String run() throws IOException, InterruptedException {
        String tool = folder.resolve("croftboard").toString();
        String out = scratch.resolve("plan.json").toString();
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Map<String, Command> commands = new LinkedHashMap<>();
        commands.put("bare Java machine", new Command(List.of(java, "-XX:+UseSerialGC", "-Xshare:auto", "-cp",
                folder.resolve("target/test-classes").toString(), Nothing.class.getName()), ""));
        commands.put("`--help`", new Command(List.of(tool, "--help"), ""));
        commands.put("`check`", new Command(List.of(tool, "check"), ""));
        commands.put("`plan " + WEEK + "` to its first complete plan",
                new Command(List.of(tool, "plan", WEEK, "--out", out), FIRST_PLAN));
        commands.put("`plan " + WEEK + " --steps 1` to its end",
                new Command(List.of(tool, "plan", WEEK, "--steps", "1", "--out", out), ""));
        Map<String, List<Double>> seconds = new LinkedHashMap<>();
        for (int n = 0; n <= TIMES; n++) {
            for (Map.Entry<String, Command> c : commands.entrySet()) {
                double taken = seconds(c.getValue());
                if (n > 0) {
                    seconds.computeIfAbsent(c.getKey(), k -> new ArrayList<>()).add(taken);
                }
            }
        }
        return table(seconds) + "\n" + memory(tool, out);
    }

    private String table(Map<String, List<Double>> seconds) {
        double bare = Figures.median(seconds.values().iterator().next());
        StringBuilder text = new StringBuilder("Wall clock, median of ").append(TIMES)
                .append(" after one unmeasured; commands take turns.\n\n")
                .append("| command | s | times the bare machine | lowest s | highest s |\n")
                .append("|---|---:|---:|---:|---:|\n");
        seconds.forEach((name, all) -> {
            double median = Figures.median(all);
            text.append(Figures.row(name, two(median), String.format(Locale.ROOT, "%.1f", median / bare),
                    two(java.util.Collections.min(all)), two(java.util.Collections.max(all))));
        });
        return text.toString();
    }

    private static String two(double seconds) {
        return String.format(Locale.ROOT, "%.2f", seconds);
    }

    private ProcessBuilder start(List<String> words) {
        return new ProcessBuilder(words).directory(folder.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
    }

    private double seconds(Command command) throws IOException, InterruptedException {
        long t0 = System.nanoTime();
        Process process = start(command.words).start();
        try (BufferedReader errors = new BufferedReader(
                new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8))) {
            String line = errors.readLine();
            while (line != null && (command.until.isEmpty() || !line.startsWith(command.until))) {
                line = errors.readLine();
            }
            if (!command.until.isEmpty()) {
                double taken = (System.nanoTime() - t0) / 1e9;
                if (line == null) {
                    throw new IllegalStateException(command.words + " never said: " + command.until);
                }
                process.destroyForcibly();
                process.waitFor();
                return taken;
            }
        }
        if (process.waitFor() == 1) {
            throw new IllegalStateException(command.words + " failed");
        }
        return (System.nanoTime() - t0) / 1e9;
    }

    /** A whole plan within 512 MB of Java memory; what it held at most in all, where the system tells. */
    private String memory(String tool, String out) throws IOException, InterruptedException {
        ProcessBuilder builder = start(List.of(tool, "plan", WEEK, "--out", out))
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("CROFTBOARD_JAVA_OPTS", "-Xmx512m");
        Process process = builder.start();
        long peak = 0;
        while (!process.waitFor(100, TimeUnit.MILLISECONDS)) {
            peak = Math.max(peak, peakKilobytes(process.pid()));
        }
        String end = process.exitValue() == 0 ? "passes" : "ends with exit code " + process.exitValue();
        String most = peak == 0 ? ""
                : "; the process held at most " + peak / 1024 + " MB, native memory included";
        return "`CROFTBOARD_JAVA_OPTS=-Xmx512m ./croftboard plan " + WEEK + "` " + end + most + ".\n";
    }

    private static long peakKilobytes(long pid) {
        try {
            return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
                    .filter(l -> l.startsWith("VmHWM")).mapToLong(l -> Long.parseLong(l.replaceAll("\\D", "")))
                    .findFirst().orElse(0);
        } catch (IOException e) {
            return 0;
        }
    }
}
