package croftboard.plan.check;

import croftboard.need.Account;
import croftboard.plan.WeekPlan;

/** Every line of the account from the rows below it, and the one number from the lines. */
final class MoneyCheck {
    private final Subject of;
    private final Report report;

    MoneyCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        WeekPlan plan = of.plan();
        Account a = plan.account();
        report.sameCents("account: sales", a.sales(), plan.menu().stream().mapToLong(WeekPlan.Served::sales).sum());
        report.sameCents("account: left portions", a.left(),
                plan.menu().stream().mapToLong(WeekPlan.Served::left).sum());
        report.sameCents("account: event sales", a.eventSales(), Slot.events(of.book(), of.days()).stream()
                .mapToLong(e -> Math.multiplyExact(e.price().value(), (long) e.guarantee())).sum());
        report.sameCents("account: staples", a.staples(), plan.menu().stream().mapToLong(WeekPlan.Served::staples).sum()
                + plan.batches().stream().mapToLong(WeekPlan.Batch::staples).sum()
                + LostMakings.of(of).stream().mapToLong(LostMakings::staples).sum());
        report.sameCents("account: purchases", a.purchases(),
                plan.orders().stream().flatMap(o -> o.lines().stream()).mapToLong(WeekPlan.OrderLine::cost).sum());
        report.sameCents("account: local purchases", a.localPurchases(), plan.share().local());
        report.sameCents("account: unclassified purchases", a.unclassified(), plan.share().unclassified());
        report.sameCents("account: worth of surplus that keeps", a.kept(),
                plan.surplus().stream().mapToLong(WeekPlan.Surplus::keptCents).sum());
        report.sameCents("account: waste", a.waste(), plan.surplus().stream().mapToLong(WeekPlan.Surplus::wasteCents).sum());
        report.sameCents("account: fees", a.fees(), plan.orders().stream().mapToLong(WeekPlan.Order::fee).sum());
        long broken = a.broken().stream().mapToLong(Account.Broken::cents).sum();
        report.sameCents("account: value", plan.value(), a.sales() + a.eventSales() + a.left() - a.staples()
                - a.purchases() + a.kept() - a.waste() - a.fees() - a.overtime() - broken);
        proof(plan);
    }

    /** A proof that a better plan than this one cannot be is refuted by the plan itself when it is worth more. */
    private void proof(WeekPlan plan) {
        plan.proof().bestForMenu().ifPresent(best -> report.findIf(best < plan.value(), "proof: no orders for this menu should "
                + "be worth more than " + Say.money(best) + ", but the plan is worth " + Say.money(plan.value())));
        plan.proof().bestAtAll().ifPresent(best -> report.findIf(best < plan.value(), "proof: no plan should be worth more "
                + "than " + Say.money(best) + ", but this one is worth " + Say.money(plan.value())));
    }
}
