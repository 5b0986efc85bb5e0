package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * What can be bought under changed facts. An order past its cut-off stands as it was sent, or as it was brought; a delivery
 * still open may be ordered anew.
 */
final class SupplyChanges {
    private final Book book;
    private final WeekPlan plan;
    private final Past past;
    private final WeekProblem problem;
    private final List<String> faults;
    private final List<Change> changes;
    private final PlannedLines lines;
    private final List<WeekProblem.Offer> offers;
    private final List<WeekProblem.Delivery> deliveries;

    SupplyChanges(Book book, WeekPlan plan, Past past, WeekProblem problem, List<Change> changes, List<String> faults) {
        this.book = book;
        this.plan = plan;
        this.past = past;
        this.problem = problem;
        this.changes = changes;
        this.faults = faults;
        this.lines = new PlannedLines(problem, plan, o -> closed(o.vendor(), o.cutOff(), o.delivery()));
        this.offers = lines.offers;
        this.deliveries = lines.deliveries;
    }

    WeekProblem apply() {
        freeze();
        for (Change c : changes) {
            if (c instanceof Change.Got got) {
                got(got);
            } else if (c instanceof Change.Late late) {
                late(late);
            } else if (c instanceof Change.VendorOut out) {
                bringsNothing(c, out.vendor(), out.day());
            } else if (c instanceof Change.ItemOut out) {
                itemOut(out);
            } else if (c instanceof Change.NotSent not) {
                bringsNothing(c, not.vendor(), Optional.of(not.day()));
            } else if (c instanceof Change.Price price) {
                price(price);
            } else if (c instanceof Change.More more) {
                more(more, more, 0);
            } else if (c instanceof Change.Take take) {
                more(take, new Change.More(take.vendor(), take.item(), take.packs(), take.price(), take.day()), take.packs());
            } else if (c instanceof Change.Buy buy) {
                buy(buy);
            }
        }
        return Problems.withSupply(problem, offers, deliveries);
    }

    private LocalDate date(WeekProblem.Delivery d) {
        return problem.firstDay().plusDays(d.day());
    }

    private WeekProblem.Delivery delivery(WeekProblem.Offer o) {
        return deliveries.get(o.delivery());
    }

    private String item(WeekProblem.Offer o) {
        return problem.items().get(o.item()).id();
    }

    private boolean closed(WeekProblem.Delivery d) {
        return closed(d.vendor(), d.cutOff(), date(d));
    }

    /** What comes late comes as it was ordered, also before its cut-off. */
    private boolean closed(String vendor, java.time.LocalDateTime cutOff, LocalDate delivery) {
        return past.cutOff(cutOff) || past.day(delivery) || changes.stream().anyMatch(c -> c instanceof Change.Late late
                && late.vendor().equals(vendor) && late.day() == delivery.getDayOfWeek());
    }

    /** Orders past their cut-off are what they are; their minimum is met or forgiven. */
    private void freeze() {
        for (int v = 0; v < deliveries.size(); v++) {
            WeekProblem.Delivery d = deliveries.get(v);
            if (closed(d)) {
                deliveries.set(v, new WeekProblem.Delivery(d.vendor(), d.day(), d.cutOff(), 0, d.feeCents(), d.forced()));
            }
        }
        for (int o = 0; o < offers.size(); o++) {
            if (closed(delivery(offers.get(o)))) {
                offers.set(o, packs(offers.get(o), lines.of(o), lines.of(o)));
            }
        }
    }

    private static WeekProblem.Offer packs(WeekProblem.Offer o, int least, int most) {
        return new WeekProblem.Offer(o.vendor(), o.item(), o.delivery(), o.pack(), o.packMg(), o.tiers(), least, most,
                o.locality(), o.whyLocal(), o.onList());
    }

    private static WeekProblem.Offer costing(WeekProblem.Offer o, Cents price) {
        return new WeekProblem.Offer(o.vendor(), o.item(), o.delivery(), o.pack(), o.packMg(),
                List.of(new WeekProblem.Tier(1, price.value())), o.minPacks(), o.maxPacks(), o.locality(), o.whyLocal(),
                o.onList());
    }

