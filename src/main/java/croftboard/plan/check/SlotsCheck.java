package croftboard.plan.check;

import croftboard.book.Promises;
import croftboard.book.Recipe;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The week's slots are those of the book, and each dish may stand where it stands. */
final class SlotsCheck {
    private final Subject of;
    private final Report report;

    SlotsCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        Set<String> seen = new HashSet<>();
        for (WeekPlan.Served row : of.plan().menu()) {
            report.findIf(!seen.add(row.slot()), "menu: slot " + row.slot() + " stands there twice");
            Optional<Slot> slot = of.slot(row);
            if (slot.isEmpty()) {
                report.find("menu: the week has no slot " + row.slot());
                continue;
            }
            report.same("menu: days of " + row.slot(), row.days(), slot.get().days());
            report.same("menu: line of " + row.slot(), row.line(), slot.get().line());
            dish(row, slot.get());
        }
        of.slots().stream().filter(s -> !seen.contains(s.id()))
                .forEach(s -> report.find("menu: slot " + s.id() + " is left out"));
        gaps();
        pins();
        report.count(of.slots().size(), "slots");
    }

    private void dish(WeekPlan.Served row, Slot slot) {
        if (row.recipe().isEmpty()) {
            report.findIf(row.portions() != 0 || row.sales() != 0 || row.left() != 0 || row.staples() != 0
                    || !row.productions().isEmpty() || !row.marks().isEmpty() || row.kept(),
                    "menu: nothing stands on " + row.slot() + ", but there are figures for it");
            mustBeFilled(slot);
            return;
        }
        Optional<Recipe> dish = of.dish(row);
        if (dish.isEmpty()) {
            report.find("menu: " + row.recipe().get() + " on " + row.slot() + " is no dish of the book");
            return;
        }
        Optional<WeekPlan.Served> done = of.revised().flatMap(r -> r.done(row.slot()));
        boolean pinned = of.plan().inputs().kept().containsKey(row.slot()) || done.isPresent();
        report.same("menu: kept by the manager, " + row.slot(), row.kept(), done.map(WeekPlan.Served::kept)
                .orElse(of.plan().inputs().kept().containsKey(row.slot()) && slot.free()));
        String where = "menu: " + dish.get().id() + " on " + row.slot();
        if (slot instanceof Slot.Run run) {
            onLine(run, dish.get(), pinned, where);
        } else if (slot instanceof Slot.Meal meal) {
            atEvent(meal, dish.get(), pinned, where);
        }
    }

    /** What a manager pinned may stand anywhere that its life allows; the gap within the week still holds. */
    private void onLine(Slot.Run run, Recipe dish, boolean pinned, String where) {
        if (pinned) {
            return;
        }
        if (run.of().standing().isPresent()) {
            report.findIf(!run.of().standing().get().equals(dish.id()), where + ": the line always holds "
                    + run.of().standing().get());
            return;
        }
        Set<String> fits = dish.sale().orElseThrow().fits();
        report.findIf(!fits.contains(run.of().course()) && !fits.contains(run.of().id()),
                where + ": it does not fit the course " + run.of().course());
        report.findIf(!dish.inSeason(of.plan().week(), of.book().seasons()), where + ": it is out of season");
        for (Given.Served other : of.given().served()) {
            if (other.recipe().equals(dish.id())) {
                near(where + ": it is also served from " + Say.day(other.start()), other.start(), run.days().get(0))
                        .ifPresent(report::find);
            }
        }
    }

    private Optional<String> near(String what, LocalDate a, LocalDate b) {
        long apart = Math.abs(ChronoUnit.DAYS.between(a, b));
        int gap = of.book().kitchen().gapDays();
        return apart < gap ? Optional.of(what + ", " + apart + " days apart where " + gap + " are the least")
                : Optional.empty();
    }

    private void atEvent(Slot.Meal meal, Recipe dish, boolean pinned, String where) {
        if (pinned) {
            return;
        }
        if (meal.of().dish().isPresent()) {
            report.findIf(!meal.of().dish().get().equals(dish.id()), where + ": the event's menu says "
                    + meal.of().dish().get());
            return;
        }
        report.findIf(!dish.sale().orElseThrow().fits().contains(meal.of().course()),
                where + ": it does not fit the course " + meal.of().course());
        report.findIf(!dish.inSeason(of.plan().week(), of.book().seasons()), where + ": it is out of season");
        if (meal.of().diet().isPresent()) {
            Promises.Diet diet = meal.of().diet().get();
            report.findIf(!Contents.of(of.making().everything(dish)).is(diet), where + ": it is not known to be "
                    + diet.name().toLowerCase(java.util.Locale.ROOT));
        }
    }

    private void gaps() {
        List<WeekPlan.Served> rows = of.plan().menu();
        for (int a = 0; a < rows.size(); a++) {
            for (int b = a + 1; b < rows.size(); b++) {
                if (rows.get(a).recipe().isPresent() && rows.get(a).recipe().equals(rows.get(b).recipe())) {
                    gap(rows.get(a), rows.get(b));
                }
            }
        }
    }

    private void gap(WeekPlan.Served a, WeekPlan.Served b) {
        Optional<Slot> first = of.slot(a).filter(Slot::free);
        Optional<Slot> second = of.slot(b).filter(Slot::free);
        if (first.isPresent() && second.isPresent()) {
            near(a.recipe().orElseThrow() + " stands on " + a.slot() + " and on " + b.slot(), first.get().days().get(0),
                    second.get().days().get(0)).ifPresent(must -> report.broken(must, a.recipe().orElseThrow(), a.slot(),
                            b.slot()));
        }
    }

    /** What a manager pinned stands there. */
    private void pins() {
        of.plan().inputs().kept().forEach((slot, dish) -> {
            Optional<String> stands = of.plan().menu().stream().filter(r -> r.slot().equals(slot)).findFirst()
                    .flatMap(WeekPlan.Served::recipe);
            boolean said = stands.isEmpty() && of.slots().stream().anyMatch(s -> s.id().equals(slot) && makeable(s, dish));
            report.findIf(!said && !stands.equals(Optional.of(dish)), "menu: " + dish + " was to be kept on " + slot
                    + ", where " + stands.orElse("nothing") + " stands");
        });
    }

    /** Standing lines, dishes that an event's menu names and pins are musts where they can be made in time. */
    private void mustBeFilled(Slot slot) {
        Optional<String> dish = Optional.ofNullable(of.plan().inputs().kept().get(slot.id()))
                .or(() -> slot instanceof Slot.Run run ? run.of().standing() : Optional.empty())
                .or(() -> slot instanceof Slot.Meal meal ? meal.of().dish() : Optional.empty());
        if (dish.isPresent() && makeable(slot, dish.get())) {
            report.broken("nothing stands on " + slot.id() + ", where " + dish.get() + " belongs", slot.id());
        }
    }

    private boolean makeable(Slot slot, String id) {
        Optional<Recipe> dish = of.recipe(id).filter(Recipe::isDish);
        if (dish.isEmpty() || dish.get().worthOnly().isPresent()) {
            return dish.isPresent() && slot instanceof Slot.Run;
        }
        return slot.days().stream().allMatch(day -> of.days().lastPrepDay(day.minusDays(dish.get().leadDays()))
                .filter(made -> !made.plusDays(of.making().lasts(dish.get()) - 1L).isBefore(day)).isPresent());
    }
}
