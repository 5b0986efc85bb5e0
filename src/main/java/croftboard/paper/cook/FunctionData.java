package croftboard.paper.cook;

import croftboard.book.Seasons;
import croftboard.paper.Data;
import croftboard.plan.WeekPlan;
import croftboard.plan.work.EventTrace;
import java.util.List;
import java.util.stream.Collectors;

/** An event as a table: rows of its courses, of the batches that serve it, of its needs, and of what meets them. */
final class FunctionData {
    private FunctionData() { }

    static Data of(CookWeek week, Seasons.Event event, EventTrace trace, List<EventTrace.Shared> shared) {
        Data.Building data = Data.of("event", "row", "date", "id", "name", "course", "share", "asked_portions", "made_portions",
                "batches", "event_grams", "all_grams", "vendors");
        for (Seasons.Course c : event.menu()) {
            String dish = FunctionSheets.slot(week, event, c).flatMap(WeekPlan.Served::recipe).orElse("");
            data.row(event.id(), "course", event.date(), dish, dish.isEmpty() ? "" : week.called.recipe(dish), c.id(),
                    c.share().toDecimal(4), event.portions(c),
                    FunctionSheets.slot(week, event, c).map(s -> Integer.toString(s.portions())).orElse(""), "", "", "", "");
        }
        for (EventTrace.Shared s : shared) {
            data.row(event.id(), "batch", s.making().day(), s.making().recipe().id(), s.making().recipe().name(), "",
                    s.share().toDecimal(6), "", s.making().portions().map(Object::toString).orElse(""),
                    s.making().batches().toDecimal(4), CookWeek.grams(s.making().grams().times(s.share())),
                    CookWeek.grams(s.making().grams()), "");
        }
        trace.needs().forEach(n -> data.row(event.id(), "need", n.day(), n.item(), week.called.item(n.item()), "", "", "", "",
                "", CookWeek.grams(n.event()), CookWeek.grams(n.all()), ""));
        trace.brought().forEach(b -> data.row(event.id(), "bought", b.delivery().map(Object::toString).orElse(""), b.item(),
                week.called.item(b.item()), "", "", "", "", "", CookWeek.grams(b.event()), "",
                b.vendors().stream().collect(Collectors.joining(" "))));
        return data.done();
    }
}
