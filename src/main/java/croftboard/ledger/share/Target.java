package croftboard.ledger.share;

import croftboard.book.Seasons;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.util.Collection;
import java.util.Optional;

/** What was promised for the days of some lines: the weeks' targets, each weighted with the food money of its week. */
public final class Target {
    private Target() { }

    /** Empty when the book promises nothing, or nothing was paid. */
    public static Optional<Ratio> of(Seasons seasons, Collection<Counted> lines) {
        long all = lines.stream().mapToLong(l -> l.receipt().cents()).sum();
        if (seasons.targets().isEmpty() || all <= 0) {
            return Optional.empty();
        }
        java.util.Map<IsoWeek, Long> weeks = new java.util.TreeMap<>();
        lines.forEach(l -> weeks.merge(IsoWeek.of(l.receipt().date()), l.receipt().cents(), Long::sum));
        Ratio money = Ratio.ZERO;
        for (var week : weeks.entrySet()) {
            money = money.plus(seasons.targetFor(week.getKey()).times(week.getValue()));
        }
        return Optional.of(money.over(all));
    }
}
