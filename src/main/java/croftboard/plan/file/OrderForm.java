package croftboard.plan.file;

import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;

/** Orders and their lines. */
final class OrderForm {
    private OrderForm() { }

    static Out write(WeekPlan.Order row) {
        return new Out().text("vendor", row.vendor()).word("delivery", row.delivery()).word("cutOff", row.cutOff())
                .rows("lines", row.lines(), OrderForm::write).whole("totalCents", row.total())
                .whole("minimumCents", row.minimum()).whole("toMinimumCents", row.toMinimum())
                .whole("feeCents", row.fee());
    }

    static WeekPlan.Order order(In in) throws Unreadable {
        return new WeekPlan.Order(in.text("vendor"), in.date("delivery"), in.moment("cutOff"),
                in.rows("lines", OrderForm::line), in.number("totalCents"), in.number("minimumCents"),
                in.number("toMinimumCents"), in.number("feeCents"));
    }

    private static Out write(WeekPlan.OrderLine row) {
        return new Out().text("item", row.item()).text("pack", row.pack()).whole("packs", row.packs())
                .whole("packMg", row.packMg()).whole("priceCents", row.price()).whole("costCents", row.cost())
                .name("locality", row.locality()).text("whyLocal", row.whyLocal()).yes("onList", row.onList())
                .yes("promised", row.promised());
    }

    private static WeekPlan.OrderLine line(In in) throws Unreadable {
        return new WeekPlan.OrderLine(in.text("item"), in.text("pack"), in.small("packs"), in.number("packMg"),
                in.number("priceCents"), in.number("costCents"), in.name("locality", WeekProblem.Locality.class),
                in.text("whyLocal"), in.yes("onList"), in.yes("promised"));
    }
}
