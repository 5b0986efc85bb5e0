package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.ledger.Booking;
import croftboard.ledger.Entry;
import croftboard.ledger.Form;
import croftboard.ledger.Forms;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.measure.Cents;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What was taken into the ledger, or would be. */
public final class TakenScreen implements Screen {
    private static final int MOST_ROWS = 60;
    private static final int MOST_UNMATCHED = 40;
    private final Names names;
    private final Booking booking;
    private final List<Entry> entries;
    private final boolean dry;
    private final List<String> guesses;
    private final Function<String, List<String>> nearest;

    /**
     * @param dry nothing was booked
     * @param guesses sentences on what was guessed
     * @param nearest candidates for words that mean nothing in the book
     */
    public TakenScreen(Book book, Booking booking, List<Entry> entries, boolean dry, List<String> guesses,
            Function<String, List<String>> nearest) {
        this.names = new Names(book);
        this.booking = booking;
        this.entries = entries;
        this.dry = dry;
        this.guesses = guesses;
        this.nearest = nearest;
    }

    @Override
    public String name() {
        return "booked";
    }

    @Override
    public void print(Page page) {
        page.heading((dry ? "Dry run: would be booked from " : "Booked from ") + booking.name());
        guesses.stream().limit(MOST_ROWS).forEach(g -> page.item("- ", g));
        if (guesses.size() > MOST_ROWS) {
            page.item("- ", "and " + (guesses.size() - MOST_ROWS) + " more.");
        }
        page.gap();
        receipts(page, of(Receipt.class));
        sales(page, of(Sale.class));
        others(page);
        unmatched(page);
        page.gap();
        page.say(dry ? "Nothing was booked. Run it again without --dry-run to book it." : entries.isEmpty() ? "Nothing new: nothing was booked."
                : "Booked as " + booking.number() + ": " + (entries.size() == 1 ? "entry "
                : "entries " + entries.get(0).stamp().id() + " to ") + entries.get(entries.size() - 1).stamp().id() + ".");
    }

