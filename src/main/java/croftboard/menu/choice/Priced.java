package croftboard.menu.choice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A choice problem with a price on every unit. At given prices each slot has an option that brings most after its units
 * are paid; every other option loses something against it. For every menu that keeps the limits
 * <pre>worth = bound - sum of its options' losses - sum of (price x units left)</pre>
 * holds exactly, whatever the prices: to come near the bound is to lose little and to leave little of what is dear.
 * At the prices of the divisible program the bound is that program's.
 */
final class Priced {
    final Choices choices;
    final double[] price;
    /** By slot: options by what they lose, least first. */
    final int[][] order;
    /** By slot and option. */
    final double[][] loss;
    final double bound;

    /** @param price of a unit of each limit, cents, 0 or more */
    Priced(Choices choices, double[] price) {
        this.choices = choices;
        this.price = price;
        order = new int[choices.slots()][];
        loss = new double[choices.slots()][];
        double sum = 0;
        for (int r = 0; r < price.length; r++) {
            sum += price[r] * choices.most()[r];
        }
        for (int s = 0; s < loss.length; s++) {
            sum += slot(s);
        }
        bound = sum;
    }

    private double slot(int s) {
        double[] left = new double[choices.worth()[s].length];
        for (int k = 0; k < left.length; k++) {
            left[k] = choices.worth()[s][k];
            for (int r = 0; r < price.length; r++) {
                left[k] -= price[r] * choices.units()[s][k][r];
            }
        }
        double best = Arrays.stream(left).max().orElseThrow();
        loss[s] = Arrays.stream(left).map(l -> best - l).toArray();
        order[s] = IntStream.range(0, left.length).boxed().sorted(Comparator.comparingDouble(k -> loss[s][k]))
                .mapToInt(k -> k).toArray();
        return best;
    }
}
