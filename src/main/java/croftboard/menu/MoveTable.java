package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Which slots can change at all, which can exchange dishes, and a dish's number on each slot; worked out once a week. */
final class MoveTable {
    private static final int ABSENT = -1;
    final int[] movable;
    final int[][] partners;
    private final int[][] numberOfDish;
    private final int[][] dishOfNumber;

    MoveTable(WeekProblem week) {
        List<WeekProblem.Slot> slots = week.slots();
        Map<Integer, Integer> dense = new HashMap<>();
        dishOfNumber = new int[slots.size()][];
        for (int s = 0; s < slots.size(); s++) {
            dishOfNumber[s] = slots.get(s).candidates().stream()
                    .mapToInt(c -> dense.computeIfAbsent(c.dish(), d -> dense.size())).toArray();
        }
        numberOfDish = new int[slots.size()][dense.size()];
        for (int s = 0; s < slots.size(); s++) {
            java.util.Arrays.fill(numberOfDish[s], ABSENT);
            for (int k = 0; k < dishOfNumber[s].length; k++) {
                numberOfDish[s][dishOfNumber[s][k]] = k;
            }
        }
        movable = IntStream.range(0, slots.size()).filter(s -> slots.get(s).candidates().size()
                + (slots.get(s).mayBeEmpty() ? 1 : 0) > 1).toArray();
        partners = new int[slots.size()][];
        for (int s = 0; s < partners.length; s++) {
            int own = s;
            partners[s] = java.util.Arrays.stream(movable).filter(o -> o != own && share(own, o)).toArray();
        }
    }

    private boolean share(int a, int b) {
        for (int dish : dishOfNumber[a]) {
            if (numberOfDish[b][dish] != ABSENT) {
                return true;
            }
        }
        return false;
    }

    /** The number on slot {@code to} of the dish that has number {@code candidate} on slot {@code from}; -1 when it does not fit. */
    int carried(int from, int candidate, int to) {
        return numberOfDish[to][dishOfNumber[from][candidate]];
    }
}