    private <E extends Entry> List<E> of(Class<E> kind) {
        return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private void receipts(Page page, List<Receipt> receipts) {
        if (receipts.isEmpty()) {
            return;
        }
        TextTable table = new TextTable(TextTable.Column.figure("entry"), TextTable.Column.mark("date"), TextTable.Column.words("vendor"),
                TextTable.Column.words("what came"), TextTable.Column.figure("packs"), TextTable.Column.figure("a pack"),
                TextTable.Column.figure("money"), TextTable.Column.words("remarks"));
        receipts.stream().limit(MOST_ROWS).forEach(r -> table.row(Long.toString(r.stamp().id()), r.date().toString(), names.vendor(r.vendor()),
                r.item().map(names::item).orElse(r.words()), r.came().toString(), new Cents(r.price()).toString(),
                new Cents(r.cents()).toString(), String.join(", ", remarks(r))));
        page.table(table);
        if (receipts.size() > MOST_ROWS) {
            page.say("and " + (receipts.size() - MOST_ROWS) + " more lines (--format csv shows all).");
        }
        page.say(receipts.size() + (receipts.size() == 1 ? " line, " : " lines, ")
                + new Cents(receipts.stream().mapToLong(Receipt::cents).sum()) + ".");
    }

    private List<String> remarks(Receipt r) {
        List<String> all = new ArrayList<>();
        r.stamp().corrects().ifPresent(c -> all.add("corrects entry " + c.entry()));
        if (r.kind() != Receipt.Kind.FOOD) {
            all.add(r.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '));
        }
        r.insteadOf().ifPresent(i -> all.add("instead of " + names.item(i) + ", LABEL NOT READ"));
        if (r.shorted().signum() > 0) {
            all.add(r.shorted() + " short");
        }
        if (r.rejected().signum() > 0) {
            all.add(r.rejected() + " sent back");
        }
        r.tenthsF().ifPresent(t -> all.add(java.math.BigDecimal.valueOf(t, 1).stripTrailingZeros().toPlainString() + " °F"));
        if (r.unmatched()) {
            all.add("not matched");
        }
        return all;
    }

    private void sales(Page page, List<Sale> sales) {
        if (sales.isEmpty()) {
            return;
        }
        Map<String, long[]> sums = new LinkedHashMap<>();
        for (Sale s : sales) {
            String what = s.dish().map(names::recipe).orElse(s.ours() ? "not matched yet" : "not ours");
            long[] sum = sums.computeIfAbsent(what, k -> new long[2]);
            sum[0] += s.units().thousandths();
            sum[1] += s.cents();
        }
        TextTable table = new TextTable(TextTable.Column.words("dish"), TextTable.Column.figure("units"), TextTable.Column.figure("money"));
        sums.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(e -> table.row(e.getKey(), new Quantity(e.getValue()[0]).toString(),
                new Cents(e.getValue()[1]).toString()));
        page.table(table);
        page.say(sales.size() + (sales.size() == 1 ? " line, " : " lines, ") + sales.stream().map(Sale::date).min(java.util.Comparator.naturalOrder()).orElseThrow()
                + " to " + sales.stream().map(Sale::date).max(java.util.Comparator.naturalOrder()).orElseThrow() + ", "
                + new Cents(sales.stream().mapToLong(Sale::cents).sum()) + ".");
    }

    private void others(Page page) {
        List<Entry> rest = entries.stream().filter(e -> !(e instanceof Receipt) && !(e instanceof Sale)).toList();
        Map<String, Integer> kinds = new LinkedHashMap<>();
        rest.forEach(e -> kinds.merge(Forms.of(e).table().replace('_', ' '), 1, Integer::sum));
        rest.stream().limit(MOST_ROWS).forEach(e -> page.item("- ", EntryWords.of(e, names)));
        kinds.forEach((kind, count) -> page.say(kind + ": " + count + (count == 1 ? " entry." : " entries.")));
    }

    private void unmatched(Page page) {
        Map<String, Integer> words = new LinkedHashMap<>();
        entries.forEach(e -> EntryWords.unmatched(e).ifPresent(w -> words.merge(w, 1, Integer::sum)));
        if (words.isEmpty()) {
            return;
        }
        page.subheading("Not matched: " + words.size() + ". The money counts; what it is is not known.");
        words.entrySet().stream().limit(MOST_UNMATCHED).forEach(e -> page.item("- ", e.getKey() + (e.getValue() > 1 ? " (" + e.getValue()
                + " lines)" : "") + ": " + candidates(e.getKey())));
        page.say((words.size() > MOST_UNMATCHED ? "All of them: croftboard match. " : "")
                + "Say what they are: croftboard match \"WORDS\" ID (or not-food, not-ours).");
    }

    private String candidates(String words) {
        List<String> near = nearest.apply(words);
        return near.isEmpty() ? "nothing like it in the book" : "perhaps " + String.join(", ", near);
    }

    @Override
    public Rows rows() {
        List<Form<?>> forms = Forms.ALL.stream().filter(f -> entries.stream().anyMatch(f.kind()::isInstance)).toList();
        List<String> columns = new ArrayList<>(List.of("entry", "booking", "line", "corrects", "kind", "date"));
        forms.forEach(f -> f.columns().stream().filter(c -> !columns.contains(c.name())).forEach(c -> columns.add(c.name())));
        Rows rows = new Rows(columns.toArray(String[]::new));
        for (Entry e : entries) {
            Form<?> form = Forms.of(e);
            List<String> cells = form.cells(e);
            Map<String, String> mine = new LinkedHashMap<>();
            for (int c = 0; c < cells.size(); c++) {
                mine.put(form.columns().get(c).name(), cells.get(c));
            }
            List<Object> row = new ArrayList<>(List.of(e.stamp().id(), booking.number(), e.stamp().line(),
                    e.stamp().corrects().map(c -> Long.toString(c.entry())).orElse(""), form.table(), e.date()));
            columns.subList(6, columns.size()).forEach(c -> row.add(mine.getOrDefault(c, "")));
            rows.add(row.toArray());
        }
        return rows;
    }
}
