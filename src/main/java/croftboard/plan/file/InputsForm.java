package croftboard.plan.file;

import croftboard.plan.WeekPlan;
import java.util.Optional;

/** What a plan was made with. */
final class InputsForm {
    private InputsForm() { }

    static Out write(WeekPlan.Inputs inputs) {
        return new Out().whole("seed", inputs.seed()).whole("tries", inputs.tries()).whole("rounds", inputs.rounds())
                .whole("nodes", inputs.nodes()).texts("kept", inputs.kept()).maybe("from", inputs.from())
                .maybe("gone", inputs.gone().map(Object::toString))
                .rows("revisions", inputs.revision().stream().toList(), InputsForm::write);
    }

    private static Out write(WeekPlan.Revision revision) {
        Out fewer = new Out();
        revision.fewer().forEach(fewer::ratio);
        return new Out().whole("of", revision.of()).word("now", revision.now()).words("changes", revision.changes())
                .object("fewer", fewer).words("accepted", revision.accepted());
    }

    /** @param format of the file: the first had no revisions */
    static WeekPlan.Inputs read(In in, long format) throws Unreadable {
        return new WeekPlan.Inputs(in.number("seed"), in.number("tries"), in.small("rounds"), in.number("nodes"),
                in.texts("kept"), in.maybeText("from"), in.maybeMoment("gone"),
                format > 1 ? in.rows("revisions", InputsForm::revision).stream().findFirst() : Optional.empty());
    }

    private static WeekPlan.Revision revision(In in) throws Unreadable {
        return new WeekPlan.Revision(in.small("of"), in.moment("now"), in.words("changes"),
                in.object("fewer", all -> all.all(all::ratio)), in.words("accepted"));
    }
}
