package croftboard.plan.check;

import croftboard.book.Promises;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The promises in words say the same as the broken promises that the account charges. */
final class PromiseRowsCheck {
    private record Row(String id, Optional<LocalDate> day, boolean kept, long amount, long cents) {
        @Override
        public String toString() {
            return id + day.map(d -> " on " + Say.day(d)).orElse("") + (kept ? ", kept" : ", missed by " + amount + " at "
                    + Say.money(cents));
        }
    }

    private final Subject of;
    private final List<Account.Broken> broken;
    private final Report report;
    private final List<Row> derived = new ArrayList<>();

    PromiseRowsCheck(Subject of, List<Account.Broken> broken, Report report) {
        this.of = of;
        this.broken = broken;
        this.report = report;
    }

    void run() {
        Promises promises = of.book().kitchen().promises();
        whole("filled-lines", Account.Promise.EMPTY_SLOT);
        for (int k = 0; k < promises.coverage().size(); k++) {
            for (LocalDate day : of.days().openDays()) {
                daily("coverage " + promises.coverage().get(k).id(), Account.Promise.COVERAGE, k, day);
            }
        }
        for (int k = 0; k < promises.variety().size(); k++) {
            variety(promises.variety().get(k), k);
        }
        if (ShareCheck.target(of).signum() > 0) {
            whole("local-share", Account.Promise.LOCAL_SHARE);
        }
        if (promises.foodCost().isPresent()) {
            whole("food-cost", Account.Promise.FOOD_COST);
        }
        broken.stream().filter(b -> b.promise() == Account.Promise.EVENNESS).forEach(b -> derived.add(new Row("even-days "
                + of.book().kitchen().stations().get(b.rule()).id(), Optional.empty(), false, b.amount(), b.cents())));
        compare();
    }

    private void whole(String id, Account.Promise promise) {
        long amount = 0;
        long cents = 0;
        for (Account.Broken b : broken) {
            amount += b.promise() == promise ? b.amount() : 0;
            cents += b.promise() == promise ? b.cents() : 0;
        }
        derived.add(new Row(id, Optional.empty(), cents == 0, amount, cents));
    }

    private List<Account.Broken> of(Account.Promise promise, int rule) {
        return broken.stream().filter(b -> b.promise() == promise && b.rule() == rule).toList();
    }

    private LocalDate day(Account.Broken b) {
        return of.days().first().plusDays(b.day());
    }

    private void daily(String id, Account.Promise promise, int rule, LocalDate day) {
        Optional<Account.Broken> found = of(promise, rule).stream().filter(b -> day(b).equals(day)).findFirst();
        derived.add(new Row(id, Optional.of(day), found.isEmpty(), found.map(Account.Broken::amount).orElse(0L),
                found.map(Account.Broken::cents).orElse(0L)));
    }

    private void variety(Promises.Variety rule, int k) {
        String id = "variety " + rule.of().name().toLowerCase(Locale.ROOT)
                + (rule.within() == Promises.Within.DAY ? " day" : " next-day");
        List<Account.Broken> found = of(Account.Promise.VARIETY, k);
        found.forEach(b -> derived.add(new Row(id, Optional.of(day(b)), false, b.amount(), b.cents())));
        if (found.isEmpty()) {
            derived.add(new Row(id, Optional.empty(), true, 0, 0));
        }
    }

    private void compare() {
        List<Row> open = new ArrayList<>(derived);
        for (WeekPlan.Promise p : of.plan().promises()) {
            Row claimed = new Row(p.id(), p.day(), p.kept(), p.amount(), p.cents());
            report.findIf(!open.remove(claimed), "promises: the plan says " + claimed
                    + ", which is not so when derived again");
        }
        open.forEach(row -> report.find("promises: the plan leaves out " + row));
        report.count(derived.size(), "promises");
    }
}
