package croftboard.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * Amounts as a household measures them: cups in thirds and quarters, halves of a tablespoon, quarters of a teaspoon. Rounded
 * to the nearest; from a quarter teaspoon up the rounding is at most a third of the amount, from a tablespoon up a fifth,
 * from half a cup up a seventh.
 */
public final class HouseholdAmounts {
    private static final Ratio TSP = Unit.TEASPOON.base();
    private static final Ratio TBSP = Unit.TABLESPOON.base();
    private static final Ratio CUP = Unit.CUP.base();
    private static final Ratio HALF = Ratio.of(1, 2);
    private static final Ratio QUARTER = Ratio.of(1, 4);
    private static final Ratio EIGHTH = Ratio.of(1, 8);
    private static final int QUARTS_FROM_CUPS = 12;
    private static final List<Ratio> PARTS_OF_A_CUP = List.of(Ratio.ZERO, QUARTER, Ratio.of(1, 3), HALF, Ratio.of(2, 3),
            Ratio.of(3, 4), Ratio.ONE);

    private HouseholdAmounts() { }

    /** {@code a pinch}, {@code 1/4 tsp}, {@code 2-1/2 tbsp}, {@code 1-1/3 cups}, {@code 3-1/2 qt}. @param ml above 0 */
    public static String volume(Ratio ml) {
        Ratio spoons = ml.over(TSP);
        if (spoons.compareTo(Ratio.of(1, 12)) < 0) {
            return "a pinch";
        }
        if (spoons.compareTo(Ratio.of(3, 16)) < 0) {
            return "1/8 tsp";
        }
        Ratio quarters = spoons.roundTo(QUARTER);
        if (quarters.compareTo(Ratio.of(3)) < 0) {
            return CookAmounts.mixed(quarters) + " tsp";
        }
        Ratio halves = ml.over(TBSP).roundTo(HALF);
        if (halves.compareTo(Ratio.of(4)) < 0) {
            return CookAmounts.mixed(halves) + " tbsp";
        }
        Ratio cups = ml.over(CUP);
        if (cups.compareTo(Ratio.of(QUARTS_FROM_CUPS)) >= 0) {
            return CookAmounts.mixed(ml.over(Unit.QUART.base()).roundTo(HALF)) + " qt";
        }
        Ratio nearest = nearestPart(cups);
        return CookAmounts.mixed(nearest) + (nearest.compareTo(Ratio.ONE) > 0 ? " cups" : " cup");
    }

    private static Ratio nearestPart(Ratio cups) {
        Ratio whole = Ratio.of(cups.floor());
        Ratio best = whole.signum() == 0 ? QUARTER : whole;
        for (Ratio part : PARTS_OF_A_CUP) {
            Ratio candidate = whole.plus(part);
            if (candidate.signum() > 0 && off(candidate, cups).compareTo(off(best, cups)) < 0) {
                best = candidate;
            }
        }
        return best;
    }

    private static Ratio off(Ratio a, Ratio b) {
        return a.compareTo(b) > 0 ? a.minus(b) : b.minus(a);
    }

    /** {@code 1 lb 4-1/2 oz (580 g)}: to the half ounce, from a pound up; the quarter below. @param grams above 0 */
    public static String mass(Ratio grams) {
        Ratio ounces = grams.over(Unit.OUNCE.base());
        if (grams.compareTo(Ratio.ONE) < 0) {
            return "a pinch (" + CookAmounts.metricMass(grams) + ")";
        }
        if (ounces.compareTo(EIGHTH) < 0) {
            return CookAmounts.metricMass(grams);
        }
        Ratio rounded = ounces.roundTo(ounces.compareTo(Ratio.of(16)) < 0 ? QUARTER : HALF);
        long pounds = rounded.over(16).floor();
        Ratio rest = rounded.minus(Ratio.of(pounds * 16));
        List<String> words = new ArrayList<>();
        if (pounds > 0) {
            words.add(pounds + " lb");
        }
        if (rest.signum() > 0) {
            words.add(CookAmounts.mixed(rest) + " oz");
        }
        return String.join(" ", words) + " (" + metric(grams) + ")";
    }

    private static String metric(Ratio grams) {
        boolean small = grams.compareTo(Ratio.of(50)) < 0;
        return CookAmounts.metricMass(small ? Ratio.of(Math.max(1, grams.round())) : grams.roundTo(Ratio.of(5)));
    }
}
