package croftboard.book.file;

/**
 * How much was read.
 *
 * @param files read, plans left aside
 * @param offers of all vendors' calendars
 * @param listedOffers rows of this week's lists
 * @param onHand rows of counted stock
 */
public record Counts(int files, int ingredients, int dishes, int components, int vendors, int offers,
        int lines,
        int events, int listedOffers, int onHand) { }
