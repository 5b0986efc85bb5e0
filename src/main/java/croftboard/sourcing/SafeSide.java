package croftboard.sourcing;

import croftboard.need.WeekProblem;

/**
 * Rounds a solver's bound to whole cents so that it stays a bound. The solver works in doubles with tolerances of about
 * 1e-7, and the account rounds each overtime, waste and staple amount to the cent where the program has it exact: each
 * may make a plan worth half a cent more than the program thinks.
 */
final class SafeSide {
    private static final double TOLERANCE = 1e-6;

    private SafeSide() { }

    static long up(WeekProblem problem, double cents) {
        long roundings = 2;
        for (WeekProblem.Item item : problem.items()) {
            roundings += item.wasteCentsPerMg().signum() > 0 ? 1 : 0;
        }
        for (WeekProblem.Resource r : problem.resources()) {
            roundings += r.overtimeCentsPerHour() > 0 ? r.periods() : 0;
        }
        roundings += problem.components().isEmpty() ? 0 : 4L * problem.slots().size();
        return (long) Math.ceil(cents + Math.abs(cents) * TOLERANCE + roundings * 0.5);
    }
}
