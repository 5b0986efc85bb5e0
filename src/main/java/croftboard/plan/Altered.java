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
 */
public record Altered(Set<LocalDate> notSold, Map<String, SortedMap<LocalDate, Ratio>> made, Map<String, LocalDate> again) {
    public static final Altered NOTHING = new Altered(Set.of(), Map.of(), Map.of());

    SortedMap<LocalDate, Ratio> madeAt(String slot) {
        return made.getOrDefault(slot, new TreeMap<>());
    }
}
