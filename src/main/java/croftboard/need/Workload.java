package croftboard.need;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What a menu makes the kitchen do: batches of components by one fixed rule, and with them the needs of every item
 * and day and the use of every resource.
 *
 * <p>The rule: components in the problem's order; demands by the day they are needed; stock first; then a batch on the
 * latest prep day that lead and life allow, serving every open demand that its life covers, rounded up to whole steps;
 * one prep day earlier when a station would pass its regular minutes on that day, would not on the earlier one, and
 * life still allows it.
 *
 * @param batches in the order in which they were placed
 * @param needMg by item and day, as purchased
 * @param used by resource and period
 * @param missed demands that no batch can meet, each with its component: a must is broken
 * @param stapleCents staples of the component batches
 */
public record Workload(List<Batch> batches, long[][] needMg, long[][] used, List<WeekProblem.Demand> missed,
        long stapleCents) {

    /** @param lastDay last day on which what is made of it is served */
    public record Batch(int component, int day, int lastDay, int steps) { }

    /** @param choice candidate of each slot, -1 for none */
    public static Workload of(WeekProblem problem, int[] choice) {
        return new Placing(problem, choice).run();
    }

    private static final class Placing {
        private final WeekProblem problem;
        private final long[][] need;
        private final long[][] used;
        private final List<List<WeekProblem.Demand>> open = new ArrayList<>();
        private final List<Batch> batches = new ArrayList<>();
        private final List<WeekProblem.Demand> missed = new ArrayList<>();
        private long stapleCents;

        Placing(WeekProblem problem, int[] choice) {
            this.problem = problem;
            need = new long[problem.items().size()][problem.days()];
            used = new long[problem.resources().size()][];
            for (int r = 0; r < used.length; r++) {
                used[r] = new long[problem.resources().get(r).periods()];
            }
            for (int c = 0; c < problem.components().size(); c++) {
                open.add(new ArrayList<>());
            }
            for (int s = 0; s < choice.length; s++) {
                if (choice[s] >= 0) {
                    add(problem.slots().get(s).candidates().get(choice[s]));
                }
            }
        }

        private void add(WeekProblem.Candidate dish) {
            dish.needs().forEach(n -> need[n.item()][n.day()] += n.mg());
            dish.uses().forEach(u -> use(u.resource(), u.day(), u.units()));
            dish.demands().forEach(d -> open.get(d.component()).add(d));
        }

        private void use(int resource, int day, long units) {
            used[resource][problem.resources().get(resource).period()[day]] += units;
        }

        Workload run() {
            for (int c = 0; c < open.size(); c++) {
                place(c, afterStock(c, open.get(c)));
            }
            return new Workload(List.copyOf(batches), need, used, List.copyOf(missed), stapleCents);
        }

        /** Demands in need order, less what stock covers. */
        private List<WeekProblem.Demand> afterStock(int component, List<WeekProblem.Demand> demands) {
            List<WeekProblem.Demand> left = new ArrayList<>(demands);
            left.sort(ORDER);
            for (WeekProblem.ComponentStock lot : problem.componentStock()) {
                long mg = lot.component() == component ? lot.mg() : 0;
                for (int i = 0; i < left.size() && mg > 0; i++) {
                    WeekProblem.Demand d = left.get(i);
                    if (d.mg() > 0 && lot.from() <= d.useDay() && lot.until() >= d.lastDay()) {
                        long take = Math.min(mg, d.mg());
                        mg -= take;
                        left.set(i, new WeekProblem.Demand(component, d.useDay(), d.lastDay(), d.mg() - take));
                    }
                }
            }
            left.removeIf(d -> d.mg() == 0);
            return left;
        }

        private void place(int c, List<WeekProblem.Demand> demands) {
            WeekProblem.Component made = problem.components().get(c);
            List<WeekProblem.Demand> left = new ArrayList<>(demands);
            while (!left.isEmpty()) {
                WeekProblem.Demand first = left.get(0);
                int day = prepDayAtOrBefore(first.useDay() - made.leadDays());
                if (day < 0 || day + made.lifeDays() - 1 < first.lastDay()) {
                    missed.add(left.remove(0));
                    continue;
                }
                int good = day + made.lifeDays() - 1;
                long mg = 0;
                int last = 0;
                for (WeekProblem.Demand d : left) {
                    if (d.lastDay() <= good) {
                        mg += d.mg();
                        last = Math.max(last, d.lastDay());
                    }
                }
                left.removeIf(d -> d.lastDay() <= good);
                int steps = Math.toIntExact((mg + made.stepMg() - 1) / made.stepMg());
                make(c, made, eased(made, day, last, steps), last, steps);
            }
        }

        private int prepDayAtOrBefore(int day) {
            int d = Math.min(day, problem.days() - 1);
            while (d >= 0 && !problem.prepDays()[d]) {
                d--;
            }
            return d;
        }

        /** The day itself, or one prep day earlier when that spares a station. */
        private int eased(WeekProblem.Component made, int day, int last, int steps) {
            if (fits(made, day, steps)) {
                return day;
            }
            int earlier = prepDayAtOrBefore(day - 1);
            boolean lives = earlier >= 0 && earlier + made.lifeDays() - 1 >= last;
            return lives && fits(made, earlier, steps) ? earlier : day;
        }

        private boolean fits(WeekProblem.Component made, int day, int steps) {
            for (WeekProblem.StepUse u : made.uses()) {
                WeekProblem.Resource r = problem.resources().get(u.resource());
                int period = r.period()[day];
                if (r.hands() && used[u.resource()][period] + u.units(steps) > r.regular()[period]) {
                    return false;
                }
            }
            return true;
        }

        private void make(int c, WeekProblem.Component made, int day, int last, int steps) {
            batches.add(new Batch(c, day, last, steps));
            stapleCents += made.stapleCents(steps);
            made.perStep().forEach(n -> need[n.item()][Math.max(0, day - n.aheadDays())] += n.mg() * steps);
            for (WeekProblem.StepUse u : made.uses()) {
                boolean held = problem.resources().get(u.resource()).held();
                for (int d = day; d <= (held ? last : day); d++) {
                    use(u.resource(), d, u.units(steps));
                }
            }
            made.parts().forEach(p -> open.get(p.component())
                    .add(new WeekProblem.Demand(p.component(), day, last, p.mg() * steps)));
        }

        private static final java.util.Comparator<WeekProblem.Demand> ORDER =
                java.util.Comparator.comparingInt(WeekProblem.Demand::useDay)
                        .thenComparingInt(WeekProblem.Demand::lastDay)
                        .thenComparingLong(WeekProblem.Demand::mg);
    }

    /** Hard musts of hands and equipment: units above what can be had at all, summed. */
    public long unitsOver(WeekProblem problem) {
        long over = 0;
        for (int r = 0; r < used.length; r++) {
            WeekProblem.Resource resource = problem.resources().get(r);
            for (int t = 0; t < used[r].length; t++) {
                over += Math.max(0, used[r][t] - resource.regular()[t] - resource.overtime()[t]);
            }
        }
        return over;
    }

    /** No batches, no needs: for tests and empty menus. */
    public static Workload none(WeekProblem problem) {
        int[] empty = new int[problem.slots().size()];
        java.util.Arrays.fill(empty, -1);
        return of(problem, empty);
    }

    /** Batches of one component, by day. */
    public List<Batch> batchesOf(int component) {
        List<Batch> own = new ArrayList<>(batches.stream().filter(b -> b.component() == component).toList());
        own.sort(java.util.Comparator.comparingInt(Batch::day));
        return Collections.unmodifiableList(own);
    }
}