    private boolean on(int o, DayOfWeek day) {
        return date(delivery(offers.get(o))).getDayOfWeek() == day;
    }

    /** What was ordered is brought only in part. Two packs of one item: the larger number is cut last. */
    private void got(Change.Got got) {
        List<Integer> hit = which(o -> sells(o, got.vendor(), got.item())
                && got.day().map(d -> on(o, d)).orElse(true) && lines.of(o) > 0 && !arrivedLongAgo(o));
        if (hit.isEmpty()) {
            faults.add("\"" + got.sentence() + "\": the plan orders no " + got.item() + " from " + got.vendor()
                    + got.day().map(d -> " for that day").orElse("") + " -> " + ordered(got.vendor()));
            return;
        }
        if (hit.stream().map(o -> delivery(offers.get(o)).day()).distinct().count() > 1) {
            faults.add("\"" + got.sentence() + "\": it is ordered for more than one delivery -> say the day, as in "
                    + got.vendor() + "/" + got.item() + " got " + got.packs() + " "
                    + ChangeSentence.day(date(delivery(offers.get(hit.get(0)))).getDayOfWeek()));
            return;
        }
        int ordered = hit.stream().mapToInt(lines::of).sum();
        if (got.packs() > ordered) {
            faults.add("\"" + got.sentence() + "\": only " + ordered + " were ordered -> at most " + ordered
                    + "; more on offer: " + got.vendor() + "/" + got.item() + " more PACKS at $PRICE DAY");
            return;
        }
        int left = got.packs();
        for (int o : hit) {
            int packs = Math.min(left, lines.of(o));
            left -= packs;
            lines.set(o, packs);
            offers.set(o, packs(offers.get(o), packs, packs));
            forgive(offers.get(o).delivery());
        }
    }

    private boolean sells(int o, String vendor, String item) {
        return offers.get(o).vendor().equals(vendor) && item(offers.get(o)).equals(item);
    }

    private boolean over(int o) {
        return past.day(date(delivery(offers.get(o))));
    }

    private boolean arrivedLongAgo(int o) {
        return date(delivery(offers.get(o))).isBefore(past.now().toLocalDate());
    }

    private String ordered(String vendor) {
        List<String> lines = new ArrayList<>();
        plan.orders().stream().filter(o -> o.vendor().equals(vendor)).forEach(o -> o.lines().forEach(l ->
                lines.add(l.packs() + " " + l.item() + " for " + ChangeSentence.day(o.delivery().getDayOfWeek()))));
        return lines.isEmpty() ? "the plan orders nothing there" : "it orders " + String.join(", ", lines);
    }

    /** Who brings less than was agreed is not asked for the minimum. */
    private void forgive(int v) {
        WeekProblem.Delivery d = deliveries.get(v);
        deliveries.set(v, new WeekProblem.Delivery(d.vendor(), d.day(), d.cutOff(), 0, d.feeCents(), d.forced()));
    }

    private List<Integer> which(IntPredicate wanted) {
        List<Integer> all = new ArrayList<>();
        for (int o = 0; o < offers.size(); o++) {
            if (wanted.test(o)) {
                all.add(o);
            }
        }
        return all;
    }

    private void bringsNothing(Change change, String vendor, Optional<DayOfWeek> day) {
        List<Integer> hit = which(o -> offers.get(o).vendor().equals(vendor) && day.map(d -> on(o, d)).orElse(true)
                && !over(o));
        if (hit.isEmpty()) {
            faults.add("\"" + change.sentence() + "\": no delivery of " + vendor + " is still to come"
                    + day.map(d -> " on that day").orElse("") + " -> "
                    + ordered(vendor));
        }
        hit.forEach(o -> offers.set(o, packs(offers.get(o), 0, 0)));
    }

    private void itemOut(Change.ItemOut out) {
        which(o -> item(offers.get(o)).equals(out.item()) && !over(o))
                .forEach(o -> offers.set(o, packs(offers.get(o), 0, 0)));
    }

    private void price(Change.Price price) {
        List<Integer> hit = which(o -> sells(o, price.vendor(), price.item()) && !over(o));
        if (hit.isEmpty()) {
            faults.add("\"" + price.sentence() + "\": " + price.vendor() + " brings no " + price.item()
                    + " any more this week -> an item of a delivery still to come");
        }
        hit.forEach(o -> offers.set(o, costing(offers.get(o), price.price())));
    }

