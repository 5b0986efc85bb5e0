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
import java.util.function.Predicate;

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
    private final List<WeekProblem.Offer> offers;
    private final List<WeekProblem.Delivery> deliveries;

    SupplyChanges(Book book, WeekPlan plan, Past past, WeekProblem problem, List<String> faults) {
        this.book = book;
        this.plan = plan;
        this.past = past;
        this.problem = problem;
        this.faults = faults;
        this.offers = new ArrayList<>(problem.offers());
        this.deliveries = new ArrayList<>(problem.deliveries());
    }

    WeekProblem apply(List<Change> changes) {
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
                more(more);
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
        return past.cutOff(d.cutOff()) || past.day(date(d));
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
            WeekProblem.Offer offer = offers.get(o);
            if (closed(delivery(offer))) {
                int packs = planned(offer);
                offers.set(o, packs(offer, packs, packs));
            }
        }
    }

    private int planned(WeekProblem.Offer offer) {
        WeekProblem.Delivery d = delivery(offer);
        return plan.orders().stream().filter(x -> x.vendor().equals(d.vendor()) && x.delivery().equals(date(d)))
                .flatMap(x -> x.lines().stream())
                .filter(l -> l.item().equals(item(offer)) && l.pack().equals(offer.pack()))
                .mapToInt(WeekPlan.OrderLine::packs).sum();
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

    private boolean on(WeekProblem.Offer o, DayOfWeek day) {
        return date(delivery(o)).getDayOfWeek() == day;
    }

    /** What was ordered is brought only in part. Two packs of one item: the larger number is cut last. */
    private void got(Change.Got got) {
        List<Integer> hit = which(o -> o.vendor().equals(got.vendor()) && item(o).equals(got.item())
                && got.day().map(d -> on(o, d)).orElse(true) && planned(o) > 0 && !arrivedLongAgo(o));
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
        int ordered = hit.stream().mapToInt(o -> planned(offers.get(o))).sum();
        if (got.packs() > ordered) {
            faults.add("\"" + got.sentence() + "\": only " + ordered + " were ordered -> at most " + ordered
                    + "; more on offer: " + got.vendor() + "/" + got.item() + " more PACKS at $PRICE DAY");
            return;
        }
        int left = got.packs();
        for (int o : hit) {
            int packs = Math.min(left, planned(offers.get(o)));
            left -= packs;
            offers.set(o, packs(offers.get(o), packs, packs));
            forgive(offers.get(o).delivery());
        }
    }

    private boolean arrivedLongAgo(WeekProblem.Offer o) {
        return date(delivery(o)).isBefore(past.now().toLocalDate());
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

    private List<Integer> which(Predicate<WeekProblem.Offer> wanted) {
        List<Integer> all = new ArrayList<>();
        for (int o = 0; o < offers.size(); o++) {
            if (wanted.test(offers.get(o))) {
                all.add(o);
            }
        }
        return all;
    }

    private void bringsNothing(Change change, String vendor, Optional<DayOfWeek> day) {
        List<Integer> hit = which(o -> o.vendor().equals(vendor) && day.map(d -> on(o, d)).orElse(true)
                && !past.day(date(delivery(o))));
        if (hit.isEmpty()) {
            faults.add("\"" + change.sentence() + "\": no delivery of " + vendor + " is still to come"
                    + day.map(d -> " on that day").orElse("") + " -> "
                    + ordered(vendor));
        }
        hit.forEach(o -> offers.set(o, packs(offers.get(o), 0, 0)));
    }

    private void itemOut(Change.ItemOut out) {
        which(o -> item(o).equals(out.item()) && !past.day(date(delivery(o))))
                .forEach(o -> offers.set(o, packs(offers.get(o), 0, 0)));
    }

    private void price(Change.Price price) {
        List<Integer> hit = which(o -> o.vendor().equals(price.vendor()) && item(o).equals(price.item())
                && !past.day(date(delivery(o))));
        if (hit.isEmpty()) {
            faults.add("\"" + price.sentence() + "\": " + price.vendor() + " brings no " + price.item()
                    + " any more this week -> an item of a delivery still to come");
        }
        hit.forEach(o -> offers.set(o, costing(offers.get(o), price.price())));
    }

    /** What was ordered for one day comes on another; nothing more can be ordered with it. */
    private void late(Change.Late late) {
        List<Integer> hit = which(o -> o.vendor().equals(late.vendor()) && on(o, late.day()) && planned(o) > 0
                && !arrivedLongAgo(o));
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
        int v = deliveries.size();
        deliveries.add(new WeekProblem.Delivery(from.vendor(), day, from.cutOff(), 0, from.feeCents(), from.forced()));
        for (int o : hit) {
            WeekProblem.Offer old = offers.get(o);
            int packs = planned(old);
            offers.set(o, packs(old, 0, 0));
            offers.add(new WeekProblem.Offer(old.vendor(), old.item(), v, old.pack(), old.packMg(), old.tiers(), packs,
                    packs, old.locality(), old.whyLocal(), old.onList()));
        }
        which(o -> o.delivery() == deliveries.indexOf(from)).forEach(o -> offers.set(o, packs(offers.get(o), 0, 0)));
    }

    /** Packs beyond what was announced, at their own price; they come with the vendor's delivery or alone. */
    private void more(Change.More more) {
        Optional<WeekProblem.Offer> like = offers.stream().filter(o -> o.vendor().equals(more.vendor())
                && item(o).equals(more.item())).findFirst();
        LocalDate when = plan.week().monday().plusDays(more.day().getValue() - 1L);
        if (like.isEmpty() || past.day(when)) {
            faults.add("\"" + more.sentence() + "\": " + (like.isEmpty() ? more.vendor() + " sells no " + more.item()
                    + " in farms/ this week -> add the offer there first" : "that day is over -> a day still to come"));
            return;
        }
        int day = Math.toIntExact(ChronoUnit.DAYS.between(problem.firstDay(), when));
        int v = -1;
        for (int k = 0; k < deliveries.size(); k++) {
            v = deliveries.get(k).vendor().equals(more.vendor()) && deliveries.get(k).day() == day ? k : v;
        }
        if (v < 0) {
            v = deliveries.size();
            deliveries.add(new WeekProblem.Delivery(more.vendor(), day, past.now(), 0,
                    book.vendor(more.vendor()).fee().value(), false));
        }
        WeekProblem.Offer o = like.get();
        offers.add(new WeekProblem.Offer(o.vendor(), o.item(), v, o.pack(), o.packMg(),
                List.of(new WeekProblem.Tier(1, more.price().value())), 0, more.packs(), o.locality(), o.whyLocal(),
                o.onList()));
    }

    /** At least so many packs, from the deliveries still open, soonest first. */
    private void buy(Change.Buy buy) {
        int left = buy.packs();
        for (int o : which(x -> x.vendor().equals(buy.vendor()) && item(x).equals(buy.item()) && !closed(delivery(x)))) {
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
