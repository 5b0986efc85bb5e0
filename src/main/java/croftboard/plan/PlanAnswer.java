package croftboard.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What became of a request for a plan. */
public sealed interface PlanAnswer {
    <T> T fold(Function<Planned, T> planned, Function<Refused, T> refused);

    /** A plan; complete or not, {@link WeekPlan#complete()} tells. @param stopped whether it was ended early. @param kept of a rotation */
    record Planned(WeekPlan plan, boolean stopped, Optional<RotationKept> kept) implements PlanAnswer {
        public Planned(WeekPlan plan, boolean stopped) {
            this(plan, stopped, Optional.empty());
        }

        @Override
        public <T> T fold(Function<Planned, T> planned, Function<Refused, T> refused) {
            return planned.apply(this);
        }
    }

    /** The request makes no sense: nothing was planned. @param faults what is wrong and what would be right */
    record Refused(List<String> faults) implements PlanAnswer {
        @Override
        public <T> T fold(Function<Planned, T> planned, Function<Refused, T> refused) {
            return refused.apply(this);
        }
    }
}
