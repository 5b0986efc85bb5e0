package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;

/** Minutes and equipment of one production of a dish, each rounded up once. */
final class Uses {
    private Uses() { }

    static List<WeekProblem.Use> of(RecipeFacts facts, Ratio batches, int portions, int day, int last,
            WeekIndex index, Book book) {
        List<WeekProblem.Use> uses = new ArrayList<>();
        facts.stations().forEach((station, perBatch) -> {
            Ratio minutes = perBatch.times(batches)
                    .plus(facts.perPortion().getOrDefault(station, Ratio.ZERO).times(portions));
            add(uses, index.station(station), day, day, minutes);
        });
        for (Kitchen.Equipment e : book.kitchen().equipment()) {
            Ratio units = facts.equipment().getOrDefault(e.id(), Ratio.ZERO).times(batches);
            add(uses, index.equipment(e.id()), day, e.held() ? last : day, units);
        }
        return uses;
    }

    private static void add(List<WeekProblem.Use> uses, int resource, int from, int to, Ratio units) {
        for (int d = from; d <= to && units.signum() > 0; d++) {
            uses.add(new WeekProblem.Use(resource, d, Math.toIntExact(units.ceil())));
        }
    }
}
