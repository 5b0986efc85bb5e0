package croftboard.plan.change;

import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Takes back order lines that differ from what the plan had already, as long as what each gains is less than the price of
 * disturbing a vendor: whole deliveries first, then items, then single lines.
 */
public final class StayPut {
    private final WeekProblem problem;
    private final int[] choice;
    private final Workload work;
    private final int[] before;
    private final long lineCents;

    /** @param before packs of the plan, within what is offered now. @param lineCents price of one changed line */
    public StayPut(WeekProblem problem, int[] choice, int[] before, long lineCents) {
        this.problem = problem;
        this.choice = choice;
        this.work = Workload.of(problem, choice);
        this.before = before;
        this.lineCents = lineCents;
    }

    public int[] calm(int[] packs) {
        int[] best = packs.clone();
        boolean again = true;
        while (again) {
            again = false;
            for (List<Integer> group : groups(best)) {
                int[] tried = best.clone();
                group.forEach(o -> tried[o] = before[o]);
                if (worth(tried) > worth(best)) {
                    best = tried;
                    again = true;
                }
            }
        }
        return best;
    }

    /** Value less the price of changed lines; nothing is worth a broken must. */
    private long worth(int[] packs) {
        if (!Buying.of(problem, work.needMg(), packs).complete() || belowMinimum(packs)) {
            return Long.MIN_VALUE;
        }
        long changed = IntStream.range(0, packs.length).filter(o -> packs[o] != before[o]).count();
        return Account.of(problem, choice, packs, work).value() - lineCents * changed;
    }

    private boolean belowMinimum(int[] packs) {
        long[] money = new long[problem.deliveries().size()];
        for (int o = 0; o < packs.length; o++) {
            money[problem.offers().get(o).delivery()] += problem.offers().get(o).costCents(packs[o]);
        }
        return IntStream.range(0, money.length).anyMatch(v -> money[v] > 0
                && money[v] < problem.deliveries().get(v).minimumCents());
    }

    private List<List<Integer>> groups(int[] packs) {
        List<Integer> differ = IntStream.range(0, packs.length).filter(o -> packs[o] != before[o]).boxed().toList();
        List<List<Integer>> all = new ArrayList<>();
        int[] deliveries = differ.stream().mapToInt(o -> problem.offers().get(o).delivery()).distinct().toArray();
        Arrays.stream(deliveries).forEach(v -> all.add(differ.stream()
                .filter(o -> problem.offers().get(o).delivery() == v).toList()));
        int[] items = differ.stream().mapToInt(o -> problem.offers().get(o).item()).distinct().toArray();
        Arrays.stream(items).forEach(i -> all.add(differ.stream().filter(o -> problem.offers().get(o).item() == i).toList()));
        differ.forEach(o -> all.add(List.of(o)));
        return all;
    }
}
