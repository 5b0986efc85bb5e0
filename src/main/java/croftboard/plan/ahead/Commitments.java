package croftboard.plan.ahead;

import java.util.ArrayList;
import java.util.List;

/**
 * How many packs a week are worth promising to a grower before the season is known. Two stages: first so many packs are
 * promised, the same in every week; then the season turns out poor, fair or good and demand low, middling or high, and
 * what is still missing is bought week by week, from the grower as far as the field has it and others have left it, and
 * elsewhere. All nine outcomes of a week are reckoned, every number of packs is tried.
 */
final class Commitments {
    /** Poor, fair, good. With these steps three outcomes have exactly the spread that is asked for. */
    static final double[] CHANCE = {0.25, 0.5, 0.25};
    static final double[] STEP = {-Math.sqrt(2), 0, Math.sqrt(2)};
    /**
     * Of what is not promised, the part that others have left when the kitchen orders week by week. Common practice, no
     * source: in a poor year who is promised to comes first.
     */
    static final double[] LEFT_OVER = {0.4, 0.9, 1};
    private final Terms terms;
    private final double[] leftOver;

    /**
     * Cents a pack.
     *
     * @param price of the grower
     * @param elsewhere what the same amount costs elsewhere; what local money is worth is added when that is not local
     * @param surplus what a pack that is not used is still worth; negative when it costs to get rid of it
     */
    record Terms(double price, double elsewhere, double surplus) { }

    /**
     * One week, in packs.
     *
     * @param wanted of this grower
     * @param has what the field is expected to have
     * @param demandSpread standard deviation of what is wanted, as part of it
     * @param fieldSpread the same of what the field has
     */
    record Week(double wanted, double has, double demandSpread, double fieldSpread) {
        double wanted(int outcome) {
            return wanted * Math.max(0, 1 + STEP[outcome] * demandSpread);
        }

        double has(int outcome) {
            return Math.floor(has * Math.max(0, 1 + STEP[outcome] * fieldSpread) + 1e-9);
        }
    }

    /**
     * @param floor packs a week that are still used in a poor year with low demand, in three weeks of four
     * @param packs worth promising, between floor and ceiling; 0: none
     * @param ceiling packs that are used at most in a good year with high demand, in three weeks of four
     * @param worth cents that promising saves in the mean against buying week by week, over all weeks
     */
    record Answer(int floor, int packs, int ceiling, double worth) { }

    Commitments(Terms terms) {
        this(terms, LEFT_OVER);
    }

    Commitments(Terms terms, double[] leftOver) {
        this.terms = terms;
        this.leftOver = leftOver.clone();
    }

    Answer best(List<Week> weeks) {
        List<Integer> poor = new ArrayList<>();
        List<Integer> good = new ArrayList<>();
        for (Week w : weeks) {
            poor.add((int) Math.floor(Math.min(w.wanted(0), w.has(0)) + 1e-9));
            good.add((int) Math.ceil(Math.min(w.wanted(2), w.has(2)) - 1e-9));
        }
        poor.sort(null);
        good.sort(null);
        int floor = poor.get(poor.size() / 4);
        int ceiling = Math.max(floor, good.get(Math.min(good.size() - 1, 3 * good.size() / 4)));
        double none = cents(weeks, 0);
        int best = 0;
        double least = none;
        for (int q = Math.max(1, floor); q <= ceiling; q++) {
            double cents = cents(weeks, q);
            if (cents < least - 1e-6) {
                best = q;
                least = cents;
            }
        }
        return new Answer(floor, best, ceiling, none - least);
    }

    /** What all weeks cost in the mean when so many packs are promised. */
    double cents(List<Week> weeks, int promised) {
        double sum = 0;
        for (Week w : weeks) {
            for (int field = 0; field < CHANCE.length; field++) {
                for (int demand = 0; demand < CHANCE.length; demand++) {
                    sum += CHANCE[field] * CHANCE[demand] * cents(w, promised, field, demand);
                }
            }
        }
        return sum;
    }

    private double cents(Week w, int promised, int field, int demand) {
        double has = w.has(field);
        double taken = Math.min(promised, has);
        double wanted = w.wanted(demand);
        double used = Math.min(taken, wanted);
        double missing = wanted - used;
        double free = terms.price <= terms.elsewhere ? Math.min(missing, (has - taken) * leftOver[field]) : 0;
        return taken * terms.price - (taken - used) * terms.surplus + free * terms.price + (missing - free) * terms.elsewhere;
    }
}
