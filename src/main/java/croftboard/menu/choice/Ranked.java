package croftboard.menu.choice;

import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * The options of every slot by what they lose, least first, and options that lose alike in random order behind the one
 * that stands in a known menu. Where slots are alike, as the days of a line are, many options lose nothing: which of them
 * is put where then decides what is used up, and a known menu is a better guess than any other.
 */
final class Ranked {
    /** Losses that differ by less than this part of a unit's price count as alike. */
    private static final double ALIKE = 1e-3;
    final Priced priced;
    final int[][] order;
    /** By slot and option: the loss, and for options that do not stand in the known menu a random trifle. */
    final double[][] loss;
    /** The trifles of a menu are no more than this. */
    final double most;

    Ranked(Priced priced, int[] known, Random random) {
        this.priced = priced;
        int slots = priced.choices.slots();
        double trifle = ALIKE * Math.max(1e-6, java.util.Arrays.stream(priced.price).average().orElse(0));
        most = trifle * slots;
        order = new int[slots][];
        loss = new double[slots][];
        for (int s = 0; s < slots; s++) {
            double[] own = priced.loss[s].clone();
            for (int k = 0; k < own.length; k++) {
                own[k] += k == known[s] ? 0 : trifle * random.nextDouble();
            }
            loss[s] = own;
            order[s] = IntStream.range(0, own.length).boxed().sorted(Comparator.comparingDouble(k -> own[k]))
                    .mapToInt(k -> k).toArray();
        }
    }

    int best(int s) {
        return order[s][0];
    }

    /** By how much the second option loses more than the best; infinite when there is none. */
    double step(int s) {
        return order[s].length > 1 ? extra(s, order[s][1]) : Double.POSITIVE_INFINITY;
    }

    /** By how much an option loses more than the slot's best. */
    double extra(int s, int option) {
        return loss[s][option] - loss[s][order[s][0]];
    }
}
