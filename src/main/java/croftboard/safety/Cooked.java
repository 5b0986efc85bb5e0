package croftboard.safety;

/** Foods that the cooking table tells apart (Food Code 3-401.11 to .13). */
public enum Cooked {
    /** Raw eggs to order, fish, intact meat. */
    WHOLE,
    /** Ground fish or meat, injected or mechanically tenderized meat, eggs not served at once. */
    GROUND,
    /** Poultry, wild game, stuffed food, stuffing with animal food. */
    POULTRY,
    /** A whole roast. */
    ROAST,
    /** Raw animal food cooked in a microwave oven. */
    MICROWAVE,
    /** Plant food cooked for hot holding. */
    PLANT;

    /** @param fahrenheit at least. @param seconds it is held. */
    public record Minimum(int fahrenheit, int seconds, String section, String source) { }
}
