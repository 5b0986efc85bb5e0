package croftboard.sourcing;

/**
 * What the relaxed joint program of menu and orders says.
 *
 * @param boundCents no plan at all is worth more; rounded up to the safe side
 * @param localWorth dollars that one more dollar spent locally is worth, 0 to the price of a missing dollar
 * @param itemCents cents that one more gram of an item is worth on a day, by item and day; 0 where nothing asks for it
 * @param minimumWorth cents that one cent less of a delivery's minimum is worth, by delivery
 * @param unitCents cents that one more minute or unit is worth, by resource and period
 */
public record Relaxation(long boundCents, double localWorth, double[][] itemCents, double[] minimumWorth,
        double[][] unitCents) { }
