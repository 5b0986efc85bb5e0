package croftboard.ledger.share;

import croftboard.ledger.Credit;
import croftboard.ledger.Ledger;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.measure.IsoWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One vendor's season: what was ordered, delivered, shorted, rejected and paid, by crop and week, for the talk in winter.
 *
 * @param rows in the order of items, packs, weeks
 * @param creditsApart credits received that name no receipt, cents
 * @param besides fees, deposits and what is not food, cents
 */
public record GrowerSeason(String vendor, LocalDate from, LocalDate to, List<Row> rows, long creditsApart, long besides) {

    /**
     * @param item ingredient id, else the vendor's own words. @param pack empty: not told
     * @param ordered packs, where an order is known; of what came as something else, the ordered item has them
     * @param instead packs ordered that came as something else. @param shorted neither came nor were sent back
     * @param mg of what came, as far as known
     * @param charged cents. @param credited cents received for these lines
     */
    public record Row(String item, String pack, IsoWeek week, Quantity ordered, Quantity came, Quantity instead,
            Quantity shorted, Quantity rejected, long mg, long charged, long credited) {
        public long paid() {
            return charged - credited;
        }

        Row plus(Row o) {
            return new Row(item, pack, week, ordered.plus(o.ordered), came.plus(o.came), instead.plus(o.instead),
                    shorted.plus(o.shorted), rejected.plus(o.rejected), mg + o.mg, charged + o.charged, credited + o.credited);
        }
    }

    private record Key(String item, String pack, IsoWeek week) implements Comparable<Key> {
        @Override
        public int compareTo(Key o) {
            int items = item.compareTo(o.item);
            int packs = items != 0 ? items : pack.compareTo(o.pack);
            return packs != 0 ? packs : week.compareTo(o.week);
        }
    }

    public static GrowerSeason of(Ledger ledger, String vendor, LocalDate from, LocalDate to) {
        List<Receipt> receipts = ledger.entries(Receipt.class, from, to).stream().filter(r -> r.vendor().equals(vendor)).toList();
        List<Credit> credits = ledger.entries(Credit.class, from, to).stream()
                .filter(c -> c.vendor().equals(vendor) && c.step() == Credit.Step.RECEIVED).toList();
        Set<Long> ids = receipts.stream().map(r -> r.stamp().id()).collect(Collectors.toSet());
        Map<Long, Receipt> credited = Period.read(ledger, from, to).credited();
        Map<Long, Long> byReceipt = new HashMap<>();
        long apart = 0;
        for (Credit credit : credits) {
            Optional<Receipt> about = credit.receipt().map(credited::get)
                    .filter(r -> r.kind() == Receipt.Kind.FOOD && ids.contains(r.stamp().id()));
            if (about.isPresent()) {
                byReceipt.merge(about.get().stamp().id(), credit.cents(), Long::sum);
            } else {
                apart += credit.cents();
            }
        }
        TreeMap<Key, Row> rows = new TreeMap<>();
        long besides = 0;
        for (Receipt r : receipts) {
            if (r.kind() == Receipt.Kind.FOOD) {
                add(rows, r, byReceipt.getOrDefault(r.stamp().id(), 0L));
            } else {
                besides += r.cents();
            }
        }
        return new GrowerSeason(vendor, from, to, List.copyOf(rows.values()), apart, besides);
    }

    private static void add(TreeMap<Key, Row> rows, Receipt r, long credited) {
        Quantity ordered = r.ordered().orElse(Quantity.ZERO);
        Quantity none = Quantity.ZERO;
        IsoWeek week = IsoWeek.of(r.date());
        String item = r.item().orElse(r.words());
        String pack = r.pack().orElse("");
        if (r.insteadOf().isPresent()) {
            put(rows, new Row(r.insteadOf().get(), "", week, ordered, none, ordered, none, none, 0, 0, 0));
            put(rows, new Row(item, pack, week, none, r.came(), none, none, r.rejected(), r.mg(), r.cents(), credited));
        } else {
            put(rows, new Row(item, pack, week, ordered, r.came(), none, r.shorted(), r.rejected(), r.mg(), r.cents(), credited));
        }
    }

    private static void put(TreeMap<Key, Row> rows, Row row) {
        rows.merge(new Key(row.item, row.pack, row.week), row, Row::plus);
    }

    /** Each crop and pack, all weeks together; {@code week} is the first one. */
    public List<Row> crops() {
        Map<String, Row> crops = new TreeMap<>();
        rows.forEach(r -> crops.merge(r.item + "\n" + r.pack, r, Row::plus));
        return List.copyOf(crops.values());
    }

    public long charged() {
        return rows.stream().mapToLong(Row::charged).sum();
    }

    /** For food: charged less all credits received. */
    public long paid() {
        return charged() - rows.stream().mapToLong(Row::credited).sum() - creditsApart;
    }
}
