package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.book.ListedOffer;
import croftboard.book.Reply;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.plan.Rotation;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A grower's answer as availability: a list of each week that is answered. What the answer does not speak of stays as the
 * farm's calendar has it. The packs of a week are shared out over its deliveries as the rotation orders them; what is above
 * the orders comes with the last.
 */
public final class ReplyBook {
    private final Book book;
    private final Rotation rotation;
    private final Reply reply;
    private final Vendor vendor;
    private final Expectation farms;

    /** @throws IllegalStateException when the book has no such vendor */
    public ReplyBook(Book book, Rotation rotation, Reply reply) {
        this.book = book;
        this.rotation = rotation;
        this.reply = reply;
        this.vendor = book.vendor(reply.vendor());
        this.farms = new Expectation(book);
    }

    /** The book with the answer in it. A list of the vendor that is there already gives way. */
    public Book book() {
        Map<IsoWeek, List<ListedOffer>> lists = new LinkedHashMap<>(book.lists());
        lists().forEach((week, rows) -> {
            List<ListedOffer> all = new ArrayList<>(lists.getOrDefault(week, List.of()));
            all.removeIf(r -> r.vendor().equals(vendor.id()));
            all.addAll(rows);
            lists.put(week, List.copyOf(all));
        });
        return new Book(book.kitchen(), book.ingredients(), book.recipes(), book.vendors(), book.seasons(), lists, book.onHand(),
                book.fingerprint());
    }

    /** The vendor's lists, one a week that is answered. */
    public SortedMap<IsoWeek, List<ListedOffer>> lists() {
        TreeSet<IsoWeek> weeks = new TreeSet<>();
        reply.answered().forEach(r -> weeks.add(r.week()));
        SortedMap<IsoWeek, List<ListedOffer>> lists = new TreeMap<>();
        for (IsoWeek week : weeks) {
            List<ListedOffer> rows = new ArrayList<>(of(week));
            IsoWeek before = week.plusWeeks(-1);
            boolean alone = !weeks.contains(before) && book.lists().getOrDefault(before, List.of()).stream()
                    .noneMatch(r -> r.vendor().equals(vendor.id()));
            if (alone) {
                of(before).stream().filter(r -> !r.delivery().isBefore(week.monday().minusDays(6))).forEach(rows::add);
            }
            lists.put(week, List.copyOf(rows));
        }
        return lists;
    }

    /** All that the vendor has in a calendar week, answered or not. */
    private List<ListedOffer> of(IsoWeek week) {
        List<ListedOffer> rows = new ArrayList<>();
        for (Vendor.Offer offer : vendor.offers()) {
            Optional<Reply.Row> said = reply.answered().stream().filter(r -> r.week().equals(week) && r.item().equals(offer.item())
                    && r.pack().equals(offer.pack())).findFirst();
            List<LocalDate> dates = farms.deliveries(vendor, offer, week);
            int left = said.map(r -> r.have().getAsInt()).orElse(0);
            for (LocalDate date : dates) {
                int packs = said.isEmpty() ? counted(offer, week)
                        : date.equals(dates.get(dates.size() - 1)) ? left : Math.min(left, ordered(offer, date));
                left -= said.isEmpty() ? 0 : packs;
                rows.add(new ListedOffer(vendor.id(), offer.item(), offer.pack(), said.flatMap(Reply.Row::price).orElse(offer.price()), packs, date,
                        said.isEmpty() ? "" : "answer to " + reply.rotation()));
            }
        }
        return rows;
    }

    /** What a plan counts on, a delivery. */
    private static int counted(Vendor.Offer offer, IsoWeek week) {
        return offer.weeks().stream().filter(e -> e.weeks().holds(week) && e.confidence() != Vendor.Confidence.HOPE)
                .mapToInt(Vendor.Expected::packs).sum();
    }

    private int ordered(Vendor.Offer offer, LocalDate date) {
        return rotation.weeks().stream().flatMap(w -> w.plan().orders().stream())
                .filter(o -> o.vendor().equals(vendor.id()) && o.delivery().equals(date)).flatMap(o -> o.lines().stream())
                .filter(l -> l.item().equals(offer.item()) && l.pack().equals(offer.pack())).mapToInt(WeekPlan.OrderLine::packs).sum();
    }
}
