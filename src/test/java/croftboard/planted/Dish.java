package croftboard.planted;

import java.util.LinkedHashSet;
import java.util.Random;
import java.util.Set;

/**
 * A dish of a planted week.
 *
 * @param kind which lines it fits
 * @param grams of each item in one portion
 * @param use units of each resource a day
 * @param covers coverage promises for which it counts, as bits
 */
record Dish(int kind, int[] item, double[] grams, double draw, double price, int[] use, long covers, int main) {
    static final int RESOURCES = 5;
    static final int MAINS = 12;
    private static final double[] PRICE = {1050, 480, 600, 700, 520};
    private static final double[] SIZE = {1, .75, .8, .9, .6};
    private static final double[] GRAMS = {85, 50, 30, 18, 10};

    static Dish random(Random g, int kind, Shape shape) {
        Set<Integer> chosen = new LinkedHashSet<>();
        while (chosen.size() < shape.partsOfDish()) {
            chosen.add((int) (shape.items() * Math.pow(g.nextDouble(), 1.3)));
        }
        double[] grams = new double[shape.partsOfDish()];
        for (int j = 0; j < grams.length; j++) {
            grams[j] = GRAMS[j] * SIZE[kind] * (.6 + .8 * g.nextDouble());
        }
        return new Dish(kind, chosen.stream().mapToInt(i -> i).toArray(), grams, .75 + .5 * g.nextDouble(),
                PRICE[kind] * (.85 + .3 * g.nextDouble()), use(g, kind), g.nextInt(4), g.nextInt(MAINS));
    }

    /** Minutes at the hot, the cold and the baking station, ovens, kettles. */
    private static int[] use(Random g, int kind) {
        return new int[] {
            kind < 3 ? 40 + g.nextInt(60) : 10,
            kind == 3 ? 40 + g.nextInt(60) : 15 + g.nextInt(20),
            kind == 4 ? 60 + g.nextInt(60) : g.nextInt(8),
            (kind < 2 || kind == 4) && g.nextInt(5) < 3 ? 1 + g.nextInt(2) : 0,
            kind == 2 || kind < 2 && g.nextInt(10) < 3 ? 1 : 0};
    }

    Dish with(long promises, int otherMain) {
        return new Dish(kind, item, grams, draw, price, use, promises, otherMain);
    }
}
