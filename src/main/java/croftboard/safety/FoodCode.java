package croftboard.safety;

import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The limits of one edition of a health code, or of several at once, the stricter number of each: that is what an
 * unknown edition takes. The local health authority always decides.
 *
 * @param name the edition's own, or words for the stricter of several
 * @param onFile the kitchen's edition has a table of its own
 * @param cooking by food, by ascending temperature
 */
public record FoodCode(String name, boolean onFile, Map<Rule, Limit> limits, Map<Cooked, List<Cooked.Minimum>> cooking) {

    /** @throws IllegalArgumentException when a rule or a food has no number */
    public FoodCode {
        limits = Map.copyOf(limits);
        cooking = Map.copyOf(cooking);
        for (Rule rule : Rule.values()) {
            if (!limits.containsKey(rule)) {
                throw new IllegalArgumentException("no number for " + rule.word() + " in " + name);
            }
        }
        for (Cooked food : Cooked.values()) {
            if (cooking.getOrDefault(food, List.of()).isEmpty()) {
                throw new IllegalArgumentException("no cooking minimum for " + food + " in " + name);
            }
        }
    }

    /** The stricter number of each rule; a cooking minimum only where all editions have one for that temperature. */
    public static FoodCode strictest(String name, Collection<FoodCode> editions) {
        Map<Rule, Limit> limits = new EnumMap<>(Rule.class);
        Map<Cooked, List<Cooked.Minimum>> cooking = new EnumMap<>(Cooked.class);
        for (Rule rule : Rule.values()) {
            limits.put(rule, editions.stream().map(e -> e.limit(rule)).reduce(rule::stricter).orElseThrow());
        }
        for (Cooked food : Cooked.values()) {
            cooking.put(food, strictest(editions.stream().map(e -> e.minimums(food)).toList()));
        }
        return new FoodCode(name, false, limits, cooking);
    }

    private static List<Cooked.Minimum> strictest(List<List<Cooked.Minimum>> editions) {
        Map<Integer, List<Cooked.Minimum>> byTemperature = new TreeMap<>();
        editions.forEach(all -> all.forEach(m -> byTemperature.computeIfAbsent(m.fahrenheit(), k -> new ArrayList<>())
                .add(m)));
        return byTemperature.values().stream().filter(all -> all.size() == editions.size())
                .map(all -> all.stream().reduce((a, b) -> a.seconds() >= b.seconds() ? a : b).orElseThrow()).toList();
    }

    public Limit limit(Rule rule) {
        return limits.get(rule);
    }

    public List<Cooked.Minimum> minimums(Cooked food) {
        return cooking.get(food);
    }

    /** Whether all parts of the food, at that temperature or above for so long, are cooked. */
    public boolean enough(Cooked food, Ratio fahrenheit, long seconds) {
        return minimums(food).stream().anyMatch(m -> fahrenheit.compareTo(Ratio.of(m.fahrenheit())) >= 0
                && seconds >= m.seconds());
    }

    /** Cold food that needs control. */
    public boolean coldEnough(Ratio fahrenheit) {
        return fahrenheit.compareTo(limit(Rule.COLD_HOLDING).value()) <= 0;
    }

    /** @param roastByTable a whole roast, cooked or reheated by the roast table */
    public boolean hotEnough(Ratio fahrenheit, boolean roastByTable) {
        return fahrenheit.compareTo(limit(roastByTable ? Rule.HOT_HOLDING_ROAST : Rule.HOT_HOLDING).value()) >= 0;
    }

    /** @param packed ready-to-eat food from a sealed commercial pack */
    public Cooked.Minimum reheating(boolean packed) {
        Limit limit = limit(packed ? Rule.REHEATING_PACKED : Rule.REHEATING);
        return new Cooked.Minimum(limit.whole(), packed ? 0 : limit(Rule.REHEATING_HOLD).whole(), limit.section(),
                limit.source());
    }

    /** Whether refrigerated ready-to-eat food that needs control must carry a date. */
    public boolean dateMarked(Ratio hoursHeld) {
        return hoursHeld.compareTo(limit(Rule.DATE_MARK_AFTER).value()) > 0;
    }
}
