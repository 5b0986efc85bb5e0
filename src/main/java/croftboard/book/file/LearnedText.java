package croftboard.book.file;

import croftboard.book.Learned;
import croftboard.book.ManagersFigure;
import croftboard.book.Seasons.DemandFactor;
import croftboard.measure.Ratio;
import java.time.DayOfWeek;
import java.util.Locale;

/** {@code seasons/learned.yaml} as text, and a line of {@code seasons/overrides.yaml}: what {@link LearnedReader} reads back as it was. */
public final class LearnedText {
    public static final String FILE = "seasons/learned.yaml";
    public static final String OVERRIDES = "seasons/overrides.yaml";

    private LearnedText() { }

    /** Figures are written to three decimals; the record's own must have no more. */
    public static String of(Learned learned) {
        StringBuilder text = new StringBuilder("# yaml-language-server: $schema=../docs/schema/learned.schema.json\n"
                + "# Learned from what sold, was left and ran out (croftboard learn). Not to be edited: a figure of your own goes\n"
                + "# in with croftboard forecast WEEK --set. Take the file away, and demand.yaml and the recipes' draws hold again.\n");
        text.append("version: ").append(learned.version()).append("\nthrough: ").append(learned.through()).append("\nfingerprint: ")
                .append(learned.fingerprint()).append("\ndays: ").append(learned.days()).append("\nran_out: ").append(learned.ranOut());
        text.append(learned.lines().isEmpty() ? "\nlines: {}" : "\nlines:");
        learned.lines().forEach((id, line) -> {
            text.append("\n  ").append(id).append(":\n    cv: ").append(number(line.cv())).append("\n    seen: ").append(line.seen())
                    .append(line.days().isEmpty() ? "\n    days: {}" : "\n    days:");
            line.days().forEach((day, d) -> text.append("\n      ").append(word(day)).append(": {portions: ").append(number(d.portions()))
                    .append(", seen: ").append(d.seen()).append(", ran_out: ").append(d.ranOut()).append('}'));
        });
        text.append(learned.dishes().isEmpty() ? "\ndishes: {}" : "\ndishes:");
        learned.dishes().forEach((id, d) -> text.append("\n  ").append(id).append(": {draw: ").append(number(d.draw())).append(", seen: ")
                .append(d.seen()).append(", ran_out: ").append(d.ranOut()).append('}'));
        if (!learned.weeks().isEmpty()) {
            text.append("\nweeks:");
            for (DemandFactor f : learned.weeks()) {
                text.append("\n  - {weeks: ").append(f.weeks()).append(", times: ").append(number(f.times())).append('}');
            }
        }
        return text.append('\n').toString();
    }

    /** One entry, ending its line. */
    public static String of(ManagersFigure own) {
        return "- {week: " + own.week() + ", line: " + own.line() + ", day: " + word(own.day()) + ", portions: " + number(own.portions())
                + own.insteadOf().map(i -> ", instead_of: " + number(i)).orElse("") + ", reason: " + quoted(own.reason()) + "}\n";
    }

    private static String quoted(String words) {
        return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static String word(DayOfWeek day) {
        return day.name().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    private static String number(Ratio of) {
        return of.signum() == 0 ? "0" : of.toDecimal(3).stripTrailingZeros().toPlainString();
    }
}
