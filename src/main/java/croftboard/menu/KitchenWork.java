package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.Arrays;

/**
 * What the menu at hand makes the kitchen do, kept up to date: the same rule for batches as
 * {@link croftboard.need.Workload}, on plain arrays and redone only for what a change touches. A test holds the two equal.
 */
final class KitchenWork {
    private final WeekProblem problem;
    private final long[][] direct;
    private final long[][] directUsed;
    private final DemandList[] dishDemands;
    private final DemandList[] demands;
    private final BatchList[] placed;
    private final BatchList[] fresh;
    private final boolean[] itemDirty;
    private final int[] dirtyItems;
    private int dirtyCount;
    private boolean stale = true;
    /** By item and day, milligrams as purchased. */
    final long[][] need;
    /** By resource and period. */
    final long[][] used;
    private long missed;
    private long stapleCents;
    private final long[][] stapleTable;

    KitchenWork(WeekProblem problem) {
        this.problem = problem;
        int items = problem.items().size();
        int parts = problem.components().size();
        direct = new long[items][problem.days()];
        need = new long[items][problem.days()];
        itemDirty = new boolean[items];
        dirtyItems = new int[items];
        directUsed = new long[problem.resources().size()][];
        used = new long[problem.resources().size()][];
        for (int r = 0; r < used.length; r++) {
            directUsed[r] = new long[problem.resources().get(r).periods()];
            used[r] = new long[problem.resources().get(r).periods()];
        }
        dishDemands = new DemandList[parts];
        demands = new DemandList[parts];
        placed = new BatchList[parts];
        fresh = new BatchList[parts];
        stapleTable = new long[parts][0];
        for (int c = 0; c < parts; c++) {
            dishDemands[c] = new DemandList();
            demands[c] = new DemandList();
            placed[c] = new BatchList();
            fresh[c] = new BatchList();
        }
    }

    void put(WeekProblem.Candidate dish) {
        change(dish, 1);
        for (WeekProblem.Demand d : dish.demands()) {
            dishDemands[d.component()].add(d.useDay(), d.lastDay(), d.mg());
        }
    }

    void take(WeekProblem.Candidate dish) {
        change(dish, -1);
        for (WeekProblem.Demand d : dish.demands()) {
            dishDemands[d.component()].remove(d.useDay(), d.lastDay(), d.mg());
        }
    }

    private void change(WeekProblem.Candidate dish, int sign) {
        stale = true;
        for (WeekProblem.Need n : dish.needs()) {
            direct[n.item()][n.day()] += sign * n.mg();
            need[n.item()][n.day()] += sign * n.mg();
            touch(n.item());
        }
        for (WeekProblem.Use u : dish.uses()) {
            directUsed[u.resource()][problem.resources().get(u.resource()).period()[u.day()]] += sign * u.units();
        }
    }

    private void touch(int item) {
        if (!itemDirty[item]) {
            itemDirty[item] = true;
            dirtyItems[dirtyCount++] = item;
        }
    }

    /** Brings batches, needs and uses up to date. */
    void settle() {
        if (!stale) {
            return;
        }
        stale = false;
        missed = 0;
        stapleCents = 0;
        for (int r = 0; r < used.length; r++) {
            System.arraycopy(directUsed[r], 0, used[r], 0, used[r].length);
        }
        for (int c = 0; c < demands.length; c++) {
            demands[c].copyOf(dishDemands[c]);
        }
        for (int c = 0; c < demands.length; c++) {
            place(c);
        }
    }

    /** Items whose needs changed since the last call, handed to {@code each}. */
    void drainDirty(java.util.function.IntConsumer each) {
        while (dirtyCount > 0) {
            int item = dirtyItems[--dirtyCount];
            itemDirty[item] = false;
            each.accept(item);
        }
    }

    /** Demands that no batch can meet. */
    long missed() {
        return missed;
    }

    long stapleCents() {
        return stapleCents;
    }

    private void place(int c) {
        BatchList now = fresh[c];
        now.count = 0;
        DemandList open = demands[c];
        if (open.count > 0) {
            open.sort();
            takeStock(c, open);
            batches(c, open, now);
        }
        if (!now.equalTo(placed[c])) {
            swapNeeds(c, placed[c], -1);
            swapNeeds(c, now, 1);
            fresh[c] = placed[c];
            placed[c] = now;
        }
    }

    private void takeStock(int c, DemandList open) {
        for (WeekProblem.ComponentStock lot : problem.componentStock()) {
            long mg = lot.component() == c ? lot.mg() : 0;
            for (int i = 0; i < open.count && mg > 0; i++) {
                if (lot.from() <= open.use[i] && lot.until() >= open.last[i]) {
                    long taken = Math.min(mg, open.mg[i]);
                    mg -= taken;
                    open.mg[i] -= taken;
                }
            }
        }
    }

    private void batches(int c, DemandList open, BatchList now) {
        WeekProblem.Component made = problem.components().get(c);
        for (int i = 0; i < open.count; i++) {
            if (open.mg[i] <= 0) {
                continue;
            }
            int day = prepDayAtOrBefore(open.use[i] - made.leadDays());
            int good = day + made.lifeDays() - 1;
            if (day < 0 || good < open.last[i]) {
                missed++;
                continue;
            }
            long mg = 0;
            int last = 0;
            for (int j = i; j < open.count; j++) {
                if (open.mg[j] > 0 && open.last[j] <= good) {
                    mg += open.mg[j];
                    last = Math.max(last, open.last[j]);
                    open.mg[j] = 0;
                }
            }
            int steps = (int) ((mg + made.stepMg() - 1) / made.stepMg());
            make(c, made, eased(made, day, last, steps), last, steps, now);
        }
    }

    private int prepDayAtOrBefore(int day) {
        int d = Math.min(day, problem.days() - 1);
        while (d >= 0 && !problem.prepDays()[d]) {
            d--;
        }
        return d;
    }

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

    private void make(int c, WeekProblem.Component made, int day, int last, int steps, BatchList now) {
        now.add(day, last, steps);
        stapleCents += staples(c, steps);
        for (WeekProblem.StepUse u : made.uses()) {
            WeekProblem.Resource r = problem.resources().get(u.resource());
            for (int d = day; d <= (r.held() ? last : day); d++) {
                used[u.resource()][r.period()[d]] += u.units(steps);
            }
        }
        for (WeekProblem.StepPart p : made.parts()) {
            demands[p.component()].add(day, last, p.mg() * steps);
        }
    }

    /** Exact cents by number of steps, worked out once. */
    private long staples(int c, int steps) {
        if (steps >= stapleTable[c].length) {
            int from = stapleTable[c].length;
            stapleTable[c] = Arrays.copyOf(stapleTable[c], steps + 16);
            for (int n = from; n < stapleTable[c].length; n++) {
                stapleTable[c][n] = problem.components().get(c).stapleCents(n);
            }
        }
        return stapleTable[c][steps];
    }

    private void swapNeeds(int c, BatchList batches, int sign) {
        for (int b = 0; b < batches.count; b++) {
            for (WeekProblem.StepNeed n : problem.components().get(c).perStep()) {
                need[n.item()][Math.max(0, batches.day[b] - n.aheadDays())] += sign * n.mg() * batches.steps[b];
                touch(n.item());
            }
        }
    }
}
