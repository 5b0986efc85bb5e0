package croftboard.book;

import croftboard.measure.Ratio;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Definitions of "local" and the one in force. */
public record LocalRules(String inForce, List<Definition> definitions) {
    /**
     * Local when grown (and, for processed food, processed) in one of {@code states} or within {@code miles}, straight line.
     *
     * @param states two-letter codes
     * @param miles straight-line limit; within 10 % of it a place is unclassified, as the road may differ
     * @param mixed mixed food: more than this share of its ingredients must be local
     */
    public record Definition(String id, String say, Set<String> states, Optional<Integer> miles, Ratio mixed) { }

    public Definition definition() {
        return definitions.stream().filter(d -> d.id().equals(inForce)).findFirst().orElseThrow();
    }
}
