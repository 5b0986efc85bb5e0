package croftboard.menu;

import croftboard.need.WeekProblem;

/**
 * Minutes and equipment of a day stay within what there is (a must); minutes above the regular hands are paid as
 * overtime, and the minutes by which a station's busiest day passes its average day cost their price.
 */
final class HandsRule implements MenuRule {
    private final WeekProblem problem;
    private final KitchenWork work;
    private final long evenNum;
    private final long evenDen;

    HandsRule(WeekProblem problem, KitchenWork work) {
        this.problem = problem;
        this.work = work;
        evenNum = problem.prices().evennessCentsPerMinute().num().longValueExact();
        evenDen = problem.prices().evennessCentsPerMinute().den().longValueExact();
    }

    @Override
    public void put(int slot, WeekProblem.Candidate dish) { }

    @Override
    public void take(int slot, WeekProblem.Candidate dish) { }

    @Override
    public long cents() {
        long cents = 0;
        for (int r = 0; r < work.used.length; r++) {
            WeekProblem.Resource resource = problem.resources().get(r);
            for (int t = 0; t < work.used[r].length; t++) {
                cents -= work.used[r][t] > resource.regular()[t] ? resource.overtimeCents(t, work.used[r][t]) : 0;
            }
            cents -= resource.hands() && evenNum > 0 ? unevenCents(resource, work.used[r]) : 0;
        }
        return cents;
    }

    /** The same money as {@link croftboard.need.Account#peakAboveMean} times the price, in whole numbers. */
    private long unevenCents(WeekProblem.Resource resource, long[] used) {
        long peak = 0;
        long total = 0;
        long days = 0;
        for (int t = 0; t < used.length; t++) {
            if (resource.regular()[t] > 0) {
                peak = Math.max(peak, used[t]);
                total += used[t];
                days++;
            }
        }
        long above = Math.max(0, peak * days - total);
        return days == 0 ? 0 : Math.floorDiv(2 * above * evenNum + days * evenDen, 2 * days * evenDen);
    }

    @Override
    public long mustsBroken() {
        long over = work.missed();
        for (int r = 0; r < work.used.length; r++) {
            WeekProblem.Resource resource = problem.resources().get(r);
            for (int t = 0; t < work.used[r].length; t++) {
                over += Math.max(0, work.used[r][t] - resource.regular()[t] - resource.overtime()[t]);
            }
        }
        return over;
    }

    /** Days, or periods, on which a station or equipment is not enough, and demands that no batch can meet. */
    long daysBroken() {
        long days = work.missed();
        for (int r = 0; r < work.used.length; r++) {
            WeekProblem.Resource resource = problem.resources().get(r);
            for (int t = 0; t < work.used[r].length; t++) {
                days += work.used[r][t] > resource.regular()[t] + resource.overtime()[t] ? 1 : 0;
            }
        }
        return days;
    }

    @Override
    public String sentence() {
        long over = mustsBroken();
        return over == 0 ? "" : over + " minutes or units more than hands and equipment can give";
    }
}
