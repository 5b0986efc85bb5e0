package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Promises;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.Account;
import croftboard.plan.Given;
import croftboard.plan.Rotation;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToLongFunction;

/**
 * Checks a rotation against its book: each week as a plan of its own, what is handed on from week to week, dishes over all
 * weeks, and the money of all weeks as one. Trusts nothing that made it, but what it says of plans outside its weeks.
 */
public final class RotationChecker {
    private static final int KEEPS_DAYS_AFTER = 2;
    private final Book book;
    private final Rotation rotation;
    private final Report report = new Report();
    private final Map<String, Integer> counts = new java.util.LinkedHashMap<>();

    private RotationChecker(Book book, Rotation rotation) {
        this.book = book;
        this.rotation = rotation;
    }

    public static Verdict check(Book book, Rotation rotation) {
        return new RotationChecker(book, rotation).run();
    }

    private Verdict run() {
        report.findIf(!rotation.fingerprint().equals(book.fingerprint()),
                "book: the rotation was made from another state of the book; figures may differ for that reason");
        for (int w = 0; w < rotation.weeks().size(); w++) {
            week(w);
        }
        report.count(rotation.weeks().size(), "weeks");
        counts.forEach((what, number) -> report.count(number, what));
        try {
            dishes();
            money();
        } catch (RuntimeException e) {
            report.find("the weeks as one cannot be derived again from what the rotation says (" + e + ")");
        }
        return report.verdict();
    }

    private Book bookOf(int week) {
        return week == 0 ? book : new Book(book.kitchen(), book.ingredients(), book.recipes(), book.vendors(), book.seasons(),
                book.lists(), List.of(), book.fingerprint());
    }

    private void week(int w) {
        Rotation.Week week = rotation.weeks().get(w);
        Verdict own = PlanChecker.check(bookOf(w), week.plan(), week.given(),
                week.plan().inputs().gone().map(g -> g.plusNanos(1)));
        own.findings().forEach(f -> report.find(week.week() + ": " + f));
        own.counts().forEach(c -> counts.merge(c.what(), c.number(), Integer::sum));
    }

    /** Gaps over all weeks, and new dishes a month. */
    private void dishes() {
        Map<String, TreeSet<LocalDate>> starts = new TreeMap<>();
        for (Rotation.Week week : rotation.weeks()) {
            Days days = new Days(book, week.week());
            for (Slot slot : Slot.all(book, days, Optional.empty())) {
                if (slot.free()) {
                    week.plan().menu().stream().filter(r -> r.slot().equals(slot.id())).forEach(r -> r.recipe().ifPresent(
                            d -> starts.computeIfAbsent(d, x -> new TreeSet<>()).add(slot.days().get(0))));
                }
            }
        }
        starts.forEach((dish, days) -> {
            LocalDate before = null;
            for (LocalDate day : days) {
                report.findIf(before != null && ChronoUnit.DAYS.between(before, day) < book.kitchen().gapDays()
                        && rotation.complete(), dish + " stands on " + before + " and on " + day + ", nearer than "
                        + book.kitchen().gapDays() + " days");
                before = day;
            }
        });
        Map<YearMonth, Integer> fresh = new HashMap<>();
        for (Rotation.NewDish d : rotation.newDishes()) {
            fresh.merge(YearMonth.from(d.first().monday()), 1, Integer::sum);
            report.findIf(!starts.containsKey(d.recipe()), d.recipe() + " is said to be new and stands nowhere");
        }
        rotation.inputs().newAMonth().ifPresent(most -> fresh.forEach((month, n) -> report.findIf(n > most, n + " new dishes in "
                + month + ", where " + most + " are the most")));
    }

    private void money() {
        Account a = rotation.account();
        sum("sales", a.sales(), p -> p.account().sales());
        sum("event sales", a.eventSales(), p -> p.account().eventSales());
        sum("left portions", a.left(), p -> p.account().left());
        sum("staples", a.staples(), p -> p.account().staples());
        sum("purchases", a.purchases(), p -> p.account().purchases());
        sum("local purchases", a.localPurchases(), p -> p.share().local());
        sum("unclassified purchases", a.unclassified(), p -> p.share().unclassified());
        sum("fees", a.fees(), p -> p.account().fees());
        sum("overtime", a.overtime(), p -> p.account().overtime());
        surplus(a);
        promises(a);
        long broken = a.broken().stream().mapToLong(Account.Broken::cents).sum();
        report.sameCents("all weeks: value", rotation.value(), a.sales() + a.eventSales() + a.left() - a.staples()
                - a.purchases() + a.kept() - a.waste() - a.fees() - a.overtime() - broken);
        rotation.proof().bestAtAll().ifPresent(b -> report.findIf(b < rotation.value(), "all weeks: no rotation should be worth"
                + " more than " + Say.money(b) + ", but this one is worth " + Say.money(rotation.value())));
    }

