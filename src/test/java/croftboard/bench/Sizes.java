package croftboard.bench;

import static croftboard.bench.Figures.NONE;
import static croftboard.bench.Figures.head;
import static croftboard.bench.Figures.median;
import static croftboard.bench.Figures.number;
import static croftboard.bench.Figures.percent;
import static croftboard.bench.Figures.row;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How time and memory grow with the number of slots; each run in a process of its own. */
final class Sizes {
    private static final int[] SLOTS = {30, 54, 108, 216};
    private static final int[] SECONDS = {20, 20, 60, 180};
    private static final int[] QUICK_SECONDS = {5, 5, 20, 60};
    private static final int OVER = 600;

    private Sizes() { }

    /** Of one size. @param near -1 where it was never so near */
    private record Run(int slots, double first, double near, double gap, double heap, double process, boolean complete) {
        static Run of(String line) {
            double[] n = Arrays.stream(line.split(" "), 1, 8).mapToDouble(Double::parseDouble).toArray();
            return new Run((int) n[0], n[1], n[2], n[3], n[4], n[5], line.endsWith("true"));
        }
    }

    static String measure(Request request) throws IOException, InterruptedException {
        StringBuilder text = new StringBuilder("Median over the seeds; seconds to a plan within 2 % of what is proved in "
                + "the end, loading included; Java memory includes garbage.\n\n").append(head("slots", "s given", "runs", "complete",
                "first complete plan, s", "within 2 %, s", "of the runs", "gap in the end, %", "Java memory at most, MB",
                "process at most, MB"));
        List<double[]> growth = new ArrayList<>();
        for (int n = 0; n < SLOTS.length; n++) {
            int seconds = request.seconds().isEmpty() ? (request.quick() ? QUICK_SECONDS : SECONDS)[n]
                    : request.seconds().get(Math.min(n, request.seconds().size() - 1));
            List<Run> runs = new ArrayList<>();
            for (int seed : request.seedsOr("1-5", "1")) {
                runs.addAll(run(SLOTS[n], seed, seconds));
            }
            text.append(line(SLOTS[n], seconds, runs));
            growth.add(new double[] {SLOTS[n], median(runs.stream().map(Run::first).toList()),
                median(runs.stream().map(Run::heap).toList())});
        }
        return text.append("\n").append(growth(growth)).toString();
    }

    private static List<Run> run(int slots, int seed, int seconds) throws IOException, InterruptedException {
        Path output = Files.createTempFile("croftboard-bench", ".txt");
        try {
            ExactAlone.run(List.of("croftboard.bench.SizeRun", Integer.toString(slots), Integer.toString(seed),
                    Integer.toString(seconds)), output, seconds + OVER);
            List<Run> runs = Files.readAllLines(output).stream().filter(l -> l.startsWith("size ")).map(Run::of).toList();
            Bench.tell(slots + " slots, seed " + seed + ": " + (runs.isEmpty() ? "nothing" : runs.get(0)));
            return runs;
        } finally {
            Files.deleteIfExists(output);
        }
    }

    private static String line(int slots, int seconds, List<Run> runs) {
        List<Double> near = runs.stream().filter(r -> r.near >= 0).map(Run::near).toList();
        return row(Integer.toString(slots), Integer.toString(seconds), Integer.toString(runs.size()),
                Long.toString(runs.stream().filter(Run::complete).count()),
                number("%.2f", median(runs.stream().map(Run::first).toList())),
                near.isEmpty() ? "never" : number("%.1f", median(near)), Integer.toString(near.size()),
                percent(median(runs.stream().map(Run::gap).toList())),
                number("%.0f", median(runs.stream().map(Run::heap).toList())),
                number("%.0f", median(runs.stream().map(Run::process).toList())));
    }

    /** The power of the number of slots with which something grew from the smallest to the largest. */
    private static String growth(List<double[]> sizes) {
        double[] a = sizes.get(0);
        double[] b = sizes.get(sizes.size() - 1);
        return "From " + number("%.0f", a[0]) + " to " + number("%.0f", b[0])
                + " slots the time to the first complete plan grows with the power " + power(a, b, 1)
                + " of the slots, Java memory with the power " + power(a, b, 2) + ".\n";
    }

    private static String power(double[] a, double[] b, int of) {
        double p = Math.log(b[of] / a[of]) / Math.log(b[0] / a[0]);
        return Double.isFinite(p) ? number("%.1f", p) : NONE;
    }
}
