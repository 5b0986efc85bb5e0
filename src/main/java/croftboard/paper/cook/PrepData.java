package croftboard.paper.cook;

import croftboard.measure.CookAmounts;
import croftboard.paper.Data;
import croftboard.plan.work.Making;
import croftboard.plan.work.WorkingOrder;
import java.time.LocalDate;
import java.util.List;

/** A prep list as a table: one row a making, one a line of it; a line needed on several days has a row for each. */
final class PrepData {
    private PrepData() { }

    static Data of(CookWeek week, LocalDate day, String station, List<WorkingOrder.Task> tasks, List<PrepLines.Line> lines) {
        Data.Building data = Data.of("day", "station", "row", "order", "urgency", "id", "name", "cut", "batches", "portions",
                "amount", "as_purchased_grams", "edible_grams", "for", "need_day", "needed_by", "keeps_until",
                "use_on", "hands_minutes", "unattended_minutes", "done");
        int number = 1;
        for (WorkingOrder.Task t : tasks) {
            Making m = t.making();
            data.row(day, station, "make", number++, t.urgency().dots(), m.recipe().id(), m.recipe().name(), "",
                    m.batches().toDecimal(4), m.portions().map(Object::toString).orElse(""), "", "",
                    CookWeek.grams(m.grams()), week.purpose(m), "", t.neededOn(), m.useBy(), "", m.minutesAt(station),
                    m.unattended().ceil(), "");
        }
        for (PrepLines.Line l : lines) {
            l.needs().forEach((need, ap) -> data.row(day, station, l.useOn().isAfter(day) ? "ahead" : l.cut().isPresent()
                    ? "cut" : "weigh", "", l.urgency().dots(), l.item(), week.called.item(l.item()), l.cut().orElse(""), "",
                    "", l.measured().orElse(CookAmounts.mass(l.ep())), CookWeek.grams(ap),
                    CookWeek.grams(l.ep().times(ap).over(l.ap())), week.users(l.users(), l.useOn()), need, "", "",
                    l.useOn(), "", "", ""));
        }
        return data.done();
    }
}
