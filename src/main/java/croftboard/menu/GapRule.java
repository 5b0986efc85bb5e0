package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.Arrays;

/** A dish is not served twice within its gap: two slots with the same dish start at least so many days apart (a must). */
final class GapRule implements MenuRule {
    private final WeekProblem problem;
    private final int[][] slotsOf;
    private final int[] count;
    private long conflicts;

    GapRule(WeekProblem problem) {
        this.problem = problem;
        int dishes = 1 + problem.slots().stream().flatMap(s -> s.candidates().stream())
                .mapToInt(WeekProblem.Candidate::dish).max().orElse(0);
        slotsOf = new int[dishes][4];
        count = new int[dishes];
    }

    @Override
    public void put(int slot, WeekProblem.Candidate dish) {
        if (!problem.slots().get(slot).free()) {
            return;
        }
        int d = dish.dish();
        conflicts += with(slot, d);
        if (count[d] == slotsOf[d].length) {
            slotsOf[d] = Arrays.copyOf(slotsOf[d], 2 * count[d]);
        }
        slotsOf[d][count[d]++] = slot;
    }

    @Override
    public void take(int slot, WeekProblem.Candidate dish) {
        if (!problem.slots().get(slot).free()) {
            return;
        }
        int d = dish.dish();
        int at = 0;
        while (slotsOf[d][at] != slot) {
            at++;
        }
        slotsOf[d][at] = slotsOf[d][--count[d]];
        conflicts -= with(slot, d);
    }

    private int with(int slot, int dish) {
        int near = 0;
        for (int i = 0; i < count[dish]; i++) {
            int other = slotsOf[dish][i];
            int apart = Math.abs(problem.slots().get(slot).startDay() - problem.slots().get(other).startDay());
            near += apart < problem.prices().gapDays() ? 1 : 0;
        }
        return near;
    }

    @Override
    public long cents() {
        return 0;
    }

    @Override
    public long mustsBroken() {
        return conflicts;
    }

    @Override
    public String sentence() {
        return conflicts == 0 ? "" : conflicts + " dishes come back within " + problem.prices().gapDays() + " days";
    }
}
