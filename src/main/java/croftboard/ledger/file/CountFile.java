package croftboard.ledger.file;

import croftboard.ledger.Draft;
import croftboard.ledger.Matching;
import croftboard.ledger.Quantity;
import croftboard.ledger.StockCount;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The stock count's sheet: a row for each pack that the book buys, the count written in. */
public final class CountFile {
    public static final String SOURCE = "count";
    private static final List<Columns.Field> FIELDS = List.of(Columns.Field.maybe("date", "date"), Columns.Field.needed("item", "item"),
            Columns.Field.maybe("name", "name", "description"), Columns.Field.maybe("pack", "pack", "pack size"),
            Columns.Field.maybe("pack_grams", "pack_grams", "grams"), Columns.Field.maybe("pack_price", "pack_price", "price"),
            Columns.Field.needed("counted_packs", "counted_packs", "counted", "count", "packs"),
            Columns.Field.maybe("or_weight", "or_weight", "weight"));

    private CountFile() { }

    /** @param day of the count, for rows that have no date. @param goods what ids and names mean */
    public static Intake read(Table table, Map<String, String> told, Map<String, String> remembered, Matching goods, LocalDate day) {
        int[] empty = new int[1];
        Intake intake = Lines.read(table, FIELDS, told, remembered, List.of("pack_grams", "pack_price", "counted_packs"),
                (row, lines, into) -> count(row, lines, goods, day, empty).ifPresent(into::add));
        if (intake instanceof Intake.Read read && empty[0] > 0) {
            List<String> said = new ArrayList<>(read.guesses());
            said.add(empty[0] + (empty[0] == 1 ? " row was" : " rows were") + " not counted: an empty cell is not zero, write 0 for none.");
            return new Intake.Read(read.entries(), said, read.columns());
        }
        return intake;
    }

    private static Optional<StockCount> count(Table.Row row, Lines lines, Matching goods, LocalDate day, int[] empty) {
        String weight = lines.text(row, "or_weight");
        if (lines.text(row, "counted_packs").isEmpty() && weight.isEmpty()) {
            empty[0]++;
            return Optional.empty();
        }
        Optional<LocalDate> date = lines.text(row, "date").isEmpty() ? Optional.of(day) : lines.date(row);
        Optional<Quantity> packs = lines.quantity(row, "counted_packs");
        Optional<Quantity> grams = lines.quantity(row, "pack_grams");
        Optional<Long> price = lines.cents(row, "pack_price");
        Optional<Long> weighed = WasteFile.mg(weight);
        String id = lines.text(row, "item");
        String words = id.isEmpty() ? lines.text(row, "name") : id;
        String wrong = words.isEmpty() ? "no item -> which was counted" : !weight.isEmpty() && weighed.isEmpty() ? "'" + weight
                + "' is no weight -> with its unit, such as 2.5 lb" : packs.isPresent() && packs.get().signum() < 0
                ? "less than nothing was counted -> 0 or more" : packs.isPresent() && !weight.isEmpty()
                ? "packs and a weight -> one of them; a row of its own for what is open" : "";
        if (!wrong.isEmpty()) {
            lines.fault(row, wrong);
        }
        if (!wrong.isEmpty() || date.isEmpty() || packs.isEmpty() && weight.isEmpty()) {
            return Optional.empty();
        }
        long packMg = grams.map(Quantity::thousandths).orElse(0L);
        long mg = weighed.orElseGet(() -> share(packMg, packs.get().thousandths(), 1000));
        long cents = weighed.isPresent() ? packMg == 0 ? 0 : share(price.orElse(0L), mg, packMg)
                : share(price.orElse(0L), packs.get().thousandths(), 1000);
        if (cents == 0 && mg > 0 || price.isEmpty()) {
            lines.guess("Line " + row.line() + ": " + words + " has no price" + (weighed.isPresent() ? " by weight" : "")
                    + " on the sheet and counts as $0.00.");
        }
        String pack = lines.text(row, "pack");
        Optional<String> item = goods.of(words + (pack.isEmpty() ? "" : ", " + pack)).or(() -> goods.of(id)).or(() -> goods.of(lines.text(row, "name")));
        return Optional.of(new StockCount(Draft.line(row.line()), date.get(), item, words + (pack.isEmpty() ? "" : ", " + pack),
                weighed.isPresent() ? weight : packs.get() + (pack.isEmpty() ? "" : " × " + pack), mg, cents));
    }

    /** whole × part / of, to the nearest. */
    private static long share(long whole, long part, long of) {
        return BigDecimal.valueOf(whole).multiply(BigDecimal.valueOf(part)).divide(BigDecimal.valueOf(of), 0, RoundingMode.HALF_UP).longValueExact();
    }
}
