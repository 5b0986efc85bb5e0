package croftboard.menu.choice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Finds, among all pairs of half menus, the one that keeps every limit and misses the bound by least. */
final class Halves {
    private static final int PLACES = 3;
    private static final long TIRED = 30_000_000;
    private final Priced priced;
    private final Rows a;
    private final int[] place;
    private final double[] placePrice;
    private final Boxes boxes;
    /** Rows of the second half in the order of the boxes, dearest limit first. */
    private final int[] units;
    private final double[] loss;
    private final int[] dear;
    private final double[] price;
    private long looked;
    private int first = -1;
    private int second = -1;

    /**
     * @param dearest limits by what they spread in money
     * @param used so many of them are already alike in all rows
     */
    Halves(Priced priced, Rows a, Rows b, Integer[] dearest, int used) {
        this.priced = priced;
        this.a = a;
        int limits = a.width;
        place = IntStream.concat(IntStream.range(used, limits), IntStream.range(0, used)).map(t -> dearest[t])
                .filter(r -> priced.price[r] > 0).limit(PLACES).toArray();
        placePrice = Arrays.stream(place).mapToDouble(r -> priced.price[r]).toArray();
        int[] one = new int[place.length];
        Arrays.fill(one, 1);
        boxes = new Boxes(b, place, one);
        dear = IntStream.range(0, limits).boxed().sorted(Comparator.comparingDouble(r -> -priced.price[r]))
                .mapToInt(r -> r).toArray();
        price = Arrays.stream(dear).mapToDouble(r -> priced.price[r]).toArray();
        units = new int[b.size() * limits];
        loss = new double[b.size()];
        for (int i = 0; i < b.size(); i++) {
            loss[i] = b.loss(boxes.row[i]);
            for (int t = 0; t < limits; t++) {
                units[i * limits + t] = b.units(boxes.row[i], dear[t]);
            }
        }
    }

    /** Whether a pair misses the bound by less than that; the best one is kept. */
    boolean search(double within) {
        double best = within;
        int[] high = new int[place.length];
        int[] low = new int[place.length];
        Arrays.fill(low, Integer.MIN_VALUE / 4);
        int[] room = new int[dear.length];
        for (int x = 0; x < a.size() && !tired(); x++) {
            double budget = best - a.loss(x);
            if (budget <= 0) {
                continue;
            }
            for (int t = 0; t < room.length; t++) {
                room[t] = priced.choices.most()[dear[t]] - a.units(x, dear[t]);
            }
            for (int t = 0; t < high.length; t++) {
                high[t] = priced.choices.most()[place[t]] - a.units(x, place[t]);
            }
            int ranges = boxes.find(low, high, placePrice, budget);
            looked += ranges;
            for (int n = 0; n < ranges; n++) {
                looked += boxes.to(n) - boxes.from(n);
                for (int i = boxes.from(n); i < boxes.to(n); i++) {
                    double left = left(i, room, budget);
                    if (left > 0) {
                        best -= left;
                        budget -= left;
                        first = x;
                        second = boxes.row[i];
                    }
                }
            }
        }
        return first >= 0;
    }

    /** What is left of the budget after the row's loss and the units it leaves over; below zero when a limit breaks. */
    private double left(int i, int[] room, double budget) {
        double left = budget - loss[i];
        int at = i * room.length;
        for (int t = 0; t < room.length && left > 0; t++) {
            int over = room[t] - units[at + t];
            if (over < 0) {
                return -1;
            }
            left -= price[t] * over;
        }
        return left;
    }

    /** So much was looked at that the rest of the try is not worth it. */
    boolean tired() {
        return looked > TIRED;
    }

    /** Row of the first half; -1 when none was found. */
    int first() {
        return first;
    }

    int second() {
        return second;
    }
}
