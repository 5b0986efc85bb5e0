package croftboard.book;

import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.time.DayOfWeek;
import java.util.Optional;

/**
 * What the manager expects on one line and day, in place of the forecast; kept with its reason in
 * {@code seasons/overrides.yaml} and judged later by what sold.
 *
 * @param portions mean of a dish of average draw that day
 * @param insteadOf the forecast when it was written
 */
public record ManagersFigure(IsoWeek week, String line, DayOfWeek day, Ratio portions, Optional<Ratio> insteadOf,
        String reason) { }
