package croftboard.menu.choice;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A plain choice problem as numbers: of each slot one option, the most worth, within every limit. Options that another
 * beats in worth and units are left out.
 *
 * @param worth by slot and option, cents; the option "nothing" is worth less than none when it breaks a promise
 * @param units by slot, option and limit
 * @param most of each limit, only of limits that some menu would break
 * @param resource of each limit
 * @param period of each limit
 * @param candidate by slot and option: number of the slot's candidate, -1 for nothing
 */
record Choices(long[][] worth, int[][][] units, int[] most, int[] resource, int[] period, int[][] candidate) {

    /** Empty when the week is of another kind: something is needed, bought, promised beside filled slots, or kept apart. */
    static Optional<Choices> of(WeekProblem problem) {
        if (!problem.prices().coverage().isEmpty() || !problem.prices().variety().isEmpty()
                || problem.prices().evennessCentsPerMinute().signum() != 0
                || problem.offers().stream().anyMatch(o -> o.minPacks() > 0) || repeats(problem)
                || problem.slots().stream().anyMatch(s -> s.candidates().stream().anyMatch(Choices::needsMore))) {
            return Optional.empty();
        }
        return Limits.of(problem).map(limits -> build(problem, limits));
    }

    private static boolean needsMore(WeekProblem.Candidate c) {
        return !c.needs().isEmpty() || !c.demands().isEmpty() || !c.loose().isEmpty() || c.stapleCents() != 0
                || c.looseStapleCents() != 0;
    }

    /** Whether a dish might come back within its gap. */
    private static boolean repeats(WeekProblem problem) {
        Map<Integer, Integer> lastStart = new HashMap<>();
        int gap = problem.prices().gapDays();
        return gap > 0 && problem.slots().stream().filter(WeekProblem.Slot::free)
                .sorted(java.util.Comparator.comparingInt(WeekProblem.Slot::startDay))
                .anyMatch(s -> s.candidates().stream().mapToInt(WeekProblem.Candidate::dish).distinct().anyMatch(d -> {
                    Integer before = lastStart.put(d, s.startDay());
                    return before != null && s.startDay() - before < gap;
                }));
    }

    private static Choices build(WeekProblem problem, Limits limits) {
        int slots = problem.slots().size();
        long[][] worth = new long[slots][];
        int[][][] units = new int[slots][][];
        int[][] candidate = new int[slots][];
        for (int s = 0; s < slots; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            int dishes = slot.candidates().size();
            List<Option> options = new ArrayList<>();
            for (int k = 0; k < dishes; k++) {
                WeekProblem.Candidate c = slot.candidates().get(k);
                options.add(new Option(k, c.valueCents(), limits.units(c)));
            }
            if (slot.mayBeEmpty() || dishes == 0) {
                options.add(new Option(-1, -slot.emptyCents(), new int[limits.count()]));
            }
            List<Option> kept = IntStream.range(0, options.size())
                    .filter(k -> IntStream.range(0, options.size()).noneMatch(o -> beats(options, o, k)))
                    .mapToObj(options::get).toList();
            worth[s] = kept.stream().mapToLong(Option::cents).toArray();
            units[s] = kept.stream().map(Option::units).toArray(int[][]::new);
            candidate[s] = kept.stream().mapToInt(Option::candidate).toArray();
        }
        return new Choices(worth, units, limits.most(), limits.resource(), limits.period(), candidate);
    }

    /** The same choices among some slots and limits only. */
    Choices part(int[] slots, int[] limits) {
        return new Choices(Arrays.stream(slots).mapToObj(s -> worth[s]).toArray(long[][]::new),
                Arrays.stream(slots).mapToObj(s -> Arrays.stream(units[s])
                        .map(own -> Arrays.stream(limits).map(r -> own[r]).toArray()).toArray(int[][]::new))
                        .toArray(int[][][]::new),
                picked(most, limits), picked(resource, limits), picked(period, limits),
                Arrays.stream(slots).mapToObj(s -> candidate[s]).toArray(int[][]::new));
    }

    private static int[] picked(int[] of, int[] which) {
        return Arrays.stream(which).map(n -> of[n]).toArray();
    }

    private record Option(int candidate, long cents, int[] units) { }

    /** Whether an option is worth no less and uses no more than another; of two that are alike the first does. */
    private static boolean beats(List<Option> options, int one, int other) {
        Option a = options.get(one);
        Option b = options.get(other);
        boolean better = a.cents > b.cents || one < other;
        if (one == other || a.cents < b.cents) {
            return false;
        }
        for (int r = 0; r < a.units.length; r++) {
            if (a.units[r] > b.units[r]) {
                return false;
            }
            better |= a.units[r] < b.units[r];
        }
        return better;
    }

    int slots() {
        return worth.length;
    }

    int limits() {
        return most.length;
    }

    long worthOf(int[] options) {
        long sum = 0;
        for (int s = 0; s < options.length; s++) {
            sum += worth[s][options[s]];
        }
        return sum;
    }

    /** What is left of each limit; below zero where it is broken. */
    int[] room(int[] options) {
        int[] room = most.clone();
        for (int s = 0; s < options.length; s++) {
            for (int r = 0; r < room.length; r++) {
                room[r] -= units[s][options[s]][r];
            }
        }
        return room;
    }

    boolean fits(int[] options) {
        return Arrays.stream(room(options)).allMatch(left -> left >= 0);
    }

    int[] menu(int[] options) {
        int[] menu = new int[options.length];
        for (int s = 0; s < menu.length; s++) {
            menu[s] = candidate[s][options[s]];
        }
        return menu;
    }

    /** The options of a menu; the first where its dish is none of them. */
    int[] options(int[] menu) {
        int[] options = new int[menu.length];
        for (int s = 0; s < menu.length; s++) {
            for (int k = 0; k < candidate[s].length; k++) {
                options[s] = candidate[s][k] == menu[s] ? k : options[s];
            }
        }
        return options;
    }
}
