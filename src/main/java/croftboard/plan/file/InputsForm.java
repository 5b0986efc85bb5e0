package croftboard.plan.file;

import croftboard.plan.WeekPlan;

/** What a plan was made with. */
final class InputsForm {
    private InputsForm() { }

    static Out write(WeekPlan.Inputs inputs) {
        return new Out().whole("seed", inputs.seed()).whole("tries", inputs.tries()).whole("rounds", inputs.rounds())
                .whole("nodes", inputs.nodes()).texts("kept", inputs.kept()).maybe("from", inputs.from())
                .maybe("gone", inputs.gone().map(Object::toString));
    }

    static WeekPlan.Inputs read(In in) throws Unreadable {
        return new WeekPlan.Inputs(in.number("seed"), in.number("tries"), in.small("rounds"), in.number("nodes"),
                in.texts("kept"), in.maybeText("from"), in.maybeMoment("gone"));
    }
}
