package croftboard.plan.check;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.plan.change.Change;
import java.time.LocalDate;
import java.util.Map;

/** How many minutes and units more or fewer there are than the kitchen file says. */
record ChangedHands(Book book, Revised revised) {
    private static final int DAYS_A_WEEK = 7;

    long minutes(String station, LocalDate day) {
        long more = 0;
        for (Change c : revised.changes()) {
            if (c instanceof Change.CookOut out && revised.inWeek(out.day()).equals(day)) {
                more -= book.kitchen().cooks().stream().filter(k -> k.id().equals(out.cook()))
                        .mapToLong(k -> k.minutes().getOrDefault(out.day(), Map.of()).getOrDefault(station, 0)).sum();
            } else if (c instanceof Change.Hands h && h.station().equals(station) && revised.inWeek(h.day()).equals(day)) {
                more += h.minutes();
            }
        }
        return more;
    }

    long units(Kitchen.Equipment e, LocalDate day, long regular) {
        long more = 0;
        for (Change c : revised.changes()) {
            if (c instanceof Change.EquipmentOut out && out.equipment().equals(e.id()) && revised.inWeek(out.day()).equals(day)) {
                more -= regular;
            } else if (c instanceof Change.Units u && u.equipment().equals(e.id()) && revised.inWeek(u.day()).equals(day)) {
                more += u.units();
            }
        }
        return more;
    }

    /** Of what is limited by the week, a day out takes a seventh, rounded down. */
    long unitsOfWeek(Kitchen.Equipment e) {
        long more = 0;
        for (Change c : revised.changes()) {
            if (c instanceof Change.EquipmentOut out && out.equipment().equals(e.id())) {
                more -= e.perWeek().orElse(0) / DAYS_A_WEEK;
            } else if (c instanceof Change.Units u && u.equipment().equals(e.id())) {
                more += u.units();
            }
        }
        return more;
    }
}
