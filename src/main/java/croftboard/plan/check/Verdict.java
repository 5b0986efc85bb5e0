package croftboard.plan.check;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What the checker found.
 *
 * @param findings each says what the plan claims and what is so; empty: every figure and every must holds
 * @param counts what was derived again, in the order in which it was done
 */
public record Verdict(List<String> findings, List<Count> counts) {
    /** @param what plural words, for example {@code needs} */
    public record Count(int number, String what) { }

    public boolean ok() {
        return findings.isEmpty();
    }

    /** {@code 412 needs, 57 order lines, 38 batches, 9 musts, all money}. */
    public String verified() {
        return counts.stream().map(c -> c.number() + " " + c.what()).collect(Collectors.joining(", ")) + ", all money";
    }
}
