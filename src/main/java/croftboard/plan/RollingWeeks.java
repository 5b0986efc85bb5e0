package croftboard.plan;

import croftboard.need.Buying;
import croftboard.need.ServiceWeeks;
import croftboard.need.Stretch;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.sourcing.Sourcing;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * More weeks than one search can hold: a few weeks are planned as one, the first of them is settled, and the next few
 * follow, with what the settled weeks leave in stock and the dishes they have served. The time grows with the number of
 * weeks and not faster. What is answered is judged by the whole problem; nothing is proved about it.
 */
final class RollingWeeks {
    private final WeekProblem problem;
    private final int ahead;
    private final MonthBudget first;
    private final MonthBudget each;
    private final long seed;
    private final WeekSolver.Listener listener;
    private final BooleanSupplier stop;

    /**
     * @param ahead weeks planned as one, the settled one included
     * @param first budget of the first stretch, which starts from nothing
     * @param each budget of every later stretch
     * @param listener hears what is happening; the plans of single stretches are not told
     * @param stop asked now and then; true makes the remaining weeks as quickly as can be
     */
    RollingWeeks(WeekProblem problem, int ahead, MonthBudget first, MonthBudget each, long seed,
            WeekSolver.Listener listener, BooleanSupplier stop) {
        this.problem = problem;
        this.ahead = Math.max(1, ahead);
        this.first = first;
        this.each = each;
        this.seed = seed;
        this.listener = listener;
        this.stop = stop;
    }

    /** @param start menu to start from, -1 where nothing is set */
    WeekSolver.Solved solve(int[] start) {
        ServiceWeeks weeks = new ServiceWeeks(problem);
        int[] settled = new int[problem.slots().size()];
        Arrays.fill(settled, -1);
        int[] likely = start.clone();
        int[] packs = new int[problem.offers().size()];
        int last = Math.max(0, weeks.count() - ahead);
        for (int w = 0; w <= last; w++) {
            listener.doing("weeks " + (w + 1) + " to " + Math.min(weeks.count(), w + ahead) + " of " + weeks.count());
            Stretch stretch = new Stretch(problem, weeks, w, w + ahead, settled, packs);
            WeekSolver.Solved solved = new MonthSolver(stretch.problem, w == 0 ? first : each, seed + w, new Quiet(), stop)
                    .solve(stretch.choice(likely));
            stretch.choiceInto(solved.choice(), likely);
            stretch.packsInto(solved.orders().packs(), packs);
            for (int s : weeks.slots(w, w == last ? weeks.count() : w + 1)) {
                settled[s] = likely[s];
            }
        }
        return judged(settled, packs);
    }

    private WeekSolver.Solved judged(int[] choice, int[] packs) {
        Sourcing.Orders orders = new Sourcing(problem, 0).known(choice, packs);
        Workload work = Workload.of(problem, choice);
        Buying buying = Buying.of(problem, work.needMg(), orders.packs());
        boolean complete = new MissingMusts(Names.IDS, problem, choice, orders.packs(), work, buying).list().isEmpty();
        WeekSolver.Solved solved = new WeekSolver.Solved(choice, orders, complete, Optional.empty(), "");
        listener.better(solved);
        return solved;
    }

    /** A plan of a stretch is no plan of the whole. */
    private static final class Quiet implements WeekSolver.Listener {
        @Override
        public void doing(String what) { }

        @Override
        public void better(WeekSolver.Solved solved) { }
    }
}
