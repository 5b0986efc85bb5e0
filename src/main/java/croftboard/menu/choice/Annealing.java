package croftboard.menu.choice;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;

/** A first good menu: one slot changes at a time, what misses the bound shrinks, and broken limits cost more and more. */
final class Annealing {
    private static final int OPTIONS = 6;
    private static final int COOLING_STEPS = 1_000;
    private static final double HOT = 4.5;
    private static final double COLD = 0.1;
    private final Priced priced;
    private final Random random;
    private final int[] movable;
    private final int limits;
    private final double unit;

    Annealing(Priced priced, Random random) {
        this.priced = priced;
        this.random = random;
        limits = priced.price.length;
        movable = java.util.stream.IntStream.range(0, priced.choices.slots())
                .filter(s -> priced.order[s].length > 1).toArray();
        unit = unitCents();
    }

    /** A part of what an option's units of one limit cost, on average. */
    private double unitCents() {
        double sum = 0;
        long count = 0;
        for (int s : movable) {
            for (int k = 0; k < priced.order[s].length; k++) {
                for (int r = 0; r < limits; r++) {
                    sum += priced.price[r] * priced.choices.units()[s][k][r];
                    count += priced.price[r] > 0 ? 1 : 0;
                }
            }
        }
        return count == 0 ? 1 : Math.max(1e-6, 0.22 * sum / count);
    }

    /** The best menu met that keeps every limit. */
    Optional<int[]> menu(long moves) {
        for (double dearer = 2; dearer < 100; dearer *= 3) {
            Optional<int[]> met = menu(moves, dearer);
            if (met.isPresent()) {
                return met;
            }
        }
        return Optional.empty();
    }

    private double[] overPrices(double dearer) {
        double mean = Arrays.stream(priced.price).average().orElse(0);
        return Arrays.stream(priced.price).map(p -> dearer * Math.max(p, 0.3 * mean)).toArray();
    }

    private Optional<int[]> menu(long moves, double dearer) {
        double[] over = overPrices(dearer);
        int[] options = new int[priced.choices.slots()];
        for (int s = 0; s < options.length; s++) {
            options[s] = priced.order[s][0];
        }
        int[] room = priced.choices.room(options);
        int[] next = new int[limits];
        int[] best = fits(room) ? options.clone() : null;
        long worth = priced.choices.worthOf(options);
        long bestWorth = best == null ? Long.MIN_VALUE : worth;
        double heat = HOT * unit;
        double cooler = StrictMath.pow(COLD / HOT, COOLING_STEPS / (double) Math.max(COOLING_STEPS, moves));
        for (long n = 0; n < moves && movable.length > 0; n++) {
            heat *= n % COOLING_STEPS == 0 ? cooler : 1;
            int s = movable[random.nextInt(movable.length)];
            int to = priced.order[s][random.nextInt(Math.min(OPTIONS, priced.order[s].length))];
            int old = options[s];
            if (to == old) {
                continue;
            }
            double worse = priced.loss[s][to] - priced.loss[s][old]
                    + change(room, next, priced.choices.units()[s][old], priced.choices.units()[s][to], over);
            if (worse > 0 && worse > -heat * StrictMath.log(1 - random.nextDouble())) {
                continue;
            }
            int[] kept = room;
            room = next;
            next = kept;
            options[s] = to;
            worth += priced.choices.worth()[s][to] - priced.choices.worth()[s][old];
            if (worth > bestWorth && fits(room)) {
                bestWorth = worth;
                best = options.clone();
            }
        }
        return Optional.ofNullable(best);
    }

    private double change(int[] room, int[] next, int[] old, int[] to, double[] over) {
        double sum = 0;
        for (int r = 0; r < limits; r++) {
            next[r] = room[r] + old[r] - to[r];
            sum += cost(next[r], r, over) - cost(room[r], r, over);
        }
        return sum;
    }

    private double cost(int left, int r, double[] over) {
        return left >= 0 ? priced.price[r] * left : -over[r] * left;
    }

    private static boolean fits(int[] room) {
        for (int left : room) {
            if (left < 0) {
                return false;
            }
        }
        return true;
    }
}
