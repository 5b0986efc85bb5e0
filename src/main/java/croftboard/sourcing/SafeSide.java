package croftboard.sourcing;

import croftboard.need.WeekProblem;

/**
 * Rounds a program's bound to whole cents so that it stays a bound of the account's value.
 *
 * <p>Two things are added. First the account's roundings: where the program has an exact amount, the account rounds
 * waste, overtime, broken shares and staples to the cent, half up, and each may make a plan worth half a cent more than
 * the program thinks (kept surplus is rounded down, which cannot). Second a millionth of the bound: an integer solver
 * works with tolerances near 1e-7, and sums of doubles err by about 1e-12. Where nothing is bought the account rounds
 * nothing, and every plan's value is a multiple of one amount: the bound comes down to such a multiple.
 */
final class SafeSide {
    private static final double TOLERANCE = 1e-6;

    private SafeSide() { }

    /** For a bound over all menus. */
    static long anyMenu(WeekProblem problem, double cents) {
        long step = WholeWorth.step(problem);
        if (step > 0) {
            return whole(cents, step);
        }
        double foodPrice = problem.prices().foodCostPrice().toDouble();
        double half = 2 + wastedItems(problem) + StapleNeeds.batches(problem) * (1 + foodPrice);
        for (WeekProblem.Resource r : problem.resources()) {
            half += roundedPeriods(r);
        }
        return up(cents, half * 0.5);
    }

    /** For a bound over all orders of one menu, whose staples and hands are known to the cent. */
    static long oneMenu(WeekProblem problem, double cents) {
        long step = WholeWorth.step(problem);
        if (step > 0) {
            return whole(cents, step);
        }
        int dock = problem.prices().receivingResource();
        return up(cents, 1 + 0.5 * wastedItems(problem) + (dock < 0 ? 0 : roundedPeriods(problem.resources().get(dock))));
    }

    /** Where a minute costs whole cents nothing is rounded. */
    private static int roundedPeriods(WeekProblem.Resource r) {
        return r.overtimeCentsPerHour() % 60 == 0 ? 0 : r.periods();
    }

    private static long wastedItems(WeekProblem problem) {
        return problem.items().stream().filter(i -> i.wasteCentsPerMg().signum() > 0).count();
    }

    private static long whole(double cents, long step) {
        return Math.multiplyExact(step, (long) Math.floor((cents + Math.abs(cents) * TOLERANCE) / step));
    }

    private static long up(double cents, double roundings) {
        return (long) Math.ceil(cents + Math.abs(cents) * TOLERANCE + roundings);
    }
}
