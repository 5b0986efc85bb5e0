package croftboard.bench;

import static croftboard.bench.Figures.dollars;
import static croftboard.bench.Figures.head;
import static croftboard.bench.Figures.median;
import static croftboard.bench.Figures.number;
import static croftboard.bench.Figures.row;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How time and memory grow with the number of weeks; each run in a process of its own. */
final class Seasons {
    private static final int[] WEEKS = {4, 13, 26, 52};
    private static final int SECONDS_A_WEEK = 5;
    private static final int OVER = 900;
    private static final String PLOT = "weeks.svg";

    private Seasons() { }

    /** @param held megabytes that the process held at most */
    private record Run(int weeks, long cents, double clock, double processors, double held, boolean complete) {
        static Run of(String line) {
            String[] n = line.split(" ");
            return new Run(Integer.parseInt(n[1]), Long.parseLong(n[2]), Double.parseDouble(n[3]), Double.parseDouble(n[4]),
                    Double.parseDouble(n[5]), n[6].equals("true"));
        }
    }

    static String measure(Request request) throws IOException, InterruptedException {
        int each = request.seconds().isEmpty() ? request.quick() ? 1 : SECONDS_A_WEEK : request.seconds().get(0);
        StringBuilder text = new StringBuilder("Random weeks of 54 slots, " + each + " s a week; four weeks as one problem, more by "
                + "stretches of three. Median over the seeds; money in dollars.\n\n").append(head("weeks", "runs", "complete",
                        "value", "value a week", "s by the clock", "s of processors", "process at most, MB"));
        List<double[]> clock = new ArrayList<>();
        for (int weeks : WEEKS) {
            List<Run> runs = new ArrayList<>();
            for (int seed : request.seedsOr("1-3", "1")) {
                runs.addAll(run(weeks, seed, each * weeks));
            }
            double seconds = median(runs.stream().map(Run::clock).toList());
            long cents = Math.round(median(runs.stream().map(Run::cents).toList()));
            clock.add(new double[] {weeks, seconds});
            text.append(row(Integer.toString(weeks), Integer.toString(runs.size()),
                    Long.toString(runs.stream().filter(Run::complete).count()), dollars(cents), dollars(cents / weeks),
                    number("%.0f", seconds), number("%.0f", median(runs.stream().map(Run::processors).toList())),
                    number("%.0f", median(runs.stream().map(Run::held).toList()))));
        }
        if (!request.print()) {
            Files.writeString(request.folder().resolve("docs").resolve(PLOT), plot(clock));
        }
        return text.append("\n![Seconds by weeks](" + PLOT + ")\n").toString();
    }

    static String plot(List<double[]> clock) {
        double most = clock.stream().mapToDouble(c -> c[1]).max().orElse(1);
        return new Plot("Seconds by the number of weeks", "weeks", "s", 52, 0, Math.max(10, most * 1.1))
                .draw(List.of(new Plot.Line("rotation", clock, true)), clock);
    }

    private static List<Run> run(int weeks, int seed, int seconds) throws IOException, InterruptedException {
        Path output = Files.createTempFile("croftboard-bench", ".txt");
        try {
            ExactAlone.run(List.of("croftboard.bench.SeasonRun", Integer.toString(weeks), Integer.toString(seed),
                    Integer.toString(seconds)), output, seconds + OVER);
            List<Run> runs = Files.readAllLines(output).stream().filter(l -> l.startsWith("weeks ")).map(Run::of).toList();
            Bench.tell(weeks + " weeks, seed " + seed + ": " + (runs.isEmpty() ? "nothing" : runs.get(0)));
            return runs;
        } finally {
            Files.deleteIfExists(output);
        }
    }
}
