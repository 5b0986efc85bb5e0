package croftboard.forecast;

/**
 * The quantity at which one more portion is as likely to be missed as to be left, weighed by what each costs:
 * the smallest q with P(D at most q) at least short / (short + left).
 */
public final class Newsvendor {
    private Newsvendor() { }

    /**
     * @param shortCost what a portion too few costs: price - food cost + goodwill, above 0
     * @param leftCost what a portion too many costs: food cost - what it still brings; at least a cent is assumed
     */
    public static double ratio(double shortCost, double leftCost) {
        double left = Math.max(leftCost, 1);
        double missed = Math.max(shortCost, 1);
        return missed / (missed + left);
    }

    public static int quantity(Demand demand, double ratio) {
        return demand.quantile(ratio);
    }
}
