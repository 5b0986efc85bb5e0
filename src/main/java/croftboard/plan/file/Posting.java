package croftboard.plan.file;

import croftboard.plan.WeekPlan;
import java.util.List;
import java.util.function.Function;

/** What became of posting a plan. */
public sealed interface Posting {
    <T> T fold(Function<Posted, T> posted, Function<Incomplete, T> incomplete, Function<NoPlan, T> noPlan);

    /** People work from this version now. */
    record Posted(int version) implements Posting {
        @Override
        public <T> T fold(Function<Posted, T> posted, Function<Incomplete, T> incomplete, Function<NoPlan, T> noPlan) {
            return posted.apply(this);
        }
    }

    /** A must is broken: the plan cannot be worked from. Nothing is changed. */
    record Incomplete(List<WeekPlan.Missing> missing) implements Posting {
        @Override
        public <T> T fold(Function<Posted, T> posted, Function<Incomplete, T> incomplete, Function<NoPlan, T> noPlan) {
            return incomplete.apply(this);
        }
    }

    /** There is no such version, or it cannot be read. Nothing is changed. @param why in words */
    record NoPlan(String why) implements Posting {
        @Override
        public <T> T fold(Function<Posted, T> posted, Function<Incomplete, T> incomplete, Function<NoPlan, T> noPlan) {
            return noPlan.apply(this);
        }
    }
}
