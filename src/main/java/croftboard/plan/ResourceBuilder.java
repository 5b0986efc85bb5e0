package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Hands and equipment as units a period, in the order of {@link WeekIndex#resource}. */
final class ResourceBuilder {
    private ResourceBuilder() { }

    static List<WeekProblem.Resource> all(Book book, Calendar calendar) {
        List<WeekProblem.Resource> all = new ArrayList<>();
        int[] daily = IntStream.range(0, Calendar.DAYS).toArray();
        Kitchen kitchen = book.kitchen();
        for (Kitchen.Station s : kitchen.stations()) {
            boolean dock = kitchen.receiving().map(r -> r.station().equals(s.id())).orElse(false);
            long[] hands = new long[Calendar.DAYS];
            long[] overtime = new long[Calendar.DAYS];
            for (int d = 0; d < Calendar.DAYS; d++) {
                boolean works = calendar.prep(d) || dock && !calendar.closed(d);
                hands[d] = works ? kitchen.handsMinutes(s.id(), calendar.weekday(d)) : 0;
                overtime[d] = works && hands[d] > 0 ? s.overtimeLimitMinutes() : 0;
            }
            all.add(new WeekProblem.Resource(s.id(), s.name(), !dock, daily, hands, overtime,
                    s.overtimePerHour().value(), false));
        }
        boolean served = book.recipes().values().stream().allMatch(r -> r.worthOnly().isPresent());
        for (Kitchen.Equipment e : kitchen.equipment()) {
            all.add(e.perWeek().isPresent() ? weekly(e, e.perWeek().get()) : daily(e, calendar, daily, served));
        }
        return all;
    }

    private static WeekProblem.Resource weekly(Kitchen.Equipment e, int units) {
        return new WeekProblem.Resource(e.id(), e.name(), false, new int[Calendar.DAYS], new long[] {units},
                new long[] {0}, 0, false);
    }

    /** @param served dishes take their units on the day they are served, be it a prep day or not */
    private static WeekProblem.Resource daily(Kitchen.Equipment e, Calendar calendar, int[] days, boolean served) {
        long[] units = new long[Calendar.DAYS];
        for (int d = 0; d < Calendar.DAYS; d++) {
            units[d] = calendar.prep(d) || e.held() || served && calendar.open(d) ? e.perDay().orElse(0) : 0;
        }
        return new WeekProblem.Resource(e.id(), e.name(), false, days, units, new long[Calendar.DAYS], 0, e.held());
    }
}
