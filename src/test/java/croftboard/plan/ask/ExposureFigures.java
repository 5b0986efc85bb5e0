package croftboard.plan.ask;

import croftboard.book.Book;
import croftboard.menu.MenuSearch;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.change.Problems;
import java.lang.management.ManagementFactory;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The door through which the benchmark measures failing weeks: how long, and how near the quick repair is to a full one. */
public final class ExposureFigures {
    private static final int SAMPLED = 30;
    private static final long TRIES = 40_000;
    private static final int MEMORY = 12;
    private static final int ROUNDS = 2_000;

    private ExposureFigures() { }

    /**
     * @param seconds of all runs on all cores. @param cpuSeconds the same of the processors: what counts beside other work. @param mostBytes of the heap, met between runs
     * @param quick, full values after the two repairs of the sampled runs, cents
     */
    public record Measured(double seconds, double cpuSeconds, int tried, long mostBytes, List<Long> quick, List<Long> full) { }

    public static Measured measure(Book book, WeekPlan plan, int runs) {
        Question question = new Question(book, plan, Given.NOTHING, LocalDateTime.of(2027, 1, 1, 8, 0));
        long[] most = new long[1];
        int[] of = new int[1];
        long t = System.nanoTime();
        double cpu = cpu();
        ExposureRun week = new ExposureRun(question, 1, (done, all) -> {
            of[0] = all;
            Runtime r = Runtime.getRuntime();
            most[0] = Math.max(most[0], r.totalMemory() - r.freeMemory());
        });
        week.run(runs);
        double seconds = (System.nanoTime() - t) / 1e9;
        double used = cpu() - cpu;
        List<Long> quick = new ArrayList<>();
        List<Long> full = new ArrayList<>();
        long change = book.kitchen().promises().change().value();
        for (int r = 0; r < runs && quick.size() < SAMPLED; r++) {
            ExposureRun.Tried tried = week.tried(week.yields().draw(1, r));
            if (tried.shares().values().stream().anyMatch(x -> x < 1)) {
                quick.add(tried.outcome().value());
                full.add(full(week.yields().with(tried.shares()), week, tried, change));
            }
        }
        return new Measured(seconds, used, of[0], most[0], quick, full);
    }

    private static double cpu() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean os
                ? os.getProcessCpuTime() / 1e9 : 0;
    }

    /** Other dishes allowed at the price of a change, as a repair of a posted plan does it; the price is no part of the value. */
    private static long full(WeekProblem p, ExposureRun week, ExposureRun.Tried tried, long change) {
        List<WeekProblem.Slot> slots = IntStream.range(0, p.slots().size()).mapToObj(s -> {
            WeekProblem.Slot slot = p.slots().get(s);
            List<WeekProblem.Candidate> all = new ArrayList<>();
            for (int k = 0; k < slot.candidates().size(); k++) {
                all.add(k == week.menu()[s] ? slot.candidates().get(k) : Problems.worthLess(slot.candidates().get(k), change));
            }
            return new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(), slot.emptyCents(), slot.mayBeEmpty(),
                    all);
        }).toList();
        WeekProblem priced = Problems.withSlots(p, slots);
        int[] menu = new MenuSearch(priced, p.prices().localPrice().toDouble() / 2).search(tried.repaired().found().choice(), 1,
                new MenuSearch.Effort(TRIES, 0, MEMORY), () -> false).choice();
        WeekRun.Found found = Nearby.better(WeekRun.near(p, menu, tried.repaired().found().packs()),
                WeekRun.orders(p, menu, 1, ROUNDS));
        return found.complete() ? Math.max(found.valueCents(), tried.outcome().value()) : tried.outcome().value();
    }
}
