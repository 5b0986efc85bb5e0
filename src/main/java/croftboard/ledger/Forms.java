package croftboard.ledger;

import java.util.List;

/** Every kind of entry as columns, in the order in which they are exported. */
public final class Forms {
    private static final Form<Receipt> RECEIPT = new Form<>("receipt", Receipt.class, (s, d, c) -> new Receipt(s, d, c.text(),
            c.maybe(), c.oneOf(Receipt.Kind.values()), c.text(), c.maybe(), c.maybe(), c.maybeQuantity(), c.quantity(), c.quantity(),
            c.number(), c.number(), c.number(), c.maybe(), c.maybeSmall(), c.origin(), c.text()))
            .text("vendor", Receipt::vendor).maybe("order_id", Receipt::order).text("what", r -> r.kind().name())
            .text("words", Receipt::words).maybe("item", Receipt::item).maybe("pack", Receipt::pack)
            .maybeQuantity("ordered_1000", Receipt::ordered).quantity("came_1000", Receipt::came)
            .quantity("rejected_1000", Receipt::rejected).number("mg", Receipt::mg).number("price_cents", Receipt::price)
            .number("cents", Receipt::cents).maybe("instead_of", Receipt::insteadOf).maybeSmall("tenths_f", Receipt::tenthsF)
            .text("grown", r -> Origin.text(r.origin().grown())).text("made", r -> Origin.text(r.origin().made()))
            .maybe("local_part", r -> r.origin().localPart()).text("note", Receipt::note);
    private static final Form<Sale> SALE = new Form<>("sale", Sale.class, (s, d, c) -> new Sale(s, d, c.maybeSmall(), c.text(),
            c.text(), c.maybe(), c.yes(), c.quantity(), c.number()))
            .maybeSmall("hour_of_day", Sale::hour).text("code", Sale::code).text("words", Sale::words).maybe("dish", Sale::dish)
            .text("ours", x -> yes(x.ours())).quantity("units_1000", Sale::units).number("cents", Sale::cents);
    private static final Form<Left> LEFT = new Form<>("left_over", Left.class, (s, d, c) -> new Left(s, d, c.text(), c.text(),
            c.text(), c.text(), c.small(), c.maybeQuantity(), c.maybeQuantity(), c.maybeQuantity(), c.maybeTime(), c.text()))
            .text("week", Left::week).text("slot", Left::slot).text("service_line", Left::line).text("dish", Left::dish)
            .number("planned", Left::planned).maybeQuantity("prepared_1000", Left::prepared).maybeQuantity("sold_1000", Left::sold)
            .maybeQuantity("left_1000", Left::left).maybe("ran_out_at", Left::ranOut).text("note", Left::note);
    private static final Form<Waste> WASTE = new Form<>("waste", Waste.class, (s, d, c) -> new Waste(s, d, c.maybe(), c.maybe(),
            c.text(), c.quantity(), c.number(), c.oneOf(Waste.Reason.values()), c.number(), c.text()))
            .maybe("dish", Waste::dish).maybe("item", Waste::item).text("words", Waste::words)
            .quantity("portions_1000", Waste::portions).number("mg", Waste::mg).text("reason", w -> w.reason().name())
            .number("cents", Waste::cents).text("note", Waste::note);
    private static final Form<StockCount> COUNT = new Form<>("stock_count", StockCount.class, (s, d, c) -> new StockCount(s, d,
            c.maybe(), c.text(), c.text(), c.number(), c.number()))
            .maybe("item", StockCount::item).text("words", StockCount::words).text("amount", StockCount::amount)
            .number("mg", StockCount::mg).number("cents", StockCount::cents);
    private static final Form<BatchYield> YIELD = new Form<>("batch_yield", BatchYield.class, (s, d, c) -> new BatchYield(s, d,
            c.text(), c.ratio(), c.number(), c.number()))
            .text("recipe", BatchYield::recipe).text("batches", b -> Form.ratio(b.batches()))
            .number("expected_mg", BatchYield::expectedMg).number("got_mg", BatchYield::gotMg);
    private static final Form<Credit> CREDIT = new Form<>("credit", Credit.class, (s, d, c) -> new Credit(s, d, c.text(),
            c.maybeNumber(), c.oneOf(Credit.Step.values()), c.number(), c.text()))
            .text("vendor", Credit::vendor).maybeNumber("receipt", Credit::receipt).text("step", x -> x.step().name())
            .number("cents", Credit::cents).text("reason", Credit::reason);
    private static final Form<Overriding> OVERRIDING = new Form<>("overriding", Overriding.class, (s, d, c) -> new Overriding(s, d,
            c.text(), c.maybe(), c.maybeQuantity(), c.quantity(), c.text()))
            .text("service_line", Overriding::line).maybe("dish", Overriding::dish).maybeQuantity("forecast_1000", Overriding::forecast)
            .quantity("portions_1000", Overriding::portions).text("reason", Overriding::reason);
    private static final Form<Transfer> TRANSFER = new Form<>("transfer", Transfer.class, (s, d, c) -> new Transfer(s, d,
            c.oneOf(Transfer.Way.values()), c.text(), c.text(), c.quantity(), c.number(), c.number()))
            .text("way", t -> t.way().name()).text("place", Transfer::where).text("what", Transfer::what)
            .quantity("portions_1000", Transfer::portions).number("mg", Transfer::mg).number("cents", Transfer::cents);
    private static final Form<LabelRead> LABEL = new Form<>("label_read", LabelRead.class, (s, d, c) -> new LabelRead(s, d,
            c.number(), c.words(), c.yes(), c.text()))
            .number("receipt", LabelRead::receipt).text("contains", l -> String.join("; ", l.contains()))
            .text("others_known", l -> yes(l.othersKnown())).text("words", LabelRead::words);
    private static final Form<Withdrawal> WITHDRAWAL = new Form<>("withdrawal", Withdrawal.class, (s, d, c) -> new Withdrawal(s, d));

    public static final List<Form<?>> ALL = List.of(RECEIPT, SALE, LEFT, WASTE, COUNT, YIELD, CREDIT, OVERRIDING, TRANSFER, LABEL,
            WITHDRAWAL);

    private Forms() { }

    private static String yes(boolean yes) {
        return yes ? "yes" : "no";
    }

    /** The form of an entry's kind. */
    public static Form<?> of(Entry entry) {
        return ALL.stream().filter(f -> f.kind().isInstance(entry)).findFirst().orElseThrow();
    }

    /** The form of a kind. */
    @SuppressWarnings("unchecked")
    public static <E extends Entry> Form<E> of(Class<E> kind) {
        return (Form<E>) ALL.stream().filter(f -> f.kind().equals(kind)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no form of [" + kind + "]"));
    }
}
