package croftboard.ledger.file;

import croftboard.book.Vendor;
import croftboard.ledger.Draft;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.VendorGoods;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A vendor's invoice or delivery note as a table. */
public final class InvoiceFile {
    private static final List<Columns.Field> FIELDS = List.of(
            Columns.Field.maybe("date", "date", "delivery date", "delivered", "invoice date", "ship date", "lieferdatum", "datum"),
            Columns.Field.maybe("code", "code", "item number", "item #", "sku", "article", "number", "product code", "artikelnummer"),
            Columns.Field.needed("words", "item", "description", "product", "item description", "name", "goods", "artikel", "bezeichnung"),
            Columns.Field.maybe("pack", "pack", "pack size", "unit", "size", "uom", "einheit"),
            Columns.Field.needed("quantity", "came", "quantity", "qty", "shipped", "qty shipped", "packs", "cases", "menge"),
            Columns.Field.maybe("ordered", "ordered", "qty ordered", "order qty"),
            Columns.Field.maybe("price", "price", "unit price", "price each", "each", "preis"),
            Columns.Field.maybe("amount", "amount", "extended", "line total", "total", "ext", "net", "betrag"),
            Columns.Field.maybe("temperature", "f", "temp", "temperature", "temp f"),
            Columns.Field.maybe("note", "note", "notes", "remark"));

    private InvoiceFile() { }

    /** @param day of the delivery, for a file that has no dates; empty: it must have them */
    public static Intake read(Table table, Map<String, String> told, Map<String, String> remembered, VendorGoods goods,
            Optional<LocalDate> day) {
        Intake intake = Lines.read(table, FIELDS, told, remembered, List.of("quantity", "ordered", "price", "amount", "temperature"),
                (row, lines, into) -> receipt(row, lines, goods, day).ifPresent(into::add));
        if (intake instanceof Intake.Read read && !read.columns().containsKey("price") && !read.columns().containsKey("amount")) {
            return new Intake.Faulty(List.of("no column says what it costs -> say which: --column price=NAME or --column amount=NAME, one of "
                    + String.join(", ", table.header())));
        }
        return intake;
    }

    private static Optional<Receipt> receipt(Table.Row row, Lines lines, VendorGoods goods, Optional<LocalDate> day) {
        String words = lines.text(row, "words");
        String code = lines.text(row, "code");
        if (Totals.is(words) || words.isEmpty() && code.isEmpty() && lines.text(row, "quantity").isEmpty()) {
            lines.guess("Line " + row.line() + " is a total or empty and is not booked.");
            return Optional.empty();
        }
        Optional<LocalDate> date = day.isPresent() ? day : lines.date(row);
        Optional<Quantity> came = lines.quantity(row, "quantity");
        Optional<Long> price = lines.cents(row, "price");
        Optional<Long> amount = lines.cents(row, "amount");
        Optional<Quantity> ordered = lines.quantity(row, "ordered");
        Optional<Quantity> degrees = lines.quantity(row, "temperature");
        if (price.isEmpty() && amount.isEmpty() && lines.text(row, "price").isEmpty() && lines.text(row, "amount").isEmpty()) {
            lines.fault(row, "no price and no amount -> what it costs");
            return Optional.empty();
        }
        Quantity packs = came.orElse(lines.text(row, "quantity").isEmpty() ? Quantity.of(1) : Quantity.ZERO);
        if (date.isEmpty() || came.isEmpty() && !lines.text(row, "quantity").isEmpty() || price.isEmpty() && amount.isEmpty()) {
            return Optional.empty();
        }
        long reckoned = price.map(p -> times(p, packs)).orElse(0L);
        long cents = amount.orElse(reckoned);
        if (price.isPresent() && amount.isPresent() && Math.abs(cents - reckoned) > 1) {
            lines.guess("Line " + row.line() + ": " + packs + " at " + money(price.get()) + " is " + money(reckoned) + ", charged is "
                    + money(cents) + ". Booked as charged.");
        }
        return Optional.of(made(row, lines, goods, new Found(date.get(), code, words, packs, ordered,
                price.orElseGet(() -> packs.signum() == 0 ? 0L : each(cents, packs)), cents,
                degrees.map(d -> OptionalInt.of((int) (d.thousandths() / 100))).orElse(OptionalInt.empty()))));
    }

    private record Found(LocalDate date, String code, String words, Quantity came, Optional<Quantity> ordered, long price, long cents,
            OptionalInt tenthsF) { }

    private static Receipt made(Table.Row row, Lines lines, VendorGoods goods, Found f) {
        Optional<String> means = goods.matching().of((f.code + " " + f.words).strip()).or(() -> goods.matching().of(f.code))
                .or(() -> goods.matching().of(f.words));
        Receipt.Kind kind = kind(f.words, means);
        Optional<String> item = kind == Receipt.Kind.FOOD ? means : Optional.empty();
        Optional<Vendor.Offer> offer = item.flatMap(i -> goods.offer(i, lines.text(row, "pack"), f.price));
        String said = (f.code + " " + f.words).strip();
        return new Receipt(Draft.line(row.line()), f.date, goods.vendor().id(), Optional.empty(), kind, said, item,
                offer.map(Vendor.Offer::pack).or(() -> Optional.of(lines.text(row, "pack")).filter(p -> !p.isEmpty())), f.ordered, f.came,
                Quantity.ZERO, offer.map(o -> VendorGoods.mg(o, f.came)).orElse(0L), f.price, f.cents, Optional.empty(), f.tenthsF,
                offer.map(goods::origin).orElse(croftboard.ledger.Origin.UNKNOWN), lines.text(row, "note"));
    }

    private static Receipt.Kind kind(String words, Optional<String> means) {
        String plain = words.toLowerCase(Locale.ROOT);
        if (means.equals(Optional.of(Memory.NOT_FOOD))) {
            return Receipt.Kind.NOT_FOOD;
        }
        if (means.isEmpty() && plain.matches(".*\\b(delivery|freight|fuel|surcharge|fee|tax)\\b.*")) {
            return Receipt.Kind.FEE;
        }
        return means.isEmpty() && plain.matches(".*\\bdeposits?\\b.*") ? Receipt.Kind.DEPOSIT : Receipt.Kind.FOOD;
    }

    static long times(long cents, Quantity packs) {
        return BigDecimal.valueOf(cents).multiply(BigDecimal.valueOf(packs.thousandths(), 3)).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    private static long each(long cents, Quantity packs) {
        return BigDecimal.valueOf(cents).divide(BigDecimal.valueOf(packs.thousandths(), 3), 0, RoundingMode.HALF_UP).longValueExact();
    }

    private static String money(long cents) {
        return new croftboard.measure.Cents(cents).toString();
    }
}
