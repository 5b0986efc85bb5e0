package croftboard.book;

import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A grower's answer to a notice.
 *
 * @param file as it was named
 * @param rotation that the notice was of, with its version: {@code 2027-W36..2027-W39@1}; the same in every row
 * @param vendor the same in every row
 * @param rows in the file's order, each pack and week once
 */
public record Reply(String file, String rotation, String vendor, List<Row> rows) {
    /** The columns of the table that goes out and comes back. */
    public static final List<String> COLUMNS = List.of("rotation", "vendor", "item", "name", "pack", "week", "packs_low", "packs",
            "packs_high", "firm", "hoped", "price_assumed_usd", "have", "price_usd", "note");

    /**
     * @param line in the file, from 1
     * @param have packs in the week; empty: not answered, and the calendar holds
     * @param price a pack; empty: nothing is had or not answered
     */
    public record Row(int line, String item, String pack, IsoWeek week, OptionalInt have, Optional<Cents> price, String note) { }

    /** Rows that were answered. */
    public List<Row> answered() {
        return rows.stream().filter(r -> r.have().isPresent()).toList();
    }
}
