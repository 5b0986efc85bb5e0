package croftboard.paper.order;

import croftboard.book.Seasons;
import croftboard.paper.PaperContext;
import java.util.List;
import java.util.Locale;

/** What stands in a week's calendar beside its orders. */
public final class WeekCalendar {
    private WeekCalendar() { }

    /** Events of the plan's week that the context wants. */
    public static List<Seasons.Event> events(PaperContext context) {
        return CalendarSheet.events(context);
    }

    /** A kitchen's name as the right side of a UID: {@code larkmoor-pantry-cooperative.croftboard.invalid}. */
    public static String domain(String kitchen) {
        String plain = java.text.Normalizer.normalize(kitchen, java.text.Normalizer.Form.NFD).toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return (plain.isEmpty() ? "kitchen" : plain.substring(0, Math.min(60, plain.length()))) + ".croftboard.invalid";
    }
}
