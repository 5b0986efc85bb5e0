package croftboard.plan.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The door through which the benchmark measures planted clashes: how long until they are named, and whether rightly. */
public final class ClashFigures {
    private ClashFigures() { }

    /**
     * @param kind of the planted clash
     * @param right exactly the three planted facts are named, and it is proved that they clash
     * @param namedSeconds until then. @param mendedSeconds with the price of each way out
     */
    public record Measured(long seed, String kind, boolean right, double namedSeconds, double mendedSeconds) { }

    public static List<Measured> measure(long from, long to) {
        List<Measured> all = new ArrayList<>();
        for (long seed = from; seed <= to; seed++) {
            PlantedClash week = PlantedClash.of(seed);
            int[] none = new int[week.problem().slots().size()];
            Arrays.fill(none, -1);
            ClashSearch search = new ClashSearch(week.problem(), Map.of(), List.of(), none);
            long t = System.nanoTime();
            boolean right = new Clashing(week.problem(), java.util.Optional.empty()).find()
                    .map(c -> c.proved() && Set.copyOf(c.facts()).equals(week.planted()) && search.told(c).size() == 3).orElse(false);
            double named = (System.nanoTime() - t) / 1e9;
            t = System.nanoTime();
            boolean whole = search.all().stream().anyMatch(c -> c.facts().size() == 3 && c.mends().size() == 3);
            all.add(new Measured(seed, week.kind(), right && whole, named, (System.nanoTime() - t) / 1e9));
        }
        return all;
    }
}
