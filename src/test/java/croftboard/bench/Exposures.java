package croftboard.bench;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.PlanRequest;
import croftboard.plan.Planner;
import croftboard.plan.WeekPlan;
import croftboard.plan.ask.ExposureFigures;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/** A thousand failing weeks of the demo book: how long, how much memory, and how far the quick repair is from a full one. */
final class Exposures {
    private static final int RUNS = 1_000;
    private static final int FEW = 100;
    private static final int STEPS = 20_000;

    private Exposures() { }

    static String measure(Request request) {
        Book book = BookReader.read(request.folder()).orElseThrow();
        WeekPlan plan = new Planner(book, Optional.empty()).plan(new PlanRequest(IsoWeek.parse("2027-W33").orElseThrow(), 1,
                Duration.ofSeconds(5), OptionalLong.of(STEPS), new TreeMap<>(), Optional.empty(), Given.NOTHING,
                new PlanRequest.Progress() {
                    @Override
                    public void doing(String what) { }

                    @Override
                    public void better(WeekPlan better) { }
                }, () -> false)).fold(p -> p.plan(), r -> null);
        ExposureFigures.Measured m = ExposureFigures.measure(book, plan, request.quick() ? FEW : RUNS);
        double[] share = new double[m.quick().size()];
        double mean = 0;
        for (int r = 0; r < share.length; r++) {
            share[r] = 100.0 * (m.full().get(r) - m.quick().get(r)) / m.full().get(r);
            mean += share[r] / share.length;
        }
        return String.format(Locale.ROOT, "2027-W33, %d weeks with a failure (single ones and random yields) in %.0f s on all cores (%.0f s of "
                + "processor time), at most %d MiB of heap between runs.%n%nOf the first %d runs in which anything came short: value after the quick repair "
                + "(same menu, dishes dropped) beside a full one (other dishes, 40,000 menus, 2,000 rounds of orders).%n%n"
                + "| | $ |%n|---|---:|%n| mean after the quick repair | %s |%n| mean after the full one | %s |%n"
                + "| mean difference, %% | %.1f |%n| largest, %% | %.1f |%n", m.tried(), m.seconds(), m.cpuSeconds(), m.mostBytes() >> 20, share.length,
                dollars(m.quick()), dollars(m.full()), mean, java.util.Arrays.stream(share).max().orElse(0));
    }

    private static String dollars(List<Long> cents) {
        return String.format(Locale.ROOT, "%,.0f", cents.stream().mapToLong(c -> c).average().orElse(0) / 100);
    }
}
