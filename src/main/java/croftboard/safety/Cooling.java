package croftboard.safety;

import croftboard.measure.Ratio;
import java.util.List;
import java.util.Optional;

/** Whether a cooling log keeps the rule (Food Code 3-501.14). The second stage is what the first leaves of the whole. */
public final class Cooling {
    private final FoodCode code;

    public Cooling(FoodCode code) {
        this.code = code;
    }

    /** @param minutes since the food left 135 F, or since it was mixed. @param fahrenheit of the warmest part */
    public record Reading(int minutes, Ratio fahrenheit) { }

    /** NOT_YET: nothing is lost, but the food is not cold. */
    public enum Verdict { KEPT, NOT_YET, FIRST_STAGE_MISSED, TOO_SLOW }

    /** Cooked food. @param readings in time */
    public Verdict ofCooked(List<Reading> readings) {
        Optional<Integer> first = reached(readings, Rule.COOLING_FIRST);
        if (late(readings, first, Rule.COOLING_FIRST_TIME)) {
            return Verdict.FIRST_STAGE_MISSED;
        }
        return ending(readings, Rule.COOLING_TIME);
    }

    /** Food made from ingredients at room temperature. @param readings in time */
    public Verdict ofAmbient(List<Reading> readings) {
        return ending(readings, Rule.COOLING_AMBIENT_TIME);
    }

    private Verdict ending(List<Reading> readings, Rule within) {
        Optional<Integer> cold = reached(readings, Rule.COOLING_TO);
        return late(readings, cold, within) ? Verdict.TOO_SLOW : cold.isPresent() ? Verdict.KEPT : Verdict.NOT_YET;
    }

    private Optional<Integer> reached(List<Reading> readings, Rule limit) {
        return readings.stream().filter(r -> r.fahrenheit().compareTo(code.limit(limit).value()) <= 0)
                .map(Reading::minutes).findFirst();
    }

    private boolean late(List<Reading> readings, Optional<Integer> reached, Rule within) {
        int last = readings.isEmpty() ? 0 : readings.get(readings.size() - 1).minutes();
        return reached.orElse(last) > code.limit(within).whole();
    }
}
