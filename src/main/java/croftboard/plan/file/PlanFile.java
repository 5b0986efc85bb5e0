package croftboard.plan.file;

import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import java.util.SortedMap;

/**
 * A plan as versioned JSON text. Exact: money in whole cents (keys ending in {@code Cents}), masses in whole milligrams
 * (keys ending in {@code Mg}), ratios as text {@code "7/4"}, dates by ISO 8601. A plan read back equals the plan written,
 * and written again it is the same text.
 */
public final class PlanFile {
    private PlanFile() { }

    /** The whole file, UTF-8 to be, with a line end at the end. */
    public static String write(WeekPlan plan) {
        Out out = new Out().whole("format", WeekPlan.FORMAT).word("week", plan.week())
                .text("fingerprint", plan.fingerprint()).object("inputs", InputsForm.write(plan.inputs()))
                .rows("menu", plan.menu(), MenuForm::write).rows("batches", plan.batches(), MenuForm::write)
                .rows("orders", plan.orders(), OrderForm::write).rows("needs", plan.needs(), NeedForm::write)
                .rows("flows", plan.flows(), NeedForm::write).rows("surplus", plan.surplus(), NeedForm::write)
                .object("account", AccountForm.write(plan.account()))
                .rows("promises", plan.promises(), PromiseForm::write).object("share", PromiseForm.write(plan.share()))
                .object("proof", PromiseForm.write(plan.proof())).rows("missing", plan.missing(), PromiseForm::write);
        Out swaps = new Out();
        plan.swaps().forEach(swaps::texts);
        return Layout.of(out.object("swaps", swaps).node());
    }

    /** A plan, or a sentence that says where the text is no plan of a format known here; never {@code Absent}. */
    public static PlanReading read(String text) {
        try {
            In in = Json.object(text);
            Json.checkFormat(in, WeekPlan.FORMAT);
            return new PlanReading.Read(in.whole(PlanFile::plan));
        } catch (Unreadable e) {
            return new PlanReading.Refused(e.getMessage());
        }
    }

    private static WeekPlan plan(In in) throws Unreadable {
        IsoWeek week = week(in);
        long format = in.number("format");
        return new WeekPlan(week, in.text("fingerprint"), in.object("inputs", inputs -> InputsForm.read(inputs, format)),
                in.rows("menu", MenuForm::served), in.rows("batches", MenuForm::batch),
                in.rows("orders", OrderForm::order), in.rows("needs", NeedForm::need), in.rows("flows", NeedForm::flow),
                in.rows("surplus", NeedForm::surplus), in.object("account", AccountForm::read),
                in.rows("promises", PromiseForm::promise), in.object("share", PromiseForm::share),
                in.object("proof", PromiseForm::proof), in.rows("missing", PromiseForm::missing), swaps(in));
    }

    private static IsoWeek week(In in) throws Unreadable {
        String text = in.text("week");
        return IsoWeek.parse(text).orElseThrow(() -> new Unreadable("$.week",
                "there is \"" + text + "\" where a week such as 2027-W33 belongs"));
    }

    private static SortedMap<String, SortedMap<String, String>> swaps(In in) throws Unreadable {
        return in.object("swaps", dishes -> dishes.all(dishes::texts));
    }
}
