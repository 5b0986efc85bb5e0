package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Nearest;
import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.Overrides;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.WeekNotes;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Fixes a dish, a day or an order line of a week, or lets it go; each with who, when and why. */
final class KeepRun {
    private static final String DAYS = "mon|tue|wed|thu|fri|sat|sun";
    private static final int LONGEST = 300;
    private final BookAt at;
    private final Book book;
    private final LocalDateTime now;

    /** @param now in the kitchen's zone */
    KeepRun(BookAt at, Book book, LocalDateTime now) {
        this.at = at;
        this.book = book;
        this.now = now.withNano(0);
    }

    /** @return what to say, a sentence a thing */
    List<String> keep(IsoWeek week, String what, String who, String why) {
        checkWords(who, why);
        List<Overrides.Row> rows = new ArrayList<>();
        String name = what.split("=", 2)[0];
        String value = what.contains("=") ? what.split("=", 2)[1] : "";
        if (name.matches(DAYS)) {
            plan(week).menu().stream().filter(r -> r.slot().startsWith(name + "/") && r.recipe().isPresent())
                    .forEach(r -> rows.add(row(Overrides.Kind.DISH, r.slot(), r.recipe().get(), true, who, why)));
        } else if (isVendor(name)) {
            rows.add(row(Overrides.Kind.PACKS, name, packs(week, name, value), true, who, why));
        } else {
            rows.add(row(Overrides.Kind.DISH, slot(week, name), dish(week, name, value), true, who, why));
        }
        if (rows.isEmpty()) {
            throw new WrongUse(week + " has nothing that begins on " + name + " -> croftboard show " + week + " menu");
        }
        new WeekNotes(at.folder()).add(week, rows);
        return rows.stream().map(r -> r.kind() == Overrides.Kind.DISH ? r.what() + " keeps " + book.recipe(r.value()).name() + "."
                : "At least " + r.value() + " packs of " + r.what() + " are ordered.").toList();
    }

    List<String> release(IsoWeek week, String what, String who, String why) {
        checkWords(who, why);
        WeekNotes notes = new WeekNotes(at.folder());
        List<Overrides.Row> rows = notes.kept(week).standing().stream()
                .filter(r -> r.what().equals(what) || what.matches(DAYS) && r.what().startsWith(what + "/"))
                .map(r -> row(r.kind(), r.what(), r.value(), false, who, why)).toList();
        if (rows.isEmpty()) {
            List<String> kept = notes.kept(week).standing().stream().map(Overrides.Row::what).toList();
            throw new WrongUse(what + " is not kept in " + week + " -> " + (kept.isEmpty() ? "nothing is" : "one of "
                    + String.join(", ", kept)));
        }
        notes.add(week, rows);
        return rows.stream().map(r -> r.what() + " is open again.").toList();
    }

    private static void checkWords(String who, String why) {
        if (who.isBlank() || why.isBlank() || who.length() > LONGEST || why.length() > LONGEST) {
            throw new WrongUse("--who and --why say who decides and for what reason -> a few words each");
        }
    }

    private Overrides.Row row(Overrides.Kind kind, String what, String value, boolean kept, String who, String why) {
        return new Overrides.Row(kind, what, value, kept, who.strip(), why.strip(), now);
    }

    private WeekPlan plan(IsoWeek week) {
        return Kept.plan(at.plans(), new PlanRef(week, OptionalInt.empty()));
    }

    private boolean isVendor(String name) {
        String[] parts = name.split("/", -1);
        boolean line = parts.length == 2 && book.kitchen().lines().stream().anyMatch(l -> l.id().equals(parts[1]));
        return parts.length == 2 && !line && book.vendors().containsKey(parts[0]);
    }

    private String packs(IsoWeek week, String name, String value) {
        String[] parts = name.split("/", -1);
        if (book.vendor(parts[0]).offers().stream().noneMatch(o -> o.item().equals(parts[1]))) {
            throw new WrongUse(parts[0] + " sells no " + parts[1] + new Nearest().of(parts[1], book.vendor(parts[0]).offers().stream()
                    .map(o -> o.item()).toList()).map(n -> " -> did you mean " + n + "?").orElse(" -> an item of its file in farms/"));
        }
        if (value.isEmpty()) {
            int packs = plan(week).orders().stream().filter(o -> o.vendor().equals(parts[0])).flatMap(o -> o.lines().stream())
                    .filter(l -> l.item().equals(parts[1])).mapToInt(WeekPlan.OrderLine::packs).sum();
            value = String.valueOf(packs);
        }
        if (!value.matches("[1-9]\\d{0,3}")) {
            throw new WrongUse(name + "=" + value + " -> how many packs at least, such as " + name + "=4");
        }
        return value;
    }

    private String slot(IsoWeek week, String name) {
        List<String> slots = at.plans().current(week).isPresent() ? plan(week).menu().stream().map(WeekPlan.Served::slot).toList()
                : List.of();
        boolean line = name.matches("(" + DAYS + ")/.+") && book.kitchen().lines().stream()
                .anyMatch(l -> name.endsWith("/" + l.id()));
        if (slots.isEmpty() ? !line : !slots.contains(name)) {
            throw new WrongUse(name + " is no place of " + week + new Nearest().of(name, slots).map(n -> " -> did you mean " + n + "?")
                    .orElse(" -> DAY/LINE, DAY, or VENDOR/ITEM"));
        }
        return name;
    }

    private String dish(IsoWeek week, String slot, String value) {
        String dish = value.isEmpty() ? plan(week).choices().getOrDefault(slot, "") : value;
        if (!book.recipes().containsKey(dish) || !book.recipe(dish).isDish()) {
            throw new WrongUse(dish.isEmpty() ? "nothing stands on " + slot + " -> " + slot + "=DISH" : "no dish " + dish
                    + " in recipes/" + new Nearest().of(dish, book.recipes().keySet()).map(n -> " -> did you mean " + n + "?")
                            .orElse(" -> an id as in the book"));
        }
        return dish;
    }
}
