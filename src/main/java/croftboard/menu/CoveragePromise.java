package croftboard.menu;

import croftboard.need.WeekProblem;

/** On each open day at least so many dishes count for the promise; each one missing costs its price. */
final class CoveragePromise implements MenuRule {
    private final WeekProblem problem;
    private final int number;
    private final WeekProblem.CoverageRule rule;
    private final int[] have;
    private final boolean[] open;
    private long missing;

    CoveragePromise(WeekProblem problem, int number) {
        this.problem = problem;
        this.number = number;
        rule = problem.prices().coverage().get(number);
        have = new int[problem.days()];
        open = new boolean[problem.days()];
        for (int day : problem.openDays()) {
            open[day] = true;
            missing += rule.atLeast();
        }
    }

    @Override
    public void put(int slot, WeekProblem.Candidate dish) {
        count(slot, dish, 1);
    }

    @Override
    public void take(int slot, WeekProblem.Candidate dish) {
        count(slot, dish, -1);
    }

    private void count(int slot, WeekProblem.Candidate dish, int change) {
        if ((dish.covers() >> number & 1) == 0) {
            return;
        }
        for (int day : problem.slots().get(slot).serviceDays()) {
            if (open[day]) {
                missing -= Math.max(0, rule.atLeast() - have[day]);
                have[day] += change;
                missing += Math.max(0, rule.atLeast() - have[day]);
            }
        }
    }

    @Override
    public long cents() {
        return -missing * rule.centsEach();
    }

    @Override
    public String sentence() {
        return missing == 0 ? "" : rule.id() + " lacks " + missing + (missing == 1 ? " dish" : " dishes") + " in the week";
    }
}
