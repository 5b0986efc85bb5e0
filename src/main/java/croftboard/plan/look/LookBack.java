package croftboard.plan.look;

import croftboard.ledger.share.MenuMix;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A plan against what happened. What nobody wrote down is empty or told, never taken for nothing.
 *
 * @param yields batches of the last weeks, by recipe
 */
public record LookBack(WeekPlan plan, List<Run> runs, Money money, List<Own> own, List<Yield> yields, Optional<MenuMix> mix) {

    public IsoWeek week() {
        return plan.week();
    }

    /**
     * One dish on one line.
     *
     * @param planned portions to be made. @param putOut written on the sheets; empty: on none
     * @param sold empty: neither sheet nor register says. @param silent days of which nothing is known
     * @param left at the last closing that was written down
     * @param ranOut days on which it ran out, the first hour that was written down with it
     */
    public record Run(String line, String dish, LocalDate first, LocalDate last, int planned, Optional<Integer> putOut, Optional<Integer> sold,
            Optional<Integer> left, int ranOutDays, Optional<LocalTime> ranOut, int silent) {

        /** Portions sold above those planned; below 0: fewer. Empty when a day is unknown. */
        public Optional<Integer> difference() {
            return silent > 0 ? Optional.empty() : sold.map(s -> s - planned);
        }
    }

    /**
     * Cents of the case: events stand aside. The plan's figures are of the same dishes and orders as what happened.
     *
     * @param sales that the plan expected of dishes that the register has. @param sold by the register; empty: none of them booked
     * @param unsold dishes of the plan of which the register has nothing
     * @param ordered by the plan, on orders of which something was received. @param received food on these, credits taken off;
     *     empty: nothing booked. @param waiting orders of which nothing is booked
     * @param wastePlanned ingredients beyond their life, by the plan. @param waste as booked with its cost; empty: nothing booked
     * @param wastePortions as booked. @param wasteUncosted entries without their cost
     */
    public record Money(long sales, Optional<Long> sold, int unsold, long ordered, Optional<Long> received, int waiting, long wastePlanned,
            Optional<Long> waste, Ratio wastePortions, int wasteUncosted) { }

    /**
     * A figure of the manager's and how it did.
     *
     * @param forecast what the tool said; empty: not kept. @param set portions that the manager set
     * @param sold that day on that line; empty: unknown. @param ranOut then at least so many were asked for
     */
    public record Own(LocalDate date, String line, Optional<Double> forecast, double set, Optional<Integer> sold, boolean ranOut, String reason) {

        /** Which came closer. */
        public String verdict() {
            if (sold.isEmpty()) {
                return "not known: nobody wrote what was sold";
            }
            if (forecast.isEmpty()) {
                return "the forecast of then was not kept";
            }
            double own = off(set);
            double tool = off(forecast.get());
            return Math.abs(own - tool) < 0.5 ? "no difference" : own < tool ? "yours was closer" : "the forecast was closer";
        }

        private double off(double figure) {
            return ranOut && figure >= sold.orElseThrow() ? 0 : Math.abs(figure - sold.orElseThrow());
        }
    }

    /** @param got share of what was expected, over all these batches */
    public record Yield(String recipe, int batches, Ratio got) {
        private static final int ENOUGH = 3;
        private static final double WORTH_CHANGING = 0.03;

        /** Enough batches, and far enough off, to change the recipe's figure. */
        public boolean change() {
            return batches >= ENOUGH && Math.abs(got.toDouble() - 1) >= WORTH_CHANGING;
        }
    }
}
