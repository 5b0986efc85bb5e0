package croftboard.plan.file;

import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import croftboard.plan.Rotation;
import java.util.Optional;

/**
 * A rotation as versioned JSON text, in the way of {@link PlanFile}: each week's plan stands in it as in a file of its own.
 * Read back it equals the rotation written, and written again it is the same text.
 */
public final class RotationFile {
    private RotationFile() { }

    /** The whole file, UTF-8 to be, with a line end at the end. */
    public static String write(Rotation rotation) {
        Rotation.Inputs inputs = rotation.inputs();
        return Layout.of(new Out().whole("format", Rotation.FORMAT).word("span", rotation.span())
                .text("fingerprint", rotation.fingerprint())
                .object("inputs", new Out().whole("seed", inputs.seed()).whole("steps", inputs.steps())
                        .maybeWhole("cycleWeeks", inputs.cycle().map(Integer::longValue))
                        .maybeWhole("newDishesAMonth", inputs.newAMonth().map(Integer::longValue)))
                .object("account", AccountForm.write(rotation.account()))
                .object("share", PromiseForm.write(rotation.share())).object("proof", PromiseForm.write(rotation.proof()))
                .object("variety", VarietyForm.write(rotation.variety()))
                .rows("newDishes", rotation.newDishes(), d -> new Out().word("week", d.first()).text("recipe", d.recipe()))
                .rows("swaps", rotation.swaps(), RotationFile::write)
                .rows("weeks", rotation.weeks(), w -> new Out().object("given", GivenForm.write(w.given()))
                        .object("plan", PlanFile.form(w.plan()))).node());
    }

    private static Out write(Rotation.Swap row) {
        return new Out().word("week", row.week()).text("slot", row.slot()).text("was", row.was()).maybe("is", row.is())
                .text("why", row.why());
    }

    /** @return a rotation, or a sentence that says where the text is none of a format known here; never {@code Absent} */
    public static RotationReading read(String text) {
        try {
            In in = Json.object(text);
            Json.checkFormat(in, Rotation.FORMAT);
            return new RotationReading.Read(in.whole(RotationFile::rotation));
        } catch (Unreadable e) {
            return new RotationReading.Refused(e.getMessage());
        }
    }

    private static Rotation rotation(In in) throws Unreadable {
        String span = in.text("span");
        Rotation read = new Rotation(WeekSpan.parse(span).orElseThrow(() -> new Unreadable("$.span", "there is \"" + span
                + "\" where weeks such as 2027-W36..2027-W39 belong")), in.text("fingerprint"),
                in.object("inputs", RotationFile::inputs), in.rows("weeks", RotationFile::week),
                in.object("account", AccountForm::read), in.object("share", PromiseForm::share),
                in.object("proof", PromiseForm::proof), in.object("variety", VarietyForm::read),
                in.rows("newDishes", r -> new Rotation.NewDish(week(r, "week"), r.text("recipe"))),
                in.rows("swaps", RotationFile::swap));
        if (!read.weeks().stream().map(Rotation.Week::week).toList().equals(read.span().weeks())) {
            throw new Unreadable("$.weeks", "these are not the weeks " + read.span());
        }
        return read;
    }

    private static Rotation.Inputs inputs(In in) throws Unreadable {
        return new Rotation.Inputs(in.number("seed"), in.number("steps"), whole(in, "cycleWeeks"),
                whole(in, "newDishesAMonth"));
    }

    private static Optional<Integer> whole(In in, String key) throws Unreadable {
        return in.maybeNumber(key).isEmpty() ? Optional.empty() : Optional.of(in.small(key));
    }

    private static Rotation.Week week(In in) throws Unreadable {
        return new Rotation.Week(in.object("plan", PlanFile::nested), in.object("given", GivenForm::read));
    }

    private static Rotation.Swap swap(In in) throws Unreadable {
        return new Rotation.Swap(week(in, "week"), in.text("slot"), in.text("was"), in.maybeText("is"), in.text("why"));
    }

    private static IsoWeek week(In in, String key) throws Unreadable {
        String text = in.text(key);
        return IsoWeek.parse(text).orElseThrow(() -> new Unreadable("$." + key,
                "there is \"" + text + "\" where a week such as 2027-W33 belongs"));
    }
}
