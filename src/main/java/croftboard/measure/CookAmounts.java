package croftboard.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Exact amounts in the words of a cook, rounded here and nowhere else.
 *
 * <p>Pounds and ounces go to the nearest quarter ounce, by the rounding scale of the Armed Forces recipe cards
 * (TM 10-412, card A-1); volumes are broken down the ladder of the same card, gal qt pt cup tbsp tsp, the last to the
 * nearest quarter teaspoon; cans, jars and bottles are whole, other counts go up to the next half.
 */
public final class CookAmounts {
    private static final Ratio QUARTER = Ratio.of(1, 4);
    private static final Ratio HALF = Ratio.of(1, 2);
    private static final Ratio EIGHTH_OUNCE = Unit.OUNCE.base().over(8);
    private static final Unit[] LADDER = {Unit.GALLON, Unit.QUART, Unit.PINT, Unit.CUP, Unit.TABLESPOON};

    private CookAmounts() { }

    /** In the amount's own family: metric stays metric, a count stays a count. @param amount not negative */
    public static String of(Amount amount) {
        return switch (amount.unit().kind()) {
            case MASS -> metric(amount.unit()) ? metricMass(amount.base()) : mass(amount.base());
            case VOLUME -> volumeOf(amount);
            case COUNT -> count(amount.value(), amount.unit());
            case TIME -> minutes(amount.base());
        };
    }

    private static boolean metric(Unit unit) {
        return switch (unit.name()) {
            case "g", "kg", "ml", "L" -> true;
            default -> false;
        };
    }

    private static String volumeOf(Amount amount) {
        return switch (amount.unit().name()) {
            case "ml", "L" -> decimal(amount.base(), "ml", "L");
            case "dry-pt", "dry-qt", "peck", "bushel" -> counted(amount.value().roundTo(QUARTER), amount.unit());
            default -> volume(amount.base());
        };
    }

    /** {@code 4 lb 5-1/2 oz}; below an eighth of an ounce in grams. @param grams not negative */
    public static String mass(Ratio grams) {
        if (grams.compareTo(EIGHTH_OUNCE) < 0) {
            return metricMass(grams);
        }
        Ratio ounces = grams.over(Unit.OUNCE.base()).roundTo(QUARTER);
        long pounds = ounces.over(16).floor();
        Ratio rest = ounces.minus(Ratio.of(pounds * 16));
        List<String> words = new ArrayList<>();
        if (pounds > 0) {
            words.add(pounds + " lb");
        }
        if (rest.signum() > 0) {
            words.add(mixed(rest) + " oz");
        }
        return String.join(" ", words);
    }

    /** {@code 850 g}, {@code 1.25 kg}; below ten grams to a tenth. */
    public static String metricMass(Ratio grams) {
        return decimal(grams, "g", "kg");
    }

    private static String decimal(Ratio small, String unit, String thousand) {
        if (small.compareTo(Ratio.of(10)) < 0) {
            Ratio tenth = small.signum() > 0 ? small.max(Ratio.of(1, 10)) : small;
            return plain(tenth, 1) + " " + unit;
        }
        Ratio whole = Ratio.of(small.round());
        return whole.compareTo(Ratio.of(1000)) < 0 ? whole + " " + unit : plain(whole.over(1000), 3) + " " + thousand;
    }

    private static String plain(Ratio value, int places) {
        return value.toDecimal(places).stripTrailingZeros().toPlainString();
    }

    /** {@code 19 gal 3 qt 1 pt 1 cup 10 tbsp 2-3/4 tsp}; even quarters of a cup as such. @param ml not negative */
    public static String volume(Ratio ml) {
        if (ml.compareTo(Unit.TEASPOON.base().over(8)) < 0) {
            return decimal(ml, "ml", "L");
        }
        Ratio left = ml.over(Unit.TEASPOON.base()).roundTo(QUARTER);
        List<String> words = new ArrayList<>();
        for (Unit unit : LADDER) {
            Ratio teaspoons = unit.base().over(Unit.TEASPOON.base());
            boolean quarters = unit == Unit.CUP && left.over(teaspoons).times(4).isWhole();
            Ratio here = quarters ? left.over(teaspoons) : Ratio.of(left.over(teaspoons).floor());
            if (here.signum() > 0) {
                words.add(counted(here, unit));
            }
            left = left.minus(here.times(teaspoons));
        }
        if (left.signum() > 0) {
            words.add(mixed(left) + " tsp");
        }
        return String.join(" ", words);
    }

    /** {@code 2 cans}, {@code 3-1/2 bunches}: never less than needed. */
    public static String count(Ratio value, Unit unit) {
        return counted(switch (unit.name()) {
            case "can", "jar", "bottle" -> Ratio.of(value.ceil());
            default -> value.ceilTo(HALF);
        }, unit);
    }

    private static String counted(Ratio value, Unit unit) {
        return mixed(value) + " " + (value.compareTo(Ratio.ONE) > 0 ? unit.plural() : unit.name());
    }

    /** {@code 45 min}, {@code 2 h}, {@code 1 h 05 min}; rounded up to the minute. */
    public static String minutes(Ratio minutes) {
        long whole = minutes.ceil();
        if (whole < 60) {
            return whole + " min";
        }
        return whole / 60 + " h" + (whole % 60 == 0 ? "" : String.format(Locale.ROOT, " %02d min", whole % 60));
    }

    /** {@code 3}, {@code 1/4}, {@code 5-1/2}: exact, as the book writes numbers. */
    public static String mixed(Ratio value) {
        long whole = value.floor();
        Ratio rest = value.minus(Ratio.of(whole));
        if (rest.signum() == 0) {
            return Long.toString(whole);
        }
        return whole == 0 ? rest.toString() : whole + "-" + rest;
    }

    /** {@code 1-3/4} where the fraction is one that a cook reads, else two decimals: {@code 3.48}. */
    public static String times(Ratio value) {
        return value.den().bitLength() <= 4 && value.den().intValue() <= 8 ? mixed(value) : plain(value, 2);
    }
}
