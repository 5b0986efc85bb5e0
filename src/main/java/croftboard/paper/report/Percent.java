package croftboard.paper.report;

import croftboard.measure.Ratio;
import java.util.Optional;

/** Shares as people read them. */
final class Percent {
    private Percent() { }

    /** {@code 41.0 %}. */
    static String of(Ratio share) {
        return share.times(100).toDecimal(1) + " %";
    }

    static String of(Optional<Ratio> share) {
        return share.map(Percent::of).orElse("-");
    }
}
