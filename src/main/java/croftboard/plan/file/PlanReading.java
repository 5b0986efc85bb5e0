package croftboard.plan.file;

import croftboard.plan.WeekPlan;
import java.util.function.Function;

/** What became of reading a plan. */
public sealed interface PlanReading {
    <T> T fold(Function<Read, T> read, Function<Absent, T> absent, Function<Refused, T> refused);

    record Read(WeekPlan plan) implements PlanReading {
        @Override
        public <T> T fold(Function<Read, T> read, Function<Absent, T> absent, Function<Refused, T> refused) {
            return read.apply(this);
        }
    }

    /** There is no such plan. @param why what was looked for and what is there */
    record Absent(String why) implements PlanReading {
        @Override
        public <T> T fold(Function<Read, T> read, Function<Absent, T> absent, Function<Refused, T> refused) {
            return absent.apply(this);
        }
    }

    /** There is a file, but it is no plan of a format known here. @param why with the place in the file */
    record Refused(String why) implements PlanReading {
        @Override
        public <T> T fold(Function<Read, T> read, Function<Absent, T> absent, Function<Refused, T> refused) {
            return refused.apply(this);
        }
    }
}
