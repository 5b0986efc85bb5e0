package croftboard.menu.choice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * One try at a menu that loses little and leaves nothing dear over. The slots fall into four random parts; of each part
 * the menus that lose least are listed; two parts are put together where their units in a few limits come near a random
 * share, the other two where theirs come near the rest; then the halves that fill the limits best are found among all
 * their pairs. So some 10^18 menus are looked through for the work of a few million.
 */
final class FourParts {
    private static final int LISTED = 30_000;
    private static final int PAIRED = 100_000;
    private static final int USUAL_LIMITS = 10;
    private static final int MOST_PLACES = 5;
    /** A share is drawn within this part of how far units spread. */
    private static final double DRAW = 0.3;
    private static final int PARTS = 4;
    private final Priced priced;
    private final Random random;
    private final Integer[] dearest;
    private final int paired;
    private boolean found;

    FourParts(Priced priced, Random random) {
        this.priced = priced;
        this.random = random;
        int limits = priced.choices.limits();
        paired = PAIRED * USUAL_LIMITS / Math.max(USUAL_LIMITS, limits);
        dearest = IntStream.range(0, limits).boxed().toArray(Integer[]::new);
    }

    /**
     * Options that keep every limit and miss the bound by less than {@code budget}, the best this try comes upon.
     *
     * @param known a menu to be near where options lose alike
     */
    Optional<int[]> menu(int[] known, double budget) {
        LightMenus[] part = parts(new Ranked(priced, known, random), budget);
        double[] spread = new double[dearest.length];
        double[] mean = new double[dearest.length];
        double[] rest = new double[dearest.length];
        for (int r = 0; r < spread.length; r++) {
            double[] means = new double[PARTS];
            for (int p = 0; p < PARTS; p++) {
                means[p] = part[p].rows.mean(r);
            }
            mean[r] = means[0] + means[1];
            rest[r] = means[2] + means[3];
            spread[r] = Math.sqrt(part[0].rows.variance(r, means[0]) + part[1].rows.variance(r, means[1]));
        }
        Arrays.sort(dearest, Comparator.comparingDouble(r -> -priced.price[r] * spread[r]));
        Window window = window(spread, (double) part[0].rows.size() * part[1].rows.size());
        int[] low = new int[window.limits.length];
        int[] otherLow = new int[low.length];
        for (int t = 0; t < low.length; t++) {
            int r = window.limits[t];
            int wide = window.width[t];
            int most = priced.choices.most()[r];
            low[t] = (int) Math.round(mean[r] + (most - mean[r] - rest[r]) / 2
                    + random.nextGaussian() * spread[r] * DRAW - wide / 2.0);
            otherLow[t] = most - low[t] - (wide - 1) - (wide - 1) / 2;
        }
        Pairs one = new Pairs(part[0].rows, part[1].rows, window.limits, window.width, low, 2 * paired);
        Pairs two = new Pairs(part[2].rows, part[3].rows, window.limits, window.width, otherLow, 2 * paired);
        return together(part, one, two, window.limits.length, budget);
    }

    private LightMenus[] parts(Ranked ranked, double budget) {
        int slots = priced.choices.slots();
        int[] shuffled = IntStream.range(0, slots).toArray();
        for (int i = slots - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int kept = shuffled[i];
            shuffled[i] = shuffled[j];
            shuffled[j] = kept;
        }
        LightMenus[] part = new LightMenus[PARTS];
        for (int p = 0; p < PARTS; p++) {
            int own = p;
            part[p] = new LightMenus(ranked, IntStream.range(0, slots).filter(i -> i % PARTS == own)
                    .map(i -> shuffled[i]).toArray(), LISTED, budget + ranked.most);
        }
        return part;
    }

    private record Window(int[] limits, int[] width) { }

    /** So many limits, and so narrow, that about {@link #paired} of the pairs fall within. */
    private Window window(double[] spread, double pairs) {
        int usable = (int) Arrays.stream(dearest).filter(r -> priced.price[r] * spread[r] > 1e-9).count();
        int places = 0;
        double cents = 0;
        boolean narrow = pairs <= paired;
        while (!narrow && places < Math.min(MOST_PLACES, usable)) {
            places++;
            cents = width(spread, pairs, places);
            narrow = cents >= 2 * priced.price[dearest[0]];
        }
        int[] limits = new int[places];
        int[] width = new int[places];
        for (int t = 0; t < places; t++) {
            limits[t] = dearest[t];
            width[t] = units(cents, limits[t]);
        }
        return new Window(limits, width);
    }

    /** Width in cents, the same for each of the dearest limits. */
    private double width(double[] spread, double pairs, int places) {
        double least = 0;
        double most = 4 * priced.price[dearest[0]] * (spread[dearest[0]] + 1);
        for (int i = 0; i < 40; i++) {
            double middle = (least + most) / 2;
            double within = pairs;
            for (int t = 0; t < places; t++) {
                // A window of 2.6 spreads round the middle holds what a window of its width holds elsewhere.
                within *= Math.min(1, units(middle, dearest[t]) / (2.6 * spread[dearest[t]]));
            }
            if (within > paired) {
                most = middle;
            } else {
                least = middle;
            }
        }
        return least;
    }

    private int units(double cents, int limit) {
        return (int) Math.max(1, Math.min(1_000_000, Math.round(cents / priced.price[limit])));
    }

    private Optional<int[]> together(LightMenus[] part, Pairs one, Pairs two, int used, double budget) {
        Halves halves = new Halves(priced, one.rows, two.rows, dearest, used);
        double within = found ? budget : budget / 512;
        while (!halves.search(within) && within < budget && !halves.tired()) {
            within = Math.min(budget, 2 * within);
        }
        if (halves.first() < 0) {
            return Optional.empty();
        }
        found = true;
        int[] options = new int[priced.choices.slots()];
        part[0].write(one.first(halves.first()), options);
        part[1].write(one.second(halves.first()), options);
        part[2].write(two.first(halves.second()), options);
        part[3].write(two.second(halves.second()), options);
        return Optional.of(options);
    }
}
