package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.TakenScreen;
import croftboard.ledger.AtTheDoor;
import croftboard.ledger.Booked;
import croftboard.ledger.Booking;
import croftboard.ledger.Entry;
import croftboard.ledger.Ordered;
import croftboard.ledger.SentOrder;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** Books orders of a plan as they came. */
final class OrdersAtTheDoor {
    private final Book book;
    private final BookAt at;
    private final Setting setting;
    private final TakingIn taking;

    OrdersAtTheDoor(Book book, BookAt at, Setting setting, TakingIn taking) {
        this.book = book;
        this.at = at;
        this.setting = setting;
        this.taking = taking;
    }

    int book(PlanRef ref, Optional<String> vendor, Optional<LocalDate> delivery, AtTheDoor door, CommandSpec spec,
            BiFunction<Book, List<Entry>, List<String>> alarms) {
        LocalDate today = taking.now(book, setting).toLocalDate();
        List<SentOrder> asked = orders(ref).stream().filter(o -> vendor.isEmpty() || o.vendor().equals(vendor.get()))
                .filter(o -> delivery.map(d -> o.delivery().equals(d)).orElse(!o.delivery().isAfter(today))).toList();
        if (asked.isEmpty()) {
            throw new WrongUse("no order of " + ref + " was to come " + delivery.map(d -> "on " + d).orElse("until today, " + today)
                    + vendor.map(v -> " from " + v).orElse("") + " -> --delivery DATE for another day");
        }
        Set<String> before = taking.asking(at.folder(), setting, l -> l.bookings().stream().map(Booking::fingerprint).collect(Collectors.toSet()));
        List<SentOrder> open = asked.stream().filter(o -> !before.contains(fingerprint(o))).toList();
        if (open.isEmpty()) {
            if (!door.nothingSaid()) {
                throw new WrongUse("these orders are booked already -> correct an entry: croftboard receive \"correct N came 2 because ...\"");
            }
            Page page = setting.page();
            page.say("Every order of " + ref + " that was to come is booked already: nothing was booked again.");
            spec.commandLine().getOut().print(page);
            return Exit.DONE;
        }
        List<String> faults = door.faults(open, book);
        if (!faults.isEmpty()) {
            throw new WrongUse(faults);
        }
        List<Entry> all = new ArrayList<>();
        open.forEach(o -> all.addAll(one(o, door, all.size())));
        return print(ref, all, spec, alarms);
    }

    /** An order is booked by itself, so that the rest can follow when the machine stops in between. */
    private List<Entry> one(SentOrder order, AtTheDoor door, int shown) {
        var draft = taking.draft(book, setting, "receive", "order " + order.order(), fingerprint(order), door.receipts(order, book));
        Booked booked = taking.book(at.folder(), setting, draft);
        if (!(booked instanceof Booked.Done done)) {
            return List.of();
        }
        return taking.dryRun() ? done.entries().stream().map(e -> e.stamped(new croftboard.ledger.Stamp(e.stamp().id() + shown, done.booking(),
                e.stamp().line(), e.stamp().corrects()))).toList() : done.entries();
    }

    private int print(PlanRef ref, List<Entry> all, CommandSpec spec, BiFunction<Book, List<Entry>, List<String>> alarms) {
        if (all.isEmpty()) {
            return Exit.DONE;
        }
        Booking last = all.get(all.size() - 1).stamp().booking();
        Booking shown = new Booking(last.number(), last.at(), last.who(), last.by(), "the orders of " + ref.week(), last.fingerprint());
        TakenScreen screen = new TakenScreen(book, shown, all, taking.dryRun(), List.of(), w -> List.of());
        RestingOn.print(screen, alarms.apply(book, all), taking.format(), setting, spec);
        return Exit.DONE;
    }

    private static String fingerprint(SentOrder order) {
        return TakingIn.fingerprint("receive --from-orders", order.order().getBytes(StandardCharsets.UTF_8));
    }

    private List<SentOrder> orders(PlanRef ref) {
        PlanStore plans = at.plans();
        OptionalInt version = ref.version().isPresent() ? ref.version() : plans.postedVersion(ref.week());
        if (version.isEmpty()) {
            throw new WrongUse("no plan of " + ref.week() + " is posted, so nothing was ordered -> croftboard post " + ref.week()
                    + ", or name a version: " + ref.week() + "@1");
        }
        WeekPlan plan = Kept.plan(plans, new PlanRef(ref.week(), version));
        return plan.orders().stream().map(o -> sent(plan, o)).sorted(Comparator.comparing(SentOrder::delivery).thenComparing(SentOrder::vendor)).toList();
    }

    private static SentOrder sent(WeekPlan plan, WeekPlan.Order o) {
        String number = plan.week() + "/" + o.vendor() + "/" + o.delivery().format(DateTimeFormatter.ofPattern("MMdd"));
        return new SentOrder(number, o.vendor(), o.delivery(), o.lines().stream().map(l -> new Ordered(l.item(), l.pack(), l.packs(), l.packMg(),
                l.price(), l.cost())).toList(), o.fee());
    }
}