    /** What was ordered for one day comes on another; nothing more can be ordered with it. */
    private void late(Change.Late late) {
        List<Integer> hit = which(o -> offers.get(o).vendor().equals(late.vendor()) && on(o, late.day())
                && lines.of(o) > 0 && !arrivedLongAgo(o));
        if (hit.isEmpty()) {
            faults.add("\"" + late.sentence() + "\": nothing is ordered from " + late.vendor() + " for that day -> "
                    + ordered(late.vendor()));
            return;
        }
        WeekProblem.Delivery from = delivery(offers.get(hit.get(0)));
        int day = from.day() + Math.floorMod(late.until().getValue() - late.day().getValue(), 7);
        if (day >= problem.days()) {
            faults.add("\"" + late.sentence() + "\": that is after the week -> " + late.vendor() + " out "
                    + ChangeSentence.day(late.day()));
            return;
        }
        int v = lines.delivery(new WeekProblem.Delivery(from.vendor(), day, from.cutOff(), 0, from.feeCents(), from.forced()));
        forgive(v);
        for (int o : hit) {
            WeekProblem.Offer old = offers.get(o);
            int packs = lines.of(o);
            lines.set(o, 0);
            lines.add(new WeekProblem.Offer(old.vendor(), old.item(), v, old.pack(), old.packMg(), old.tiers(), packs,
                    packs, old.locality(), old.whyLocal(), old.onList()), packs);
        }
        which(o -> deliveries.get(offers.get(o).delivery()).equals(from)).forEach(o -> offers.set(o, packs(offers.get(o), 0, 0)));
    }

    /** Packs beyond what was announced, at their own price; they come with the vendor's delivery or alone. */
    private void more(Change said, Change.More more, int least) {
        Optional<WeekProblem.Offer> like = offers.stream().filter(o -> o.vendor().equals(more.vendor())
                && item(o).equals(more.item())).findFirst();
        LocalDate when = plan.week().monday().plusDays(more.day().getValue() - 1L);
        if (like.isEmpty() || past.day(when)) {
            faults.add("\"" + said.sentence() + "\": " + (like.isEmpty() ? more.vendor() + " sells no " + more.item()
                    + " in farms/ this week -> add the offer there first" : "that day is over -> a day still to come"));
            return;
        }
        if (plan.orders().stream().anyMatch(o -> o.vendor().equals(more.vendor()) && o.delivery().equals(when)
                && past.cutOff(o.cutOff())) && earlier(said)) {
            return;
        }
        int day = Math.toIntExact(ChronoUnit.DAYS.between(problem.firstDay(), when));
        int v = lines.delivery(new WeekProblem.Delivery(more.vendor(), day, past.now(), 0,
                book.vendor(more.vendor()).fee().value(), false));
        WeekProblem.Offer o = like.get();
        lines.add(new WeekProblem.Offer(o.vendor(), o.item(), v, o.pack(), o.packMg(),
                List.of(new WeekProblem.Tier(1, more.price().value())), least, more.packs(), o.locality(), o.whyLocal(),
                o.onList()), 0);
    }

    /** The plan was changed for it before: what it took of it is among its orders. */
    private boolean earlier(Change change) {
        return plan.inputs().revision().map(r -> r.changes().contains(change.sentence())).orElse(false);
    }

    /** At least so many packs, from the deliveries still open, soonest first. */
    private void buy(Change.Buy buy) {
        int left = buy.packs();
        for (int o : which(x -> sells(x, buy.vendor(), buy.item()) && !closed(delivery(offers.get(x))))) {
            int packs = Math.min(left, offers.get(o).maxPacks());
            left -= packs;
            offers.set(o, packs(offers.get(o), Math.max(packs, offers.get(o).minPacks()), offers.get(o).maxPacks()));
        }
        if (left > 0) {
            faults.add("\"" + buy.sentence() + "\": " + (buy.packs() - left) + " can still be ordered this week -> at most "
                    + (buy.packs() - left));
        }
    }
}
