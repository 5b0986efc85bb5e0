package croftboard.plan.ask;

import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekRun;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * What a back-up would have been worth in the runs in which a dish fell out: the same failures again with it. A second grower
 * has as many packs as the week orders, at the dearest price of the week, comes with a delivery that is ordered anyway and fails
 * as often as a likely crop. Frozen stock is what the week needs of the item, at the same price, used only where it is called
 * on. A stand-in is the best other dish of the place. All three are invented to think with.
 */
final class BackUps {
    private static final int ITEMS = 4;
    private static final int DISHES = 4;
    private static final int RUNS_EACH = 25;
    private static final int STAND_INS = 4;
    private static final double FAILS = .15;
    private final ExposureRun week;
    private final List<ExposureRun.Tried> runs;

    BackUps(ExposureRun week, List<ExposureRun.Tried> runs) {
        this.week = week;
        this.runs = runs;
    }

    private record Asked(Exposure.Help help, String of, List<Integer> hit) { }

    List<Exposure.BackUp> worth() {
        Map<String, List<Integer>> items = new TreeMap<>();
        Map<String, List<Integer>> dishes = new TreeMap<>();
        for (int r = 0; r < runs.size(); r++) {
            int run = r;
            if (!runs.get(r).repaired().dropped().isEmpty()) {
                shortItems(runs.get(r)).forEach(i -> items.computeIfAbsent(i, k -> new ArrayList<>()).add(run));
                runs.get(r).repaired().dropped().stream().map(week::dish).distinct()
                        .forEach(d -> dishes.computeIfAbsent(d, k -> new ArrayList<>()).add(run));
            }
        }
        List<Asked> asked = new ArrayList<>();
        most(items, ITEMS).forEach(e -> {
            asked.add(new Asked(Exposure.Help.SECOND_GROWER, e.getKey(), e.getValue()));
            asked.add(new Asked(Exposure.Help.FROZEN_STOCK, e.getKey(), e.getValue()));
        });
        most(dishes, DISHES).forEach(e -> asked.add(new Asked(Exposure.Help.ANOTHER_DISH, e.getKey(), e.getValue())));
        return asked.stream().parallel().map(this::worth).filter(b -> b.cents() > 0).sorted(Comparator
                .comparingLong((Exposure.BackUp b) -> -b.cents()).thenComparing(Exposure.BackUp::help)
                .thenComparing(Exposure.BackUp::of)).toList();
    }

    private static List<Map.Entry<String, List<Integer>>> most(Map<String, List<Integer>> all, int n) {
        return all.entrySet().stream().sorted(Comparator.comparingInt((Map.Entry<String, List<Integer>> e) -> -e.getValue().size())
                .thenComparing(Map.Entry::getKey)).limit(n).toList();
    }

    /** Items that came short and that a dropped dish takes. */
    private List<String> shortItems(ExposureRun.Tried run) {
        WeekProblem p = week.problem();
        return run.shares().entrySet().stream().filter(e -> e.getValue() < 1)
                .map(e -> e.getKey().substring(e.getKey().indexOf('/') + 1)).distinct()
                .filter(i -> run.repaired().dropped().stream().anyMatch(s -> p.slots().get(s).candidates().get(week.menu()[s])
                        .loose().stream().anyMatch(n -> p.items().get(n.item()).id().equals(i)))).sorted().toList();
    }

    /** The mean over the runs that are looked at, spread over all runs. */
    private Exposure.BackUp worth(Asked asked) {
        List<Integer> looked = asked.hit.subList(0, Math.min(RUNS_EACH, asked.hit.size()));
        long gain = looked.stream().mapToLong(r -> Math.max(0, gain(asked, r))).sum();
        return new Exposure.BackUp(asked.help, asked.of, Math.round(gain / (double) looked.size() * asked.hit.size() / runs.size()),
                asked.hit.size());
    }

    private long gain(Asked asked, int r) {
        ExposureRun.Tried run = runs.get(r);
        WeekProblem p = week.yields().with(run.shares());
        if (asked.help == Exposure.Help.ANOTHER_DISH) {
            return standIn(asked.of, p, run) - run.outcome().value();
        }
        int item = IntStream.range(0, p.items().size()).filter(i -> p.items().get(i).id().equals(asked.of)).findFirst().orElseThrow();
        return (asked.help == Exposure.Help.SECOND_GROWER ? secondGrower(p, item, r) : frozen(p, item)) - run.outcome().value();
    }

