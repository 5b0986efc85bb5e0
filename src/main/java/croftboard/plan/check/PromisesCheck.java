package croftboard.plan.check;

import croftboard.book.Kitchen;
import croftboard.book.Promises;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Broken promises with their amounts and prices, derived from menu, orders and work; and the marks on the menu. */
final class PromisesCheck {
    private final Subject of;
    private final WorkCheck work;
    private final Report report;
    private final List<Account.Broken> derived = new ArrayList<>();

    PromisesCheck(Subject of, WorkCheck work, Report report) {
        this.of = of;
        this.work = work;
        this.report = report;
    }

    void run() {
        marks();
        emptySlots();
        coverage();
        variety();
        evenness();
        share();
        foodCost();
        derived.removeIf(b -> b.cents() == 0);
        compare();
        new PromiseRowsCheck(of, derived, report).run();
    }

    private Promises promises() {
        return of.book().kitchen().promises();
    }

    private void broken(Account.Promise promise, int rule, Optional<LocalDate> day, long amount, long cents) {
        int number = day.map(d -> Math.toIntExact(ChronoUnit.DAYS.between(of.days().first(), d))).orElse(-1);
        derived.add(new Account.Broken(promise, rule, number, amount, cents));
    }

    private Optional<WeekPlan.Served> row(Slot slot) {
        return of.plan().menu().stream().filter(r -> r.slot().equals(slot.id())).findFirst();
    }

    private Optional<Recipe> dish(Slot slot) {
        return row(slot).flatMap(of::dish);
    }

    /** Whether the dish on that slot counts for a promise: events and dishes of stated worth count for none. */
    private boolean counts(Slot slot, Promises.Coverage promise) {
        Optional<Recipe> dish = dish(slot);
        return dish.isPresent() && dish.get().worthOnly().isEmpty() && slot instanceof Slot.Run run
                && promise.course().map(c -> c.equals(run.of().course())).orElse(true)
                && Contents.of(of.making().everything(dish.get())).keeps(promise);
    }

    private void marks() {
        int marks = 0;
        for (Slot slot : of.slots()) {
            StringBuilder letters = new StringBuilder();
            promises().coverage().stream().filter(p -> counts(slot, p)).forEach(p -> letters.append(p.mark()));
            row(slot).filter(r -> r.recipe().isPresent()).ifPresent(r -> report.same("menu: marks of " + r.recipe().get()
                    + " on " + slot.id(), r.marks(), letters.toString()));
            marks += letters.length();
        }
        report.count(marks, "marks");
    }

    /** A course of an event that nobody cooks also costs what its portions would have brought. */
    private void emptySlots() {
        for (Slot slot : of.slots()) {
            if (row(slot).flatMap(WeekPlan.Served::recipe).isEmpty()) {
                long paid = slot instanceof Slot.Meal meal ? meal.event().price().value() * meal.portions() : 0;
                broken(Account.Promise.EMPTY_SLOT, slot.number(), Optional.of(slot.days().get(0)), 1,
                        promises().emptySlot().value() + paid);
            }
        }
    }

    private void coverage() {
        for (int k = 0; k < promises().coverage().size(); k++) {
            Promises.Coverage promise = promises().coverage().get(k);
            for (LocalDate day : of.days().openDays()) {
                long have = of.slots().stream().filter(s -> s.days().contains(day)).filter(s -> counts(s, promise)).count();
                long missing = Math.max(0, promise.atLeast() - have);
                broken(Account.Promise.COVERAGE, k, Optional.of(day), missing, missing * promise.price().value());
            }
        }
    }

    private void variety() {
        for (int k = 0; k < promises().variety().size(); k++) {
            Promises.Variety rule = promises().variety().get(k);
            if (rule.within() == Promises.Within.DAY) {
                sameDay(k, rule);
            } else {
                nextDay(k, rule);
            }
        }
    }

    private static String trait(Recipe dish, Promises.Trait trait) {
        Recipe.Sale sale = dish.sale().orElseThrow();
        return switch (trait) {
            case MAIN -> sale.main();
            case METHOD -> sale.method();
            case CUISINE -> sale.cuisine();
        };
    }

    private void sameDay(int k, Promises.Variety rule) {
        for (LocalDate day : of.days().openDays()) {
            Map<String, Integer> times = new TreeMap<>();
            of.slots().stream().filter(s -> s.free() && s.days().contains(day)).map(this::dish)
                    .flatMap(Optional::stream).forEach(d -> times.merge(trait(d, rule.of()), 1, Integer::sum));
            long extra = times.values().stream().mapToLong(n -> Math.max(0, n - rule.atMost())).sum();
            broken(Account.Promise.VARIETY, k, Optional.of(day), extra, extra * rule.price().value());
        }
    }

    private void nextDay(int k, Promises.Variety rule) {
        for (int n = 1; n < of.slots().size(); n++) {
            Slot before = of.slots().get(n - 1);
            Slot slot = of.slots().get(n);
            boolean follows = before.free() && slot.free() && before.line().equals(slot.line());
            Optional<String> a = dish(before).map(d -> trait(d, rule.of()));
            if (follows && a.isPresent() && a.equals(dish(slot).map(d -> trait(d, rule.of())))) {
                broken(Account.Promise.VARIETY, k, Optional.of(slot.days().get(0)), 1, rule.price().value());
            }
        }
    }

    /** A station's busiest day above the average of the days on which it has hands. */
    private void evenness() {
        List<Kitchen.Station> stations = of.book().kitchen().stations();
        for (int s = 0; s < stations.size(); s++) {
            Kitchen.Station station = stations.get(s);
            List<Long> minutes = of.days().all().stream().filter(d -> work.hands(station, d) > 0)
                    .map(d -> work.minutes(station, d)).toList();
            if (!work.receives(station) && !minutes.isEmpty()) {
                long total = minutes.stream().mapToLong(m -> m).sum();
                long busiest = minutes.stream().max(Comparator.naturalOrder()).orElseThrow();
                Ratio above = Ratio.of(busiest).minus(Ratio.of(total, minutes.size()));
                broken(Account.Promise.EVENNESS, s, Optional.empty(), above.ceil(),
                        above.times(promises().evennessPerMinute()).round());
            }
        }
    }

    private void share() {
        long money = of.plan().orders().stream().mapToLong(WeekPlan.Order::total).sum();
        Ratio missing = ShareCheck.target(of).times(money).minus(Ratio.of(of.plan().share().local())).max(Ratio.ZERO);
        broken(Account.Promise.LOCAL_SHARE, 0, Optional.empty(), missing.ceil(),
                missing.times(promises().localShare()).round());
    }

    private void foodCost() {
        promises().foodCost().ifPresent(f -> {
            Account a = of.plan().account();
            Ratio over = Ratio.of(a.purchases() - a.kept() + a.staples())
                    .minus(f.atMost().times(a.sales() + a.eventSales())).max(Ratio.ZERO);
            broken(Account.Promise.FOOD_COST, 0, Optional.empty(), over.ceil(), over.times(f.price()).round());
        });
    }

    private void compare() {
        List<Account.Broken> open = new ArrayList<>(derived);
        for (Account.Broken claimed : of.plan().account().broken()) {
            report.findIf(!open.remove(claimed), "promises: the account charges " + say(claimed)
                    + ", which is not so when derived again");
        }
        open.forEach(b -> report.find("promises: the account leaves out " + say(b)));
        report.count(derived.size(), "broken promises");
    }

    private static String say(Account.Broken b) {
        return b.promise().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + " (rule " + b.rule() + ", day "
                + b.day() + ", by " + b.amount() + ") at " + Say.money(b.cents());
    }
}
