package croftboard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** How long paper takes from the shell: the first PDF, and the whole packet of the demo week. */
final class Papers {
    private static final int TIMES = 5;
    private static final String WEEK = "2027-W33";
    private final Path tool;
    private final Path book;

    private Papers(Path tool, Path book) {
        this.tool = tool;
        this.book = book;
    }

    static String measure(Request request) throws IOException, InterruptedException {
        Path folder = request.folder();
        Path book = Files.createTempDirectory("croftboard-bench");
        try {
            for (String part : List.of("kitchen", "recipes", "farms", "seasons")) {
                copy(folder.resolve(part), book.resolve(part));
            }
            return new Papers(folder.resolve("croftboard"), book).run();
        } finally {
            try (Stream<Path> all = Files.walk(book)) {
                all.sorted(Comparator.reverseOrder()).forEach(p -> p.toFile().delete());
            }
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }

    private String run() throws IOException, InterruptedException {
        seconds("plan", WEEK, "--steps", "1500");
        Map<String, String[]> commands = new LinkedHashMap<>();
        commands.put("first PDF: `paper " + WEEK + " --sheet order-calendar`", new String[] {"paper", WEEK, "--sheet", "order-calendar"});
        commands.put("`paper " + WEEK + " --sheet order`", new String[] {"paper", WEEK, "--sheet", "order"});
        commands.put("whole packet: `paper " + WEEK + "`", new String[] {"paper", WEEK});
        Map<String, List<Double>> seconds = new LinkedHashMap<>();
        for (int n = 0; n <= TIMES; n++) {
            for (Map.Entry<String, String[]> c : commands.entrySet()) {
                double taken = seconds(c.getValue());
                if (n > 0) {
                    seconds.computeIfAbsent(c.getKey(), k -> new ArrayList<>()).add(taken);
                }
            }
        }
        StringBuilder text = new StringBuilder("Wall clock from the shell, median of ").append(TIMES)
                .append(" after one unmeasured; commands take turns. Wanted: 3 s and 12 s.\n\n")
                .append("| command | s | lowest s | highest s |\n|---|---:|---:|---:|\n");
        seconds.forEach((name, all) -> text.append(Figures.row(name, two(Figures.median(all)),
                two(java.util.Collections.min(all)), two(java.util.Collections.max(all)))));
        return text.toString();
    }

    private static String two(double seconds) {
        return String.format(Locale.ROOT, "%.2f", seconds);
    }

    private double seconds(String... words) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of(tool.toString()));
        all.addAll(List.of(words));
        all.add("--book=" + book);
        long t0 = System.nanoTime();
        Process process = new ProcessBuilder(all).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
        int code = process.waitFor();
        if (code == 1 || code == 2) {
            throw new IllegalStateException(all + " ended with exit code " + code);
        }
        return (System.nanoTime() - t0) / 1e9;
    }
}
