package croftboard.plan.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** What weeks would come to if food failed: each week by itself, and together as if its runs were one season's. */
public final class ExposureAsked {
    private final List<Question> weeks;
    private final long seed;

    /** @param weeks in their order, at least one */
    public ExposureAsked(List<Question> weeks, long seed) {
        this.weeks = List.copyOf(weeks);
        this.seed = seed;
    }

    /** Hears how far it is; from several threads. */
    public interface Progress {
        /** @param share of all, 0 to 1 */
        void done(double share);
    }

    /** @param runs of each week */
    public Exposure of(int runs, Progress progress) {
        List<Exposure> all = new ArrayList<>();
        for (Question q : weeks) {
            int before = all.size();
            all.add(new ExposureRun(q, seed, (done, of) -> progress.done((before + done / (double) of) / weeks.size())).run(runs));
        }
        return all.size() == 1 ? all.get(0) : together(all);
    }

    private Exposure together(List<Exposure> all) {
        Exposure.Outcome planned = all.stream().map(Exposure::planned).reduce(Exposure.Outcome::plus).orElseThrow();
        int runs = all.get(0).runs().size();
        List<Exposure.Outcome> sums = IntStream.range(0, runs).mapToObj(r -> all.stream().map(e -> e.runs().get(r))
                .reduce(Exposure.Outcome::plus).orElseThrow()).toList();
        return new Exposure(all.stream().flatMap(e -> e.weeks().stream()).toList(), seed, planned,
                singles(all, all.stream().map(Exposure::vendors).toList()), singles(all, all.stream().map(Exposure::crops).toList()),
                sums, survival(all), backUps(all));
    }

    /** A vendor that fails in every week; a week that orders nothing there is as planned. */
    private static List<Exposure.Single> singles(List<Exposure> all, List<List<Exposure.Single>> each) {
        TreeSet<String> ids = new TreeSet<>();
        each.forEach(list -> list.forEach(s -> ids.add(s.id())));
        List<Exposure.Single> sums = new ArrayList<>();
        for (String id : ids) {
            Exposure.Outcome sum = new Exposure.Outcome(0, 0, 0, 0, 0);
            TreeSet<String> lost = new TreeSet<>();
            for (int w = 0; w < all.size(); w++) {
                var here = each.get(w).stream().filter(s -> s.id().equals(id)).findFirst();
                sum = sum.plus(here.map(Exposure.Single::outcome).orElse(all.get(w).planned()));
                here.ifPresent(s -> lost.addAll(s.lost()));
            }
            sums.add(new Exposure.Single(id, sum, List.copyOf(lost)));
        }
        sums.sort(Comparator.comparingLong((Exposure.Single s) -> s.outcome().value()).thenComparing(Exposure.Single::id));
        return sums;
    }

    private static List<Exposure.Survival> survival(List<Exposure> all) {
        Map<String, long[]> counts = new TreeMap<>();
        all.forEach(e -> e.survival().forEach(s -> {
            long[] c = counts.computeIfAbsent(s.recipe(), k -> new long[2]);
            c[0] += s.made();
            c[1] += s.planned();
        }));
        return counts.entrySet().stream().map(e -> new Exposure.Survival(e.getKey(), e.getValue()[0], e.getValue()[1]))
                .sorted(Comparator.comparingDouble((Exposure.Survival s) -> (double) s.made() / s.planned())
                        .thenComparing(Exposure.Survival::recipe)).toList();
    }

    private static List<Exposure.BackUp> backUps(List<Exposure> all) {
        Map<String, Exposure.BackUp> sums = new TreeMap<>();
        all.forEach(e -> e.backUps().forEach(b -> sums.merge(b.help() + " " + b.of(), b,
                (x, y) -> new Exposure.BackUp(x.help(), x.of(), x.cents() + y.cents(), x.hit() + y.hit()))));
        return sums.values().stream().sorted(Comparator.comparingLong((Exposure.BackUp b) -> -b.cents())
                .thenComparing(Exposure.BackUp::help).thenComparing(Exposure.BackUp::of)).toList();
    }
}
