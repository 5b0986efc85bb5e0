package croftboard.plan;

import java.time.LocalDate;
import java.util.List;

/**
 * What earlier posted plans have already decided for the week at hand.
 *
 * @param orders packs already ordered on deliveries that this week may share
 * @param lots surplus of those orders, dated
 * @param served dishes of other weeks near enough for the gap
 */
public record Given(List<Ordered> orders, List<Lot> lots, List<Served> served) {
    public static final Given NOTHING = new Given(List.of(), List.of(), List.of());

    public record Ordered(String vendor, LocalDate delivery, String item, String pack, int packs, long cents) { }

    /** @param until last day on which it may be used */
    public record Lot(String item, LocalDate from, LocalDate until, long mg) { }

    public record Served(String recipe, LocalDate start) { }
}
