package croftboard.sourcing;

/**
 * What the relaxed joint program of menu and orders says.
 *
 * @param boundCents no plan at all is worth more, rounded up to the safe side
 * @param localWorth dollars that one more dollar spent locally is worth, 0 to the price of a missing dollar
 */
public record Relaxation(long boundCents, double localWorth) { }
