package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.plan.Rotation;
import croftboard.plan.WeekPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one vendor is told ahead of a rotation: of each pack, how many a week, how sure that is, and the price that was
 * reckoned with. Weeks are those of the deliveries.
 *
 * @param rows by crop, pack and week
 */
public record Notice(String vendor, List<Row> rows) {
    /** Nine weeks in ten stay above the low end, nine in ten below the high one (normal distribution). */
    private static final double DECILE = 1.2816;

    /**
     * @param packs that the rotation orders
     * @param low end of the range, with {@code high}: what may be wanted as demand and yields fall
     * @param firm taken whatever the demand, as far as a poor field has it; promised packs at least. At most {@code packs}
     * @param price cents a pack, as the rotation reckoned
     */
    public record Row(String item, String pack, IsoWeek week, int packs, int low, int high, int firm, long price) {
        public int hoped() {
            return packs - firm;
        }
    }

    public int packs() {
        return rows.stream().mapToInt(Row::packs).sum();
    }

    /** Cents of the rotation's orders with the vendor, delivery fees aside. */
    public long cents() {
        return rows.stream().mapToLong(r -> r.packs * r.price).sum();
    }

    /** Every vendor of whom the rotation orders something, by id; distributors too. */
    public static List<Notice> all(Book book, Rotation rotation) {
        Map<String, Map<List<Object>, Ordered>> orders = new TreeMap<>();
        Map<IsoWeek, Spread> spreads = new TreeMap<>();
        Purchased purchased = new Purchased(book);
        for (Rotation.Week week : rotation.weeks()) {
            spreads.put(week.week(), new Spread(book, week.plan(), purchased));
            for (WeekPlan.Order o : week.plan().orders()) {
                for (WeekPlan.OrderLine l : o.lines()) {
                    orders.computeIfAbsent(o.vendor(), v -> new java.util.HashMap<>())
                            .merge(List.of(l.item(), l.pack(), IsoWeek.of(o.delivery())), new Ordered(l.packs(), l.cost(), week.week()),
                                    Ordered::plus);
                }
            }
        }
        List<Notice> all = new ArrayList<>();
        Expectation farms = new Expectation(book);
        orders.forEach((vendor, lines) -> {
            List<Row> rows = new ArrayList<>();
            lines.forEach((key, o) -> rows.add(row(book, farms, vendor, (String) key.get(0), (String) key.get(1), (IsoWeek) key.get(2),
                    o, spreads.get(o.week))));
            rows.sort(Comparator.comparing(Row::item).thenComparing(Row::pack).thenComparing(Row::week));
            all.add(new Notice(vendor, List.copyOf(rows)));
        });
        return List.copyOf(all);
    }

    /** @param week of the plan that orders it */
    private record Ordered(int packs, long cents, IsoWeek week) {
        Ordered plus(Ordered o) {
            return new Ordered(packs + o.packs, cents + o.cents, week);
        }
    }

    /**
     * Whole packs for a need that is so many times as large. The packs ordered cover a need that lies somewhere in the last of
     * them; its middle is taken.
     */
    private static int packs(int ordered, double times) {
        return (int) Math.ceil((ordered - 0.5) * times - 1e-9);
    }

    private static Row row(Book book, Expectation farms, String vendor, String item, String pack, IsoWeek week, Ordered o,
            Spread spread) {
        double demand = DECILE * spread.demand(item);
        Vendor seller = book.vendors().get(vendor);
        int promised = 0;
        int poor = o.packs;
        int most = Integer.MAX_VALUE;
        double yield = 0;
        if (seller != null) {
            promised = seller.commitments().stream().filter(c -> c.item().equals(item) && c.pack().equals(pack) && c.weeks().holds(week))
                    .mapToInt(Vendor.Commitment::packs).sum();
            int[] had = seller.offers().stream().filter(f -> f.item().equals(item) && f.pack().equals(pack)).findFirst()
                    .map(f -> farms.packs(seller, f, week)).orElse(new int[3]);
            boolean grower = seller.kind() == Vendor.Kind.GROWER;
            yield = grower ? Spread.fieldSpread(had) : 0;
            poor = grower ? (int) Math.round(Spread.low(had, DECILE)) : o.packs;
            most = had[0] + had[1] + had[2];
        }
        double both = DECILE * Math.sqrt(spread.demand(item) * spread.demand(item) + yield * yield);
        int firm = Math.min(o.packs, Math.max(promised, Math.min(poor, packs(o.packs, 1 - demand))));
        int low = Math.min(Math.max(0, packs(o.packs, 1 - both)), firm);
        int high = Math.max(o.packs, Math.min(most, packs(o.packs, 1 + both)));
        return new Row(item, pack, week, o.packs, Math.max(low, Math.min(promised, firm)), high, Math.max(0, firm),
                Math.round((double) o.cents / o.packs));
    }
}
