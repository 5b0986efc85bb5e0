package croftboard.bench;

import croftboard.plan.ask.ClashFigures;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/** Clashes of three facts planted among twelve kept dishes of random weeks of 54 slots: found, named, and how soon. */
final class Clashes {
    private static final int WEEKS = 20;
    private static final int FEW = 4;

    private Clashes() { }

    static String measure(Request request) {
        List<ClashFigures.Measured> all = ClashFigures.measure(1, request.quick() ? FEW : WEEKS);
        TreeMap<String, Integer> kinds = new TreeMap<>();
        all.forEach(m -> kinds.merge(m.kind(), 1, Integer::sum));
        return String.format(Locale.ROOT, "Random weeks of 54 slots with twelve kept dishes, in which three facts clash and no others "
                + "(kinds planted: %s). Seconds on the clock.%n%n| | |%n|---|---:|%n| exactly the three named, and proved | %d of %d |%n"
                + "| until named: median / longest | %.2f / %.2f |%n| with the price of every way out: median / longest | %.1f / %.1f |%n",
                kinds, all.stream().filter(ClashFigures.Measured::right).count(), all.size(),
                middle(all.stream().mapToDouble(ClashFigures.Measured::namedSeconds).toArray()),
                all.stream().mapToDouble(ClashFigures.Measured::namedSeconds).max().orElse(0),
                middle(all.stream().mapToDouble(ClashFigures.Measured::mendedSeconds).toArray()),
                all.stream().mapToDouble(ClashFigures.Measured::mendedSeconds).max().orElse(0));
    }

    private static double middle(double[] all) {
        java.util.Arrays.sort(all);
        return all.length == 0 ? 0 : all[all.length / 2];
    }
}
