package croftboard.ledger.file;

import java.util.regex.Pattern;

/** Lines that add up other lines. */
final class Totals {
    private static final Pattern WORDS = Pattern.compile("(?i)(grand |sub[- ]?|net |invoice )?totals?\\b.*|balance( due)?|amount due|summe");

    private Totals() { }

    static boolean is(String words) {
        return WORDS.matcher(words.strip()).matches();
    }
}
