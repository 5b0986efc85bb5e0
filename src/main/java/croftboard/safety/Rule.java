package croftboard.safety;

import java.util.Locale;

/** The limits that a kitchen works by; their numbers stand in a table by edition of the health code. */
public enum Rule {
    RECEIVING_COLD(true), RECEIVING_EGGS(true), RECEIVING_HOT(false),
    COLD_HOLDING(true), HOT_HOLDING(false), HOT_HOLDING_ROAST(false),
    COOLING_FROM(true), COOLING_FIRST(true), COOLING_FIRST_TIME(true), COOLING_TO(true), COOLING_TIME(true),
    COOLING_AMBIENT_TIME(true),
    REHEATING(false), REHEATING_HOLD(false), REHEATING_TIME(true), REHEATING_MICROWAVE_STAND(false),
    REHEATING_PACKED(false),
    DATE_MARK_AFTER(true), DATE_MARK_DAYS(true),
    TIME_CONTROL(true), TIME_CONTROL_LONG(true), TIME_CONTROL_LONG_MOST(true), TIME_CONTROL_START(true),
    TIME_CONTROL_START_HOT(false),
    GARLIC_IN_OIL_DAYS(true), GARLIC_IN_OIL_COLD(true);

    private final boolean atMost;

    Rule(boolean atMost) {
        this.atMost = atMost;
    }

    /** The word in the table. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The one of two limits that allows less. */
    Limit stricter(Limit a, Limit b) {
        int order = a.value().compareTo(b.value());
        return order == 0 || (order < 0) == atMost ? a : b;
    }
}
