package croftboard.safety;

import java.time.LocalDateTime;
import java.util.Optional;

/** Time as a public health control (Food Code 3-501.19): when food that left temperature control is thrown away. */
public final class TimeControl {
    private final FoodCode code;

    public TimeControl(FoodCode code) {
        this.code = code;
    }

    /** @param left the moment it left control at 41 F or below, or at 135 F or above */
    public LocalDateTime discardBy(LocalDateTime left) {
        return left.plusMinutes(code.limit(Rule.TIME_CONTROL).whole());
    }

    /**
     * The longer plan, from 41 F only.
     *
     * @param over when its warmest part passed 70 F; empty: never
     */
    public LocalDateTime discardByLong(LocalDateTime left, Optional<LocalDateTime> over) {
        LocalDateTime end = left.plusMinutes(code.limit(Rule.TIME_CONTROL_LONG).whole());
        return over.filter(o -> o.isBefore(end)).orElse(end);
    }
}
