package croftboard.plan.file;

import croftboard.measure.WeekSpan;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which rotation is meant: {@code 2027-W36..2027-W39} is the current one of these weeks, {@code 2027-W36..2027-W39@2} its
 * second version.
 *
 * @param version from 1; empty: the current one
 */
public record RotationRef(WeekSpan span, OptionalInt version) {
    private static final Pattern FORM = Pattern.compile("([^@]*)(?:@([1-9]\\d{0,8}))?");

    /** Empty when the text is neither form. */
    public static Optional<RotationRef> parse(String text) {
        Matcher m = FORM.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        OptionalInt version = m.group(2) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(m.group(2)));
        return WeekSpan.parse(m.group(1)).map(span -> new RotationRef(span, version));
    }

    @Override
    public String toString() {
        return span + (version.isPresent() ? "@" + version.getAsInt() : "");
    }
}