    private long value(WeekProblem p, int[] packs) {
        return ExposureRun.outcome(p, new QuickRepair(p, packs).run(week.menu())).value();
    }

    private long secondGrower(WeekProblem p, int item, int r) {
        int[] packs = week.packs();
        int first = most(p, packs, item);
        if (first < 0 || new Random(r * 7919L + item).nextDouble() < FAILS) {
            return 0;
        }
        WeekProblem.Offer own = p.offers().get(first);
        int at = IntStream.range(0, packs.length).filter(o -> packs[o] > 0 && !p.offers().get(o).vendor().equals(own.vendor()))
                .map(o -> p.offers().get(o).delivery()).boxed().min(Comparator.comparingInt((Integer v) -> Math.abs(
                        p.deliveries().get(v).day() - p.deliveries().get(own.delivery()).day())).thenComparing(v -> v)).orElse(-1);
        if (at < 0) {
            return 0;
        }
        List<WeekProblem.Offer> offers = new ArrayList<>(p.offers());
        offers.add(new WeekProblem.Offer(p.deliveries().get(at).vendor(), item, at, own.pack(), own.packMg(),
                List.of(new WeekProblem.Tier(1, dearest(p, item, own.packMg()))), 0, Math.max(1, ordered(p, packs, item, own.packMg())),
                own.locality(), own.whyLocal(), false));
        int[] more = java.util.Arrays.copyOf(packs, packs.length + 1);
        return value(Problems.withSupply(p, offers, p.deliveries()), more);
    }

    private static int most(WeekProblem p, int[] packs, int item) {
        int best = -1;
        for (int o = 0; o < packs.length; o++) {
            best = packs[o] > 0 && p.offers().get(o).item() == item && (best < 0 || packs[o] > packs[best]) ? o : best;
        }
        return best;
    }

    private static int ordered(WeekProblem p, int[] packs, int item, long packMg) {
        long mg = IntStream.range(0, packs.length).filter(o -> p.offers().get(o).item() == item)
                .mapToLong(o -> packs[o] * p.offers().get(o).packMg()).sum();
        return Math.toIntExact((mg + packMg - 1) / packMg);
    }

    private long dearest(WeekProblem p, int item, long packMg) {
        return Math.round(week.problem().offers().stream().filter(o -> o.item() == item)
                .mapToDouble(o -> o.priceCents(1) / (double) o.packMg()).max().orElse(0) * packMg);
    }

    private long frozen(WeekProblem p, int item) {
        long need = java.util.Arrays.stream(croftboard.need.Workload.of(p, week.menu()).needMg()[item]).sum();
        List<WeekProblem.ItemStock> stock = new ArrayList<>(p.stock());
        stock.add(new WeekProblem.ItemStock(item, 0, p.days() - 1, need));
        WeekProblem with = new WeekProblem(p.name(), p.firstDay(), p.days(), p.openDays(), p.prepDays(), p.slots(), p.items(),
                p.components(), p.offers(), p.deliveries(), p.resources(), stock, p.componentStock(), p.looseStock(), p.prices(),
                p.constantCents());
        return value(with, week.packs()) - dearest(p, item, need);
    }

    private long standIn(String recipe, WeekProblem p, ExposureRun.Tried run) {
        WeekRun.Found best = run.repaired().found();
        for (int s : run.repaired().dropped()) {
            if (!week.dish(s).equals(recipe)) {
                continue;
            }
            WeekProblem.Slot slot = p.slots().get(s);
            WeekRun.Found from = best;
            List<int[]> menus = IntStream.range(0, slot.candidates().size()).filter(k -> k != week.menu()[s]).boxed()
                    .sorted(Comparator.comparingLong((Integer k) -> -slot.candidates().get(k).valueCents()).thenComparing(k -> k))
                    .map(k -> with(from.choice(), s, k)).filter(m -> free(p, m, s)).limit(STAND_INS).toList();
            for (int[] menu : menus) {
                best = Nearby.better(best, WeekRun.near(p, menu, from.packs()));
            }
        }
        return Account.of(p, best.choice(), best.packs()).value();
    }

    private static int[] with(int[] menu, int s, int k) {
        int[] other = menu.clone();
        other[s] = k;
        return other;
    }

    private static boolean free(WeekProblem p, int[] menu, int s) {
        return IntStream.range(0, menu.length).noneMatch(o -> o != s && Forced.near(p, s, o, menu));
    }
}
