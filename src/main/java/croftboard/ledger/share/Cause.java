package croftboard.ledger.share;

/** Why money for food was not money for local food. */
public enum Cause {
    /** Not enough of it, short, or not asked for. */
    NOT_ENOUGH("had near by, bought elsewhere"),
    OUT_OF_SEASON("had near by in other weeks only"),
    NOBODY_NEAR("had by nobody near by"),
    MIXED("mixed, too little local in it"),
    UNKNOWN("not known where it is from");

    private final String say;

    Cause(String say) {
        this.say = say;
    }

    @Override
    public String toString() {
        return say;
    }
}
