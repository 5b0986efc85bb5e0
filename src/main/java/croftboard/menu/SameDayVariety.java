package croftboard.menu;

import croftboard.need.Account;
import croftboard.need.WeekProblem;

/** On one day no more than so many dishes share a main ingredient, a method or a cuisine; each one more costs its price. */
final class SameDayVariety implements MenuRule {
    private final WeekProblem problem;
    private final WeekProblem.VarietyRule rule;
    private final int[][] count;
    private final boolean[] open;
    private long extra;

    SameDayVariety(WeekProblem problem, WeekProblem.VarietyRule rule) {
        this.problem = problem;
        this.rule = rule;
        int words = 1 + problem.slots().stream().flatMap(s -> s.candidates().stream())
                .mapToInt(c -> Account.trait(c, rule.trait())).max().orElse(0);
        count = new int[problem.days()][words];
        open = new boolean[problem.days()];
        for (int day : problem.openDays()) {
            open[day] = true;
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
        WeekProblem.Slot s = problem.slots().get(slot);
        if (!s.free()) {
            return;
        }
        int word = Account.trait(dish, rule.trait());
        for (int day : s.serviceDays()) {
            if (open[day]) {
                extra -= Math.max(0, count[day][word] - rule.atMost());
                count[day][word] += change;
                extra += Math.max(0, count[day][word] - rule.atMost());
            }
        }
    }

    @Override
    public long cents() {
        return -extra * rule.centsEach();
    }

    @Override
    public String sentence() {
        return extra == 0 ? "" : extra + " dishes too many share a " + WORDS[rule.trait()] + " on one day";
    }

    static final String[] WORDS = {"main ingredient", "method", "cuisine"};
}
