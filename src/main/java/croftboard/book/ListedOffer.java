package croftboard.book;

import croftboard.measure.Cents;
import java.time.LocalDate;

/**
 * One row of a week's availability list: what a grower has, this week, for one delivery.
 *
 * @param pack words of the vendor's offer of that item
 * @param packs how many, 0 or more
 */
public record ListedOffer(String vendor, String item, String pack, Cents price, int packs, LocalDate delivery,
        String note) { }
