package croftboard.plan.file;

import croftboard.measure.IsoWeek;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which plan is meant: {@code 2027-W33} is the week's current one, {@code 2027-W33@2} its second version.
 *
 * @param version from 1; empty: the current one
 */
public record PlanRef(IsoWeek week, OptionalInt version) {
    private static final Pattern FORM = Pattern.compile("([^@]*)(?:@([1-9]\\d{0,8}))?");

    /** Empty when the text is neither form. */
    public static Optional<PlanRef> parse(String text) {
        Matcher m = FORM.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        OptionalInt version = m.group(2) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(m.group(2)));
        return IsoWeek.parse(m.group(1)).map(week -> new PlanRef(week, version));
    }

    @Override
    public String toString() {
        return week + (version.isPresent() ? "@" + version.getAsInt() : "");
    }
}
