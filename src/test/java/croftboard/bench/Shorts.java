package croftboard.bench;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.change.ChangeGrammar;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.Disturbance;
import croftboard.plan.change.Repair;
import croftboard.plan.change.ScriptedBreaks;
import croftboard.plan.file.PlanReading;
import croftboard.plan.file.PlanStore;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.Stream;

/** Ten scripted breaks of the demo week: how soon an answer stands, how much it disturbs, and how good it is. */
final class Shorts {
    private static final IsoWeek WEEK = IsoWeek.parse("2027-W33").orElseThrow();
    private static final LocalDateTime NOW = LocalDateTime.parse("2027-08-17T07:00");
    private static final String FIRST = "croftboard: first answer";
    private static final int SETTLING_MILLIS = 7_200;
    private final Path tool;
    private final Path copy;
    private final Book book;
    private final long longSeconds;

    private Shorts(Path tool, Path copy, long longSeconds) {
        this.tool = tool;
        this.copy = copy;
        this.book = BookReader.read(copy).orElseThrow();
        this.longSeconds = longSeconds;
    }

    static String measure(Request request) throws IOException, InterruptedException {
        Path copy = Files.createTempDirectory("croftboard-bench");
        try {
            for (String part : List.of("kitchen", "recipes", "farms", "seasons")) {
                copy(request.folder().resolve(part), copy.resolve(part));
            }
            return new Shorts(request.folder().resolve("croftboard"), copy, request.secondsOr("600", "60").get(0)).run();
        } finally {
            try (Stream<Path> all = Files.walk(copy)) {
                for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(p);
                }
            }
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path p : all.toList()) {
                Files.copy(p, to.resolve(from.relativize(p).toString()));
            }
        }
    }

    private String run() throws IOException, InterruptedException {
        command(List.of("plan", WEEK.toString(), "--time", "20s"));
        command(List.of("post", WEEK.toString()));
        PlanReading read = new PlanStore(copy).read(WEEK);
        WeekPlan plan = read.fold(r -> r.plan(), a -> null, r -> null);
        StringBuilder rows = new StringBuilder();
        List<Double> first = new ArrayList<>();
        List<Double> whole = new ArrayList<>();
        for (List<String> breaks : ScriptedBreaks.of(plan, NOW)) {
            rows.append(one(plan, breaks, first, whole));
            Bench.tell("short: " + breaks);
        }
        return String.format(Locale.ROOT, "Whole process of the built tool, `--dry-run --now %s`: first answer %.1f s (median; at most"
                + " %.1f), settled %.1f s (median; at most %.1f). Changes: dishes + order lines. Worth: value less the price of every"
                + " change; against a run of %d s under the same frozen facts.%n%n| break | first s | changes at once | settled |"
                + " planned anew | of those | worth settled | worth long run | below it |%n|---|---:|---:|---:|---:|---:|---:|---:|---:|%n",
                NOW, Figures.median(first), first.stream().mapToDouble(d -> d).max().orElse(0), Figures.median(whole),
                whole.stream().mapToDouble(d -> d).max().orElse(0), longSeconds) + rows;
    }

    private String one(WeekPlan plan, List<String> breaks, List<Double> first, List<Double> whole) throws IOException,
            InterruptedException {
        List<String> words = new ArrayList<>(List.of("short", WEEK.toString(), "--dry-run", "--now", NOW.toString()));
        breaks.forEach(b -> words.addAll(List.of("--change", b)));
        double[] seconds = command(words);
        first.add(seconds[0]);
        whole.add(seconds[1]);
        ChangedWeek week = ChangedWeek.of(book, plan, Given.NOTHING, new ChangeGrammar(book).read(breaks).changes(), NOW);
        Repair repair = new Repair(book, plan, week, new WeekPlan.Revision(1, NOW, breaks));
        int once = changes(plan, repair.atOnce(1));
        Repair.Settled settled = repair.settle(effort(SETTLING_MILLIS), p -> { });
        int[] nothing = week.start().clone();
        Arrays.fill(nothing, -1);
        int anew = changes(plan, repair.anew(nothing, effort(SETTLING_MILLIS)));
        Repair.Settled best = repair.settle(effort(longSeconds * 1000), p -> { });
        return String.format(Locale.ROOT, "| %s | %.1f | %d | %d | %d | %.2f | %.2f | %.2f | %.2f %% |%n", String.join("; ", breaks),
                seconds[0], once, changes(plan, settled.plan()), anew, changes(plan, settled.plan()) / (double) Math.max(1, anew),
                settled.worth() / 100.0, best.worth() / 100.0, 100.0 * (best.worth() - settled.worth()) / best.worth());
    }

    private static WeekRun.Effort effort(long millis) {
        return new WeekRun.Effort(1, Duration.ofMillis(millis), OptionalLong.empty(), () -> false);
    }

    private static int changes(WeekPlan before, WeekPlan after) {
        Disturbance d = Disturbance.between(before, after);
        return d.dishes() + d.orderLines();
    }

    /** Seconds to the first answer, and to the end. */
    private double[] command(List<String> words) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of(tool.toString()));
        all.addAll(words);
        all.add("--book=" + copy);
        long t0 = System.nanoTime();
        Process process = new ProcessBuilder(all).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        double first = 0;
        try (BufferedReader errors = new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8))) {
            for (String line = errors.readLine(); line != null; line = errors.readLine()) {
                first = line.startsWith(FIRST) ? (System.nanoTime() - t0) / 1e9 : first;
            }
        }
        if (process.waitFor() == 1 || process.exitValue() == 2) {
            throw new IllegalStateException(all + " failed");
        }
        return new double[] {first, (System.nanoTime() - t0) / 1e9};
    }
}
