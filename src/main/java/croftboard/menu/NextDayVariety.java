package croftboard.menu;

import croftboard.need.Account;
import croftboard.need.WeekProblem;

/** A line does not bring the same main ingredient, method or cuisine in two runs that follow; each repeat costs its price. */
final class NextDayVariety implements MenuRule {
    private static final int NONE = Integer.MIN_VALUE;
    private final WeekProblem problem;
    private final WeekProblem.VarietyRule rule;
    private final int[] next;
    private final int[] before;
    private final int[] word;
    private long repeats;

    NextDayVariety(WeekProblem problem, WeekProblem.VarietyRule rule) {
        this.problem = problem;
        this.rule = rule;
        int slots = problem.slots().size();
        next = new int[slots];
        before = new int[slots];
        word = new int[slots];
        java.util.Arrays.fill(before, -1);
        java.util.Arrays.fill(word, NONE);
        for (int s = 0; s < slots; s++) {
            next[s] = Account.nextOnLine(problem, s);
            if (next[s] >= 0) {
                before[next[s]] = s;
            }
        }
    }

    @Override
    public void put(int slot, WeekProblem.Candidate dish) {
        set(slot, problem.slots().get(slot).free() ? Account.trait(dish, rule.trait()) : NONE);
    }

    @Override
    public void take(int slot, WeekProblem.Candidate dish) {
        set(slot, NONE);
    }

    private void set(int slot, int to) {
        repeats -= repeat(slot, next[slot]) + repeat(before[slot], slot);
        word[slot] = to;
        repeats += repeat(slot, next[slot]) + repeat(before[slot], slot);
    }

    private int repeat(int a, int b) {
        return a >= 0 && b >= 0 && word[a] != NONE && word[a] == word[b] ? 1 : 0;
    }

    @Override
    public long cents() {
        return -repeats * rule.centsEach();
    }

    @Override
    public String sentence() {
        return repeats == 0 ? "" : "a line repeats its " + SameDayVariety.WORDS[rule.trait()] + " " + repeats
                + (repeats == 1 ? " time" : " times") + " on following days";
    }
}
