package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.function.IntConsumer;

/**
 * A menu that is being changed dish by dish, food left out: what it is worth before anything is bought, and what it
 * needs. For a search that keeps the orders beside it. Not safe for several threads.
 */
public final class OpenMenu {
    private final WeekProblem problem;
    private final MenuState state;
    private final MoveTable table;
    private long sales;
    private long dishStaples;

    /** @param choice candidate of each slot, -1 for none */
    public OpenMenu(WeekProblem problem, int[] choice) {
        this.problem = problem;
        state = new MenuState(problem, PurchasePrices.of(problem, 0));
        table = new MoveTable(problem);
        for (int s = 0; s < choice.length; s++) {
            set(s, choice[s]);
        }
    }

    /** @param candidate number in the slot's list; -1 for none */
    public void set(int slot, int candidate) {
        count(slot, -1);
        state.set(slot, candidate);
        count(slot, 1);
    }

    private void count(int slot, int sign) {
        int k = state.choice(slot);
        if (k >= 0) {
            WeekProblem.Candidate dish = problem.slots().get(slot).candidates().get(k);
            sales += sign * dish.salesCents();
            dishStaples += sign * dish.stapleCents();
        }
    }

    public int choice(int slot) {
        return state.choice(slot);
    }

    /** A copy. */
    public int[] choices() {
        return state.choices();
    }

    /** Cents before food, receiving left out; a broken must weighs more than any dish. */
    public long worth() {
        return state.worthWithoutPurchases() - state.mustsWeight();
    }

    /** Whether gaps, hands and equipment hold, receiving left out. */
    public boolean keepsMusts() {
        return state.keepsMusts();
    }

    /** Cents that food may cost within its promised share of sales, beside the staples. */
    public double foodFree() {
        return problem.prices().foodCostAtMost().toDouble() * (sales + problem.constantCents())
                - dishStaples - state.work().stapleCents();
    }

    /** Milligrams by day, as purchased, stock not taken off; the menu's own array, not to be written. */
    public long[] need(int item) {
        return state.work().need[item];
    }

    /** Units by period of a resource; the menu's own array, up to date after {@link #worth()}. */
    public long[] used(int resource) {
        return state.work().used[resource];
    }

    /** Items whose needs changed since the last call. */
    public void changed(IntConsumer each) {
        state.work().settle();
        state.work().drainDirty(each);
    }

    /** Slots that can change at all. */
    public int[] movable() {
        return table.movable;
    }

    /** Slots that share dishes with this one. */
    public int[] partners(int slot) {
        return table.partners[slot];
    }

    /** The number on slot {@code to} of the dish that stands on {@code from}; -1 when it does not fit. */
    public int carried(int from, int to) {
        return table.carried(from, state.choice(from), to);
    }
}
