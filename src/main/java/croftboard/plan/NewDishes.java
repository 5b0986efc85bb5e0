package croftboard.plan;

import croftboard.measure.IsoWeek;
import croftboard.menu.MenuSearch;
import croftboard.need.WeekProblem;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Dishes that the kitchen has not cooked before, and how many of them a calendar month may bring (the month of a week's
 * Monday). Which ones come in is settled before the weeks are planned: a quick menu without the limit shows which earn most
 * more than the dishes known.
 */
final class NewDishes {
    private static final long GLANCE_TRIES = 20_000;
    private static final int GLANCE_MEMORY = 10;
    private final Optional<Set<String>> known;
    private final Optional<Integer> limit;
    private final Map<String, IsoWeek> introduced = new TreeMap<>();

    /** @param known empty: nothing is known, so no dish is new */
    NewDishes(Optional<Set<String>> known, Optional<Integer> limit) {
        this.known = known;
        this.limit = known.isPresent() ? limit : Optional.empty();
    }

    Optional<Integer> limit() {
        return limit;
    }

    private boolean isNew(String recipe) {
        return known.isPresent() && !known.get().contains(recipe);
    }

    /** A week is settled. */
    void settle(WeekPlan plan) {
        plan.menu().forEach(s -> s.recipe().filter(this::isNew).ifPresent(r -> introduced.putIfAbsent(r, plan.week())));
    }

    List<Rotation.NewDish> list() {
        return introduced.entrySet().stream().map(e -> new Rotation.NewDish(e.getValue(), e.getKey()))
                .sorted(Comparator.comparing(Rotation.NewDish::first).thenComparing(Rotation.NewDish::recipe)).toList();
    }

    /** The weeks' problems without the new dishes that do not come in. */
    List<WeekProblem> within(List<IsoWeek> weeks, List<WeekProblem> problems, long seed) {
        if (limit.isEmpty()) {
            return problems;
        }
        Map<String, YearMonth> from = chosen(weeks, problems, seed);
        List<WeekProblem> all = new ArrayList<>();
        for (int w = 0; w < problems.size(); w++) {
            YearMonth month = month(weeks.get(w));
            all.add(PricedChanges.with(problems.get(w), problems.get(w).slots().stream().map(s -> !s.free() ? s
                    : PricedChanges.with(s, s.candidates().stream().filter(c -> !isNew(c.recipe())
                            || introduced.containsKey(c.recipe())
                            || from.containsKey(c.recipe()) && !month.isBefore(from.get(c.recipe()))).toList())).toList()));
        }
        return all;
    }

    private static YearMonth month(IsoWeek week) {
        return YearMonth.from(week.monday());
    }

    /** Dishes that come in, each with the month that it counts for. */
    private Map<String, YearMonth> chosen(List<IsoWeek> weeks, List<WeekProblem> problems, long seed) {
        JoinedWeeks joined = new JoinedWeeks(problems);
        double worth = joined.problem.prices().localPrice().toDouble() / 2;
        int[] nothing = new int[joined.problem.slots().size()];
        Arrays.fill(nothing, -1);
        MenuSearch search = new MenuSearch(joined.problem, worth);
        int[] menu = search.search(search.greedy(nothing).choice(), seed,
                new MenuSearch.Effort(GLANCE_TRIES * weeks.size(), 0, GLANCE_MEMORY), () -> false).choice();
        double[] cheapest = cheapest(joined.problem);
        Map<String, Double> gain = new TreeMap<>();
        Map<String, YearMonth> first = new TreeMap<>();
        for (int w = 0; w < weeks.size(); w++) {
            int[] own = joined.choiceOf(w, menu);
            for (int s = 0; s < own.length; s++) {
                WeekProblem.Slot slot = problems.get(w).slots().get(s);
                if (own[s] >= 0 && slot.free() && isNew(slot.candidates().get(own[s]).recipe())) {
                    String recipe = slot.candidates().get(own[s]).recipe();
                    gain.merge(recipe, worth(slot.candidates().get(own[s]), cheapest) - old(slot, cheapest), Double::sum);
                    first.putIfAbsent(recipe, month(weeks.get(w)));
                }
            }
        }
        return best(gain, first);
    }

    private Map<String, YearMonth> best(Map<String, Double> gain, Map<String, YearMonth> first) {
        Map<YearMonth, Integer> room = new TreeMap<>();
        introduced.values().forEach(w -> room.merge(month(w), -1, Integer::sum));
        Map<String, YearMonth> chosen = new TreeMap<>();
        gain.entrySet().stream().filter(e -> !introduced.containsKey(e.getKey()))
                .sorted(Comparator.comparingDouble((Map.Entry<String, Double> e) -> -e.getValue())
                        .thenComparing(Map.Entry::getKey)).forEach(e -> {
                            YearMonth month = first.get(e.getKey());
                            if (limit.orElseThrow() + room.getOrDefault(month, 0) > 0) {
                                room.merge(month, -1, Integer::sum);
                                chosen.put(e.getKey(), month);
                            }
                        });
        return chosen;
    }

    /** What the best dish known would be worth there; 0 when there is none. */
    private double old(WeekProblem.Slot slot, double[] cheapest) {
        return slot.candidates().stream().filter(c -> !isNew(c.recipe())).mapToDouble(c -> worth(c, cheapest)).max().orElse(0);
    }

    private static double worth(WeekProblem.Candidate c, double[] cheapest) {
        return c.valueCents() - c.loose().stream().mapToDouble(n -> n.mg() * cheapest[n.item()]).sum();
    }

    private static double[] cheapest(WeekProblem problem) {
        double[] cents = new double[problem.items().size()];
        Set<Integer> seen = new HashSet<>();
        for (WeekProblem.Offer o : problem.offers()) {
            double each = o.lowestPriceCents() / (double) o.packMg();
            cents[o.item()] = seen.add(o.item()) ? each : Math.min(cents[o.item()], each);
        }
        return cents;
    }
}
