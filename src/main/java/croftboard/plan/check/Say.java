package croftboard.plan.check;

import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Figures in words. */
final class Say {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final Ratio MG_PER_POUND = Ratio.decimal("453592.37");

    private Say() { }

    static String money(long cents) {
        return new Cents(cents).toString();
    }

    /** {@code 2.00 lb (907185 mg)}. */
    static String mass(long mg) {
        return Ratio.of(mg).over(MG_PER_POUND).toDecimal(2) + " lb (" + mg + " mg)";
    }

    static String day(LocalDate date) {
        return DAY.format(date);
    }
}
