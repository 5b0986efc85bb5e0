package croftboard.plan.file;

import croftboard.plan.WeekPlan;

/** Slots with their dishes, and batches. */
final class MenuForm {
    private MenuForm() { }

    static Out write(WeekPlan.Served row) {
        return new Out().text("slot", row.slot()).text("line", row.line()).words("days", row.days())
                .maybe("recipe", row.recipe()).whole("portions", row.portions()).whole("salesCents", row.sales())
                .whole("leftCents", row.left()).whole("staplesCents", row.staples())
                .rows("productions", row.productions(), MenuForm::write).text("marks", row.marks())
                .yes("kept", row.kept());
    }

    static WeekPlan.Served served(In in) throws Unreadable {
        return new WeekPlan.Served(in.text("slot"), in.text("line"), in.dates("days"), in.maybeText("recipe"),
                in.small("portions"), in.number("salesCents"), in.number("leftCents"), in.number("staplesCents"),
                in.rows("productions", MenuForm::production), in.text("marks"), in.yes("kept"));
    }

    private static Out write(WeekPlan.Production row) {
        return new Out().word("made", row.made()).word("lastServed", row.lastServed()).word("useBy", row.useBy())
                .ratio("batches", row.batches()).whole("portions", row.portions());
    }

    private static WeekPlan.Production production(In in) throws Unreadable {
        return new WeekPlan.Production(in.date("made"), in.date("lastServed"), in.date("useBy"), in.ratio("batches"),
                in.small("portions"));
    }

    static Out write(WeekPlan.Batch row) {
        return new Out().text("recipe", row.recipe()).word("made", row.made()).word("lastServed", row.lastServed())
                .word("useBy", row.useBy()).ratio("batches", row.batches()).whole("yieldMg", row.mg())
                .whole("staplesCents", row.staples());
    }

    static WeekPlan.Batch batch(In in) throws Unreadable {
        return new WeekPlan.Batch(in.text("recipe"), in.date("made"), in.date("lastServed"), in.date("useBy"),
                in.ratio("batches"), in.number("yieldMg"), in.number("staplesCents"));
    }
}
