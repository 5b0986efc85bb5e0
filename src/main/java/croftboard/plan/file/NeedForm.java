package croftboard.plan.file;

import croftboard.plan.WeekPlan;

/** Needs, what meets them, and what is left over. */
final class NeedForm {
    private NeedForm() { }

    static Out write(WeekPlan.Need row) {
        return new Out().text("item", row.item()).word("day", row.day()).whole("neededMg", row.mg());
    }

    static WeekPlan.Need need(In in) throws Unreadable {
        return new WeekPlan.Need(in.text("item"), in.date("day"), in.number("neededMg"));
    }

    static Out write(WeekPlan.Flow row) {
        return new Out().text("item", row.item()).maybe("delivery", row.delivery()).word("day", row.day())
                .whole("usedMg", row.mg());
    }

    static WeekPlan.Flow flow(In in) throws Unreadable {
        return new WeekPlan.Flow(in.text("item"), in.maybeDate("delivery"), in.date("day"), in.number("usedMg"));
    }

    static Out write(WeekPlan.Surplus row) {
        return new Out().text("item", row.item()).whole("keptMg", row.keptMg()).whole("keptCents", row.keptCents())
                .whole("wastedMg", row.wastedMg()).whole("wasteCents", row.wasteCents());
    }

    static WeekPlan.Surplus surplus(In in) throws Unreadable {
        return new WeekPlan.Surplus(in.text("item"), in.number("keptMg"), in.number("keptCents"), in.number("wastedMg"),
                in.number("wasteCents"));
    }
}
