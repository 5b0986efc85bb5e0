package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.menu.MenuSearch;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The least disturbing way out of changed facts. At once: the plan's own menu with new orders, and only where that cannot be
 * bought, other dishes. Then settled: the whole open rest of the week searched again, each dish that differs at the price of a
 * change, and order lines taken back that gain less than disturbing a vendor costs.
 */
public final class Repair {
    private static final int FIRST_ROUNDS = 2_000;
    private static final int FIRST_TRIES = 40_000;
    private static final int FIRST_MEMORY = 12;
    /** A changed order line costs a quarter of a changed dish: a call and a corrected sheet; common practice, no source. */
    private static final int LINES_A_DISH = 4;
    private final Book book;
    private final WeekPlan plan;
    private final ChangedWeek week;
    private final int[] before;
    private final long lineCents;
    private final WeekPlan.Revision revision;

    /** @param week without faults. @param revision what is written into the new version */
    public Repair(Book book, WeekPlan plan, ChangedWeek week, WeekPlan.Revision revision) {
        if (!week.faults().isEmpty()) {
            throw new IllegalArgumentException(week.faults().toString());
        }
        this.book = book;
        this.plan = plan;
        this.week = week;
        this.revision = revision;
        this.before = PlanPacks.of(week.built().problem(), plan);
        this.lineCents = book.kitchen().promises().change().value() / LINES_A_DISH;
    }

    /** Complete whenever a search of a moment finds a way. */
    public WeekPlan atOnce(long seed) {
        return named(quick(seed));
    }

    private WeekRun.Found quick(long seed) {
        WeekRun.Found own = WeekRun.orders(week.priced(), week.start(), seed, FIRST_ROUNDS);
        if (own.complete()) {
            return own;
        }
        WeekProblem p = week.priced();
        WeekRun.Found mended = new Mend(p, seed).run(own);
        if (mended.complete()) {
            return mended;
        }
        int[] menu = new MenuSearch(p, p.prices().localPrice().toDouble() / 2).search(week.start(), seed,
                new MenuSearch.Effort(FIRST_TRIES, 0, FIRST_MEMORY), () -> false).choice();
        return new Mend(p, seed).run(WeekRun.orders(p, menu, seed, FIRST_ROUNDS));
    }

    /** @param better told each better plan on the way */
    public WeekPlan settled(WeekRun.Effort effort, Consumer<WeekPlan> better) {
        WeekRun.Found first = quick(effort.seed());
        WeekPlan best = named(first);
        WeekPlan found = named(WeekRun.solve(week.priced(), first.choice(), effort, f -> better.accept(named(f))));
        boolean wins = found.complete() && !best.complete()
                || found.complete() == best.complete() && calmWorth(found) > calmWorth(best);
        return wins ? found : best;
    }

    /** Value less the price of every dish and order line that differs from the plan's. */
    private long calmWorth(WeekPlan now) {
        Disturbance differs = Disturbance.between(plan, now);
        return now.value() - book.kitchen().promises().change().value() * differs.dishes() - lineCents * differs.orderLines();
    }

    private WeekPlan named(WeekRun.Found found) {
        int[] packs = found.complete()
                ? new StayPut(week.built().problem(), found.choice(), before, lineCents).calm(found.packs()) : found.packs();
        WeekPlan.Inputs was = plan.inputs();
        WeekPlan.Inputs inputs = new WeekPlan.Inputs(was.seed(), was.tries(), was.rounds(), was.nodes(), was.kept(),
                was.from(), was.gone(), Optional.of(revision));
        return WeekRun.plan(book, plan.week(), week.built(), found.choice(), packs, week.standing(), inputs,
                new WeekPlan.Proof(Optional.empty(), Optional.empty(), found.how()));
    }
}
