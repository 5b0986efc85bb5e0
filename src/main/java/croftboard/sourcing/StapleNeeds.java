package croftboard.sourcing;

import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.util.List;

/** Staples below the dishes themselves, as the bounds over all menus need them. */
final class StapleNeeds {
    private StapleNeeds() { }

    /**
     * Cents of staples that component stock can save, through all parts, rounded up: dishes are charged for the staples
     * of their whole tree, but what is taken from stock is not made again.
     */
    static double inStock(WeekProblem problem) {
        Ratio[] perMg = perMg(problem);
        Ratio all = Ratio.ZERO;
        for (WeekProblem.ComponentStock lot : problem.componentStock()) {
            all = all.plus(perMg[lot.component()].times(lot.mg()));
        }
        return all.ceil();
    }

    /** Components use only later ones, so the last are known first. */
    private static Ratio[] perMg(WeekProblem problem) {
        List<WeekProblem.Component> components = problem.components();
        Ratio[] perMg = new Ratio[components.size()];
        for (int c = perMg.length - 1; c >= 0; c--) {
            Ratio step = components.get(c).stapleCentsPerStep();
            for (WeekProblem.StepPart part : components.get(c).parts()) {
                step = step.plus(perMg[part.component()].times(part.mg()));
            }
            perMg[c] = step.over(components.get(c).stepMg());
        }
        return perMg;
    }

    /** Batches of any menu that can round their staples to a cent: no more than there are demands. */
    static long batches(WeekProblem problem) {
        long[] demands = new long[problem.components().size()];
        for (WeekProblem.Slot slot : problem.slots()) {
            long[] most = new long[demands.length];
            for (WeekProblem.Candidate dish : slot.candidates()) {
                long[] own = new long[demands.length];
                dish.demands().forEach(d -> own[d.component()]++);
                for (int c = 0; c < most.length; c++) {
                    most[c] = Math.max(most[c], own[c]);
                }
            }
            for (int c = 0; c < most.length; c++) {
                demands[c] += most[c];
            }
        }
        long rounding = 0;
        for (int c = 0; c < demands.length; c++) {
            WeekProblem.Component made = problem.components().get(c);
            for (WeekProblem.StepPart part : made.parts()) {
                demands[part.component()] += demands[c];
            }
            rounding += made.stapleCentsPerStep().isWhole() ? 0 : demands[c];
        }
        return rounding;
    }
}
