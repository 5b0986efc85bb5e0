package croftboard.plan.ahead;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads a season out of weeks that are planned. */
public final class SeasonReading {
    private SeasonReading() { }

    /** @param weeks in order, each once, at least one */
    public static Season of(Book book, WeekSpan span, List<PlannedWeek> weeks) {
        Expectation farms = new Expectation(book);
        SeasonDemand demand = new SeasonDemand(book, farms);
        Purchased purchased = new Purchased(book);
        SeasonGaps gaps = new SeasonGaps(book, farms, purchased, weeks);
        Map<IsoWeek, Spread> spreads = new TreeMap<>();
        weeks.forEach(w -> spreads.put(w.week(), new Spread(book, w.plan(), purchased)));
        List<Season.Demand> demands = demand.of(weeks);
        return new Season(span, List.copyOf(weeks), span.weeks().stream().filter(w -> !spreads.containsKey(w)).toList(), demands,
                new SeasonPromises(book, farms, demand, spreads).of(demands), gaps.gaps(demands),
                new SeasonFreezing(book, farms, demand, gaps, weeks).chances(), gaps.lacks(), gaps.unused());
    }
}
