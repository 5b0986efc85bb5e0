package croftboard.plan;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How a week that people already work from differs from what the book alone says of it.
 *
 * @param notSold days on which nothing is sold, though the kitchen may work
 * @param made by slot id and day of making: batches made, whatever demand says now
 * @param again by slot id: what stood there is lost, and the days from this one on are a slot of their own
 * @param swaps by dish: declared substitutes used on every line of the dish itself
 */
public record Altered(Set<LocalDate> notSold, Map<String, SortedMap<LocalDate, Ratio>> made, Map<String, LocalDate> again,
        Map<String, Map<String, String>> swaps) {
    public static final Altered NOTHING = new Altered(Set.of(), Map.of(), Map.of());

    public Altered(Set<LocalDate> notSold, Map<String, SortedMap<LocalDate, Ratio>> made, Map<String, LocalDate> again) {
        this(notSold, made, again, Map.of());
    }

    SortedMap<LocalDate, Ratio> madeAt(String slot) {
        return made.getOrDefault(slot, new TreeMap<>());
    }
}
