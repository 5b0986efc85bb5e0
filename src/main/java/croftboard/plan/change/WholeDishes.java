package croftboard.plan.change;

import croftboard.need.WeekProblem;
import croftboard.plan.ProblemBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A changed week for a question about it: the plan's dishes stand as they are, none in fewer portions or with a substitute. */
public final class WholeDishes {
    private WholeDishes() { }

    /** The same week without variants that the plan does not have already. */
    public static ChangedWeek of(ChangedWeek week) {
        if (!week.faults().isEmpty() || week.variants().isEmpty()) {
            return week;
        }
        int[] start = week.start().clone();
        List<WeekProblem.Slot> built = new ArrayList<>(week.built().problem().slots());
        List<WeekProblem.Slot> priced = new ArrayList<>(week.priced().slots());
        week.variants().forEach((s, others) -> {
            int own = week.start()[s];
            int[] kept = IntStream.range(0, built.get(s).candidates().size()).filter(k -> k == own || !others.containsKey(k)).toArray();
            built.set(s, only(built.get(s), kept));
            priced.set(s, only(priced.get(s), kept));
            start[s] = own < 0 ? own : Arrays.binarySearch(kept, own);
        });
        ProblemBuilder.Built b = week.built();
        return new ChangedWeek(new ProblemBuilder.Built(Problems.withSlots(b.problem(), built), b.keptFaults(), b.swaps(), b.gone()),
                Problems.withSlots(week.priced(), priced), start, week.standing(), week.faults(), Map.of());
    }

    private static WeekProblem.Slot only(WeekProblem.Slot s, int[] kept) {
        return new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), s.free(), s.emptyCents(), s.mayBeEmpty(),
                Arrays.stream(kept).mapToObj(s.candidates()::get).toList());
    }
}
