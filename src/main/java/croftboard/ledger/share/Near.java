package croftboard.ledger.share;

/**
 * What is near about a line of food: grown, made or only sold near by are three figures, never one. Every line is one of
 * these; near is what the definition says of places.
 */
public enum Near {
    GROWN("grown near by"),
    /** Processed or mixed near by, of food that was not, not wholly or not known to be grown near by. */
    MADE("only made near by, of food from elsewhere or unknown"),
    /** Surely from elsewhere, by a vendor near by. */
    SOLD("only sold by somebody near by"),
    FAR("from elsewhere"),
    UNKNOWN("not known");

    private final String say;

    Near(String say) {
        this.say = say;
    }

    @Override
    public String toString() {
        return say;
    }
}
