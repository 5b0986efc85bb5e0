package croftboard.ledger.share;

/**
 * Money that stands in neither number of the share.
 *
 * @param lines entries behind it
 * @param cents as booked
 * @param food of credits received: how the food counts that they are about; what names no line of food is unclassified
 */
public record Aside(Kind kind, int lines, long cents, Money food) {
    public enum Kind {
        NOT_FOOD("not food"),
        FEE("delivery fees and the like"),
        DEPOSIT("deposits on crates and bottles"),
        CREDIT_RECEIVED("credits received"),
        CREDIT_ASKED("credits asked for, whether they have come or not"),
        CREDIT_REFUSED("credits refused"),
        TRANSFER_IN("food from other departments, at cost"),
        TRANSFER_OUT("food to other departments, at cost"),
        STAFF_MEAL("staff meals, at cost");

        private final String say;

        Kind(String say) {
            this.say = say;
        }

        @Override
        public String toString() {
            return say;
        }
    }

    Aside plus(long more, Money money) {
        return new Aside(kind, lines + 1, Math.addExact(cents, more), food.plus(money));
    }
}
