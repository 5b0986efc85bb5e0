package croftboard.plan.check;

import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/** Minutes of every station and day and units of all equipment, from the plan's productions, batches and deliveries. */
final class WorkCheck {
    private record Made(Recipe recipe, Ratio batches, int portions, LocalDate made, LocalDate last) { }

    private final Subject of;
    private final Report report;
    private final List<Made> makings = new ArrayList<>();
    private long overtimeCents;

    WorkCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
        for (WeekPlan.Served row : of.plan().menu()) {
            of.dish(row).ifPresent(dish -> {
                row.productions().forEach(p -> makings.add(new Made(dish, p.batches(), p.portions(), p.made(),
                        p.lastServed())));
                if (dish.worthOnly().isPresent() && !row.days().isEmpty()) {
                    makings.add(new Made(dish, Ratio.ZERO, 0, row.days().get(0), row.days().get(0)));
                }
            });
        }
        LostMakings.of(of).forEach(l -> makings.add(new Made(l.dish(), l.production().batches(), l.production().portions(),
                l.production().made(), l.production().lastServed())));
        for (WeekPlan.Batch b : of.plan().batches()) {
            of.recipe(b.recipe()).ifPresent(r -> makings.add(new Made(r, b.batches(), 0, b.made(), b.lastServed())));
        }
    }

    void run() {
        Kitchen kitchen = of.book().kitchen();
        kitchen.stations().forEach(this::station);
        kitchen.equipment().forEach(this::equipment);
        report.sameCents("account: overtime", of.plan().account().overtime(), overtimeCents);
        report.count(kitchen.stations().size(), "stations");
        report.count(kitchen.equipment().size(), "pieces of equipment");
    }

    private long sum(LocalDate day, ToLongFunction<Made> units) {
        return makings.stream().filter(m -> m.made().equals(day)).mapToLong(units).sum();
    }

    /** Minutes that a station works on a day, with the receiving of deliveries where it does that. */
    long minutes(Kitchen.Station station, LocalDate day) {
        long minutes = sum(day, m -> Making.minutes(m.recipe(), station.id(), m.batches(), m.portions()));
        if (receives(station)) {
            minutes += of.plan().orders().stream().filter(o -> o.delivery().equals(day)).count()
                    * of.book().kitchen().receiving().orElseThrow().minutesPerDelivery();
        }
        return minutes;
    }

    boolean receives(Kitchen.Station station) {
        return of.book().kitchen().receiving().isPresent()
                && of.book().kitchen().receiving().get().station().equals(station.id());
    }

    /** Minutes that there are without overtime. */
    long hands(Kitchen.Station station, LocalDate day) {
        boolean works = of.days().prep(day) || receives(station) && !of.days().closed(day);
        long minutes = works ? of.book().kitchen().handsMinutes(station.id(), day.getDayOfWeek()) : 0;
        return minutes + of.revised().map(r -> new ChangedHands(of.book(), r).minutes(station.id(), day)).orElse(0L);
    }

    private void station(Kitchen.Station station) {
        for (LocalDate day : of.days().all()) {
            long over = Math.max(0, minutes(station, day) - hands(station, day));
            long limit = hands(station, day) > 0 ? station.overtimeLimitMinutes() : 0;
            overtimeCents += Ratio.of(over).times(station.overtimePerHour().value()).over(60).round();
            if (over > limit) {
                report.broken(station.name() + " on " + Say.day(day) + ": " + minutes(station, day) + " minutes, where "
                        + (hands(station, day) + limit) + " are there", station.name(), Say.day(day));
            }
        }
    }

    private void equipment(Kitchen.Equipment e) {
        if (e.perWeek().isPresent()) {
            long units = makings.stream().mapToLong(m -> Making.units(m.recipe(), e.id(), m.batches())).sum();
            tooMany(e, units, e.perWeek().get() + of.revised().map(r -> new ChangedHands(of.book(), r).unitsOfWeek(e)).orElse(0L),
                    "in the week");
            return;
        }
        for (LocalDate day : of.days().all()) {
            long units = makings.stream().filter(m -> takes(m, e, day))
                    .mapToLong(m -> Making.units(m.recipe(), e.id(), m.batches())).sum();
            boolean regularDay = of.days().prep(day) || e.held() || worthOnly() && of.days().open(day);
            long regular = regularDay ? e.perDay().orElse(0) : 0;
            long there = regular + of.revised().map(r -> new ChangedHands(of.book(), r).units(e, day, regular)).orElse(0L);
            tooMany(e, units, there, "on " + Say.day(day));
        }
    }

    /** Nothing is cooked: units are taken on the day of service. */
    private boolean worthOnly() {
        return of.book().recipes().values().stream().allMatch(r -> r.worthOnly().isPresent());
    }

    private static boolean takes(Made m, Kitchen.Equipment e, LocalDate day) {
        return e.held() ? !day.isBefore(m.made()) && !day.isAfter(m.last()) : m.made().equals(day);
    }

    private void tooMany(Kitchen.Equipment e, long units, long there, String when) {
        if (units > there) {
            report.broken(e.name() + " " + when + ": " + units + " " + e.unit() + ", where " + there + " are there",
                    e.name(), when);
        }
    }
}
