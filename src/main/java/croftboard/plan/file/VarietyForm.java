package croftboard.plan.file;

import croftboard.plan.RotationVariety;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The counts of a rotation's variety. */
final class VarietyForm {
    private VarietyForm() { }

    static Out write(RotationVariety v) {
        return new Out().whole("servings", v.servings()).whole("dishes", v.dishes())
                .rows("sameWeekday", v.sameWeekday(), VarietyForm::write).rows("near", v.near(), VarietyForm::write)
                .rows("members", v.members(), VarietyForm::write);
    }

    static RotationVariety read(In in) throws Unreadable {
        return new RotationVariety(in.small("servings"), in.small("dishes"),
                in.rows("sameWeekday", VarietyForm::sameWeekday), in.rows("near", VarietyForm::near),
                in.rows("members", VarietyForm::member));
    }

    private static Out write(RotationVariety.SameWeekday row) {
        return new Out().text("recipe", row.recipe()).name("day", row.day()).whole("times", row.times());
    }

    private static RotationVariety.SameWeekday sameWeekday(In in) throws Unreadable {
        return new RotationVariety.SameWeekday(in.text("recipe"), in.name("day", DayOfWeek.class), in.small("times"));
    }

    private static Out write(RotationVariety.Near row) {
        return new Out().text("trait", row.trait()).whole("days", row.days()).whole("count", row.count())
                .whole("of", row.of());
    }

    private static RotationVariety.Near near(In in) throws Unreadable {
        return new RotationVariety.Near(in.text("trait"), in.small("days"), in.small("count"), in.small("of"));
    }

    private static Out write(RotationVariety.Member row) {
        List<DayOfWeek> days = row.days().stream().sorted().toList();
        return new Out().name("oneDay", days.get(0)).name("otherDay", days.get(1)).whole("seen", row.seen())
                .whole("dishes", row.dishes()).whole("mains", row.mains()).text("mostOften", row.mostOften())
                .whole("times", row.times());
    }

    private static RotationVariety.Member member(In in) throws Unreadable {
        Set<DayOfWeek> days = EnumSet.of(in.name("oneDay", DayOfWeek.class), in.name("otherDay", DayOfWeek.class));
        return new RotationVariety.Member(days, in.small("seen"), in.small("dishes"), in.small("mains"),
                in.text("mostOften"), in.small("times"));
    }
}
