package croftboard.need;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Random weeks of the "worth only" kind: one dish a line, each with a worth and its units of every oven, and so many
 * units of each oven in the week. Shapes and ranges are those of the published sets of this choice problem, from
 * memory: units 0 to 9, in each oven about four units a line, worth by the units at a random price each, or free of them.
 * The same seed gives the same week.
 *
 * @param worth by line and dish, dollars
 * @param units by line, dish and oven
 * @param most by oven
 */
public record ChoiceWeek(String name, int[][] worth, int[][][] units, int[] most) {
    /** What an empty line costs, in dollars: more than any two dishes are worth. */
    static final int EMPTY = 10_000;

    /** How worth and units go together. */
    public enum Kind {
        /** Worth knows nothing of the units. */
        UNIFORM,
        /** Worth is the units at a price each, and a little. */
        CORRELATED,
        /** The dishes of a line are nearly the same. */
        SIMILAR
    }

    /** @param dishes of a line at most; at least half of them when {@code uneven} */
    public static ChoiceWeek of(Kind kind, int lines, int dishes, boolean uneven, int ovens, long seed) {
        Random random = new Random(seed * 1_000_003 + 31L * lines + 7L * dishes + ovens);
        int[] price = random.ints(ovens, 1, 10).toArray();
        int[][] worth = new int[lines][];
        int[][][] units = new int[lines][][];
        for (int s = 0; s < lines; s++) {
            int many = uneven ? dishes / 2 + random.nextInt(dishes - dishes / 2 + 1) : dishes;
            worth[s] = new int[many];
            units[s] = new int[many][ovens];
            int[] common = random.ints(ovens, 2, 8).toArray();
            for (int k = 0; k < many; k++) {
                int sum = 0;
                for (int r = 0; r < ovens; r++) {
                    units[s][k][r] = kind == Kind.SIMILAR ? common[r] + random.nextInt(5) - 2 : random.nextInt(10);
                    sum += units[s][k][r] * price[r];
                }
                worth[s][k] = kind == Kind.UNIFORM ? 1 + random.nextInt(50 * ovens) : sum + 1 + random.nextInt(20);
            }
        }
        int usual = kind == Kind.UNIFORM ? lines * 4 : lines * 9 / 2;
        int[] most = IntStream.range(0, ovens).map(r -> most(units, r, usual)).toArray();
        return new ChoiceWeek(kind + " " + lines + "x" + dishes + (uneven ? "-" : "") + "x" + ovens + " seed " + seed,
                worth, units, most);
    }

    /** Never less than the least that fills every line. */
    private static int most(int[][][] units, int oven, int usual) {
        int light = 0;
        for (int[] dish : lightest(units)) {
            light += dish[oven];
        }
        return Math.max(usual, light);
    }

    /** Of each line the dish with the fewest units in all. */
    private static int[][] lightest(int[][][] units) {
        int[][] light = new int[units.length][];
        for (int s = 0; s < light.length; s++) {
            for (int[] dish : units[s]) {
                light[s] = light[s] == null || IntStream.of(dish).sum() < IntStream.of(light[s]).sum() ? dish : light[s];
            }
        }
        return light;
    }

    public WeekProblem problem() {
        List<WeekProblem.Slot> slots = new ArrayList<>();
        int number = 0;
        for (int s = 0; s < worth.length; s++) {
            List<WeekProblem.Candidate> dishes = new ArrayList<>();
            for (int k = 0; k < worth[s].length; k++) {
                List<WeekProblem.Use> uses = new ArrayList<>();
                for (int r = 0; r < most.length; r++) {
                    if (units[s][k][r] > 0) {
                        uses.add(new WeekProblem.Use(r, 7, units[s][k][r]));
                    }
                }
                dishes.add(new WeekProblem.Candidate(number, "d" + number, 0, worth[s][k] * 100L, 0, 0, List.of(), uses,
                        List.of(), List.of(), 0, 0, 0, 0, 0, List.of()));
                number++;
            }
            slots.add(new WeekProblem.Slot("mon/c" + s, s, new int[] {7}, true, EMPTY * 100L, true, dishes));
        }
        List<WeekProblem.Resource> ovens = new ArrayList<>();
        for (int r = 0; r < most.length; r++) {
            ovens.add(new WeekProblem.Resource("o" + r, "o" + r, false, new int[14], new long[] {most[r]},
                    new long[1], 0, false));
        }
        WeekProblem.Prices prices = new WeekProblem.Prices(0, List.of(), List.of(), Ratio.ZERO, Ratio.ZERO, Ratio.ONE,
                Ratio.ZERO, Ratio.ZERO, -1, 0);
        boolean[] prep = new boolean[14];
        prep[7] = true;
        return new WeekProblem(name, LocalDate.of(2027, 8, 9), 14, new int[] {7}, prep, slots, List.of(), List.of(),
                List.of(), List.of(), ovens, List.of(), List.of(), List.of(), prices, 0);
    }

    /** kitchen/kitchen.yaml of the book that states this week. */
    public String kitchen() {
        StringBuilder text = new StringBuilder("open: [mon]\npromises: {empty_slot: $" + EMPTY + " each}\nlines:\n");
        for (int s = 0; s < worth.length; s++) {
            text.append("  - {id: c").append(s).append(", course: any}\n");
        }
        text.append("equipment:\n");
        for (int r = 0; r < most.length; r++) {
            text.append("  - {id: o").append(r).append(", unit: units, per_week: ").append(most[r]).append("}\n");
        }
        return text.toString();
    }

    /** recipes/dishes.yaml of that book. */
    public String recipes() {
        StringBuilder text = new StringBuilder();
        int number = 0;
        for (int s = 0; s < worth.length; s++) {
            for (int k = 0; k < worth[s].length; k++) {
                text.append("d").append(number++).append(": {kind: dish, fits: [c").append(s).append("], worth: $")
                        .append(worth[s][k]).append(", uses: {");
                for (int r = 0; r < most.length; r++) {
                    text.append(r == 0 ? "" : ", ").append("o").append(r).append(": ").append(units[s][k][r])
                            .append(" units");
                }
                text.append("}}\n");
            }
        }
        return text.toString();
    }
}
