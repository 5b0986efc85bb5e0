package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.need.WeekProblem;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Hands and equipment under changed facts. What is limited by the week loses its share of the day. */
final class HandsChanges {
    private static final int DAYS_A_WEEK = 7;
    private final Book book;
    private final WeekProblem problem;
    private final List<String> faults;
    private final List<WeekProblem.Resource> resources;

    HandsChanges(Book book, WeekProblem problem, List<String> faults) {
        this.book = book;
        this.problem = problem;
        this.faults = faults;
        this.resources = new ArrayList<>(problem.resources());
    }

    WeekProblem apply(List<Change> changes) {
        for (Change c : changes) {
            if (c instanceof Change.CookOut out) {
                cookOut(out);
            } else if (c instanceof Change.EquipmentOut out) {
                equipmentOut(out);
            } else if (c instanceof Change.Hands more) {
                add(c, number(more.station(), true), more.day(), more.minutes());
            } else if (c instanceof Change.Units more) {
                add(c, number(more.equipment(), false), more.day(), more.units());
            }
        }
        return Problems.withResources(problem, resources);
    }

    private void cookOut(Change.CookOut out) {
        Kitchen.Cook cook = book.kitchen().cooks().stream().filter(c -> c.id().equals(out.cook())).findFirst().orElseThrow();
        Map<String, Integer> minutes = cook.minutes().getOrDefault(out.day(), Map.of());
        if (minutes.isEmpty()) {
            faults.add("\"" + out.sentence() + "\": " + cook.name() + " does not work that day -> one of "
                    + String.join(", ", cook.minutes().keySet().stream().sorted().map(ChangeSentence::day).toList()));
        }
        minutes.forEach((station, m) -> add(out, number(station, true), out.day(), -m));
    }

    private void equipmentOut(Change.EquipmentOut out) {
        int r = number(out.equipment(), false);
        WeekProblem.Resource resource = resources.get(r);
        long units = resource.periods() == 1 ? resource.regular()[0] / DAYS_A_WEEK : resource.regular()[day(out.day())];
        add(out, r, out.day(), -Math.toIntExact(units));
    }

    /** Stations and equipment are in one list; a station may be called as an oven is. */
    private int number(String id, boolean station) {
        int stations = book.kitchen().stations().size();
        for (int r = station ? 0 : stations; r < (station ? stations : resources.size()); r++) {
            if (resources.get(r).id().equals(id)) {
                return r;
            }
        }
        throw new IllegalStateException("no resource [" + id + "]");
    }

    /** The day of the plan's own week. */
    private int day(DayOfWeek day) {
        return problem.days() - DAYS_A_WEEK + day.getValue() - 1;
    }

    private void add(Change change, int r, DayOfWeek day, int units) {
        WeekProblem.Resource x = resources.get(r);
        long[] regular = x.regular().clone();
        int period = x.periods() == 1 ? 0 : day(day);
        if (regular[period] + units < 0) {
            faults.add("\"" + change.sentence() + "\": there are only " + regular[period] + " that day -> at most -"
                    + regular[period]);
            return;
        }
        regular[period] += units;
        resources.set(r, new WeekProblem.Resource(x.id(), x.name(), x.hands(), x.period(), regular, x.overtime(),
                x.overtimeCentsPerHour(), x.held()));
    }
}