    private void sum(String what, long said, ToLongFunction<WeekPlan> each) {
        report.sameCents("all weeks: " + what, said, rotation.weeks().stream().map(Rotation.Week::plan).mapToLong(each).sum());
    }

    private void surplus(Account a) {
        IsoWeek last = rotation.span().last();
        LocalDate day = last.monday().plusDays(6 + KEEPS_DAYS_AFTER);
        Rotation.Week first = rotation.weeks().get(0);
        Counted counted = new Counted(book, new Days(book, rotation.span().first()), first.given());
        Rotation.Week end = rotation.weeks().get(rotation.weeks().size() - 1);
        Optional<java.time.LocalDateTime> gone = end.plan().inputs().gone().map(g -> g.plusNanos(1));
        Offered offered = new Offered(book, new Days(book, last),
                new Given(end.given().orders(), List.of(), List.of()), gone);
        long kept = 0;
        long waste = 0;
        for (Ingredient item : book.ingredients().values()) {
            WeeksLeft left = new WeeksLeft(item, report);
            left.begin(counted.ingredients(item.id()));
            for (Rotation.Week week : rotation.weeks()) {
                left.week(week, week == first);
            }
            kept += keptWorth(item, left.kept(day), offered);
            waste += Ratio.of(left.wasted(day)).over(1000).over(Unit.POUND.base())
                    .times(book.kitchen().wastePerPound().value()).round();
        }
        report.sameCents("all weeks: worth of surplus that keeps", a.kept(), kept);
        report.sameCents("all weeks: waste", a.waste(), waste);
    }

    private long keptWorth(Ingredient item, long mg, Offered offered) {
        if (item.isStaple()) {
            return rotation.weeks().stream().flatMap(w -> w.plan().orders().stream()).flatMap(o -> o.lines().stream())
                    .filter(l -> l.item().equals(item.id())).mapToLong(WeekPlan.OrderLine::cost).sum();
        }
        Ratio share = item.keepWorth()
                .orElse(book.kitchen().surplusWorth().getOrDefault(item.storage(), Ratio.ZERO));
        return mg == 0 ? 0 : offered.centsPerGram(item.id()).times(share).times(mg).over(1000).floor();
    }

    private void promises(Account a) {
        Promises promises = book.kitchen().promises();
        Ratio target = Ratio.ZERO;
        for (IsoWeek week : rotation.span().weeks()) {
            target = target.plus(book.kitchen().local().isPresent() ? book.seasons().targetFor(week) : Ratio.ZERO);
        }
        Ratio mean = target.over(rotation.weeks().size());
        report.same("all weeks: target of local share", rotation.share().target(), mean);
        broken(a, Account.Promise.LOCAL_SHARE, mean.times(a.purchases()).minus(Ratio.of(a.localPurchases()))
                .max(Ratio.ZERO).times(promises.localShare()).round());
        broken(a, Account.Promise.FOOD_COST, promises.foodCost().map(f -> Ratio.of(a.purchases() - a.kept() + a.staples())
                .minus(f.atMost().times(a.sales() + a.eventSales())).max(Ratio.ZERO).times(f.price()).round()).orElse(0L));
        for (Account.Promise p : List.of(Account.Promise.EMPTY_SLOT, Account.Promise.COVERAGE, Account.Promise.VARIETY,
                Account.Promise.EVENNESS)) {
            broken(a, p, rotation.weeks().stream().mapToLong(w -> cents(w.plan().account(), p)).sum());
        }
    }

    private void broken(Account a, Account.Promise promise, long cents) {
        report.sameCents("all weeks: " + promise.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '), cents(a, promise),
                cents);
    }

    private static long cents(Account a, Account.Promise promise) {
        return a.broken().stream().filter(b -> b.promise() == promise).mapToLong(Account.Broken::cents).sum();
    }
}
