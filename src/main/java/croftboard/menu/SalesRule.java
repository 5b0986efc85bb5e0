package croftboard.menu;

import croftboard.need.WeekProblem;

/** A dish brings its expected sales and what is left of it, less the staples it uses; an empty slot costs its price. */
final class SalesRule implements MenuRule {
    private final WeekProblem problem;
    private final boolean[] filled;
    private long value;
    private long sales;
    private long emptyCents;

    SalesRule(WeekProblem problem) {
        this.problem = problem;
        filled = new boolean[problem.slots().size()];
        problem.slots().forEach(s -> emptyCents += s.emptyCents());
    }

    @Override
    public void put(int slot, WeekProblem.Candidate dish) {
        filled[slot] = true;
        value += dish.valueCents();
        sales += dish.salesCents();
        emptyCents -= problem.slots().get(slot).emptyCents();
    }

    @Override
    public void take(int slot, WeekProblem.Candidate dish) {
        filled[slot] = false;
        value -= dish.valueCents();
        sales -= dish.salesCents();
        emptyCents += problem.slots().get(slot).emptyCents();
    }

    /** Expected sales of the dishes that stand, in cents. */
    long salesCents() {
        return sales;
    }

    @Override
    public long cents() {
        return value - emptyCents + problem.constantCents();
    }

    @Override
    public String sentence() {
        StringBuilder empty = new StringBuilder();
        for (int s = 0; s < filled.length; s++) {
            if (!filled[s]) {
                empty.append(empty.isEmpty() ? "nothing stands on " : ", ").append(problem.slots().get(s).id());
            }
        }
        return empty.toString();
    }
}
