package croftboard.need;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;

/**
 * Random problems of three slots and three or four offers, small enough to try every menu with every order
 * ({@link Enumeration}). Each holds something of all that makes orders hard: minimums, fees, price breaks, commitments,
 * stock, short lives, a shared component made in whole steps, a dock with few minutes, overtime and promises.
 */
public final class TinyWeek {
    private static final int DAYS = 4;
    private static final int STATION = 0;
    private static final int OVEN = 1;
    private static final int DOCK = 2;
    private final Random g;
    private final int items;
    private final boolean[] prep = new boolean[DAYS];
    private WeekProblem.Component sauce;

    private TinyWeek(long seed) {
        g = new Random(seed * 31 + 5);
        items = 2 + g.nextInt(2);
        Arrays.fill(prep, true);
        prep[1 + g.nextInt(3)] = g.nextBoolean();
    }

    public static WeekProblem of(long seed) {
        return new TinyWeek(seed).build("tiny week " + seed);
    }

    private WeekProblem build(String name) {
        sauce = sauce();
        List<WeekProblem.Slot> slots = List.of(slot(0), slot(1), slot(2));
        List<WeekProblem.Delivery> deliveries = deliveries();
        List<WeekProblem.Offer> offers = offers(deliveries);
        List<WeekProblem.ComponentStock> made = new ArrayList<>();
        List<WeekProblem.ItemStock> loose = new ArrayList<>();
        if (g.nextInt(3) == 0) {
            long mg = mg(100, 600);
            made.add(new WeekProblem.ComponentStock(0, 0, 1 + g.nextInt(3), mg));
            sauce.perStep().forEach(n -> loose.add(
                    new WeekProblem.ItemStock(n.item(), 0, DAYS - 1, Ratio.of(n.mg() * mg, sauce.stepMg()).ceil())));
        }
        int[] open = slots.stream().flatMapToInt(s -> Arrays.stream(s.serviceDays())).distinct().sorted().toArray();
        return new WeekProblem(name, LocalDate.of(2027, 1, 4), DAYS, open, prep, slots, items(), List.of(sauce), offers,
                deliveries, resources(), stock(), made, loose, prices(), g.nextInt(3) == 0 ? 700 : 0);
    }

    private long mg(int fromGrams, int toGrams) {
        return 1000L * (fromGrams + g.nextInt(toGrams - fromGrams)) + g.nextInt(1000);
    }

    private WeekProblem.Component sauce() {
        List<WeekProblem.StepUse> uses = new ArrayList<>(List.of(new WeekProblem.StepUse(STATION, 5 + g.nextInt(20), 2)));
        if (g.nextBoolean()) {
            uses.add(new WeekProblem.StepUse(OVEN, 1, 1));
        }
        int lead = g.nextInt(2);
        return new WeekProblem.Component("sauce", 1 + lead + g.nextInt(3), lead, mg(200, 600), Ratio.of(1, 2),
                List.of(new WeekProblem.StepNeed(g.nextInt(items), g.nextInt(2), mg(100, 500))), List.of(), uses,
                Ratio.of(g.nextInt(100), 3));
    }

    private WeekProblem.Slot slot(int s) {
        int first = Math.min(1 + g.nextInt(3), DAYS - 1);
        int last = Math.min(DAYS - 1, first + g.nextInt(2));
        int[] days = java.util.stream.IntStream.rangeClosed(first, last).toArray();
        TreeSet<Integer> dishes = new TreeSet<>();
        int n = 1 + g.nextInt(4);
        while (dishes.size() < n) {
            dishes.add(g.nextInt(6));
        }
        List<WeekProblem.Candidate> list = dishes.stream().map(d -> candidate(d, days)).toList();
        return new WeekProblem.Slot("day-" + first + "/line-" + s, g.nextInt(2), days, g.nextInt(5) > 0,
                g.nextInt(400), g.nextInt(12) > 0, list);
    }

    private WeekProblem.Candidate candidate(int dish, int[] days) {
        List<WeekProblem.Need> needs = new ArrayList<>();
        List<WeekProblem.LooseNeed> loose = new ArrayList<>();
        List<WeekProblem.Use> uses = new ArrayList<>();
        List<WeekProblem.Demand> demands = new ArrayList<>();
        for (int day : days) {
            for (int k = 0; k <= g.nextInt(2); k++) {
                int item = g.nextInt(items);
                long mg = mg(80, 450);
                int on = Math.max(0, day - g.nextInt(2));
                needs.add(new WeekProblem.Need(item, on, mg));
                loose.add(new WeekProblem.LooseNeed(item, on, on, mg));
            }
            uses.add(new WeekProblem.Use(STATION, day, 10 + g.nextInt(25)));
        }
        uses.add(new WeekProblem.Use(OVEN, days[0], g.nextInt(3)));
        long looseStaples = g.nextInt(3) > 0 ? sauced(days, demands, loose) : 0;
        long staples = g.nextInt(50);
        return new WeekProblem.Candidate(dish, "dish-" + dish, 10, 700 + g.nextInt(2600), g.nextInt(80), staples, needs,
                uses, demands, loose, looseStaples, g.nextInt(4), g.nextInt(2), g.nextInt(2), g.nextInt(2), List.of());
    }

    /** Sauce for each day of the dish. @return its staples in cents, unrounded batches, rounded down */
    private long sauced(int[] days, List<WeekProblem.Demand> demands, List<WeekProblem.LooseNeed> loose) {
        long all = 0;
        for (int day : days) {
            long mg = mg(50, 500);
            all += mg;
            demands.add(new WeekProblem.Demand(0, day, day, mg));
            for (WeekProblem.StepNeed n : sauce.perStep()) {
                int first = Math.max(0, day - sauce.lifeDays() + 1 - n.aheadDays());
                int last = Math.max(0, day - sauce.leadDays() - n.aheadDays());
                loose.add(new WeekProblem.LooseNeed(n.item(), Math.min(first, last), last,
                        Ratio.of(n.mg() * mg, sauce.stepMg()).floor()));
            }
        }
        return sauce.stapleCentsPerStep().times(all).over(sauce.stepMg()).floor();
    }

    private List<WeekProblem.Item> items() {
        List<WeekProblem.Item> all = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            int life = g.nextInt(4) == 0 ? g.nextInt(2) : 2 + g.nextInt(4);
            Ratio kept = g.nextBoolean() ? Ratio.ZERO : Ratio.of(100 + g.nextInt(200), 1_000_000);
            Ratio waste = g.nextInt(3) > 0 ? Ratio.ZERO : Ratio.of(1 + g.nextInt(60), 1_000_000);
            all.add(new WeekProblem.Item("item-" + i, "item " + i, life, DAYS + 1, kept, waste));
        }
        return all;
    }

    private List<WeekProblem.Delivery> deliveries() {
        List<WeekProblem.Delivery> all = new ArrayList<>();
        LocalDate monday = LocalDate.of(2027, 1, 4);
        int n = 2 + g.nextInt(2);
        for (int v = 0; v < n; v++) {
            int day = v == 0 ? 0 : g.nextInt(3);
            all.add(new WeekProblem.Delivery("vendor-" + v, day, monday.plusDays(day - 2L).atTime(12, 0),
                    g.nextInt(3) == 0 ? 0 : 200 + g.nextInt(1200), g.nextBoolean() ? 0 : g.nextInt(300), false));
        }
        return all;
    }

    private List<WeekProblem.Offer> offers(List<WeekProblem.Delivery> deliveries) {
        List<WeekProblem.Offer> all = new ArrayList<>();
        int n = 3 + g.nextInt(2);
        WeekProblem.Locality[] local = new WeekProblem.Locality[deliveries.size()];
        for (int v = 0; v < local.length; v++) {
            local[v] = WeekProblem.Locality.values()[g.nextInt(3)];
        }
        for (int o = 0; o < n; o++) {
            int delivery = o < items && g.nextInt(3) > 0 ? 0 : g.nextInt(deliveries.size());
            long mg = mg(300, 1600);
            long price = 100 + mg / 2500 + g.nextInt(150);
            List<WeekProblem.Tier> tiers = new ArrayList<>(List.of(new WeekProblem.Tier(1, price)));
            if (g.nextInt(3) == 0) {
                tiers.add(new WeekProblem.Tier(2 + g.nextInt(2), price * (60 + g.nextInt(35)) / 100));
            }
            int most = 1 + g.nextInt(3) + g.nextInt(2);
            int least = g.nextInt(9) == 0 ? 1 : 0;
            all.add(new WeekProblem.Offer("vendor-" + delivery, o < items ? o : g.nextInt(items), delivery, "pack", mg,
                    List.copyOf(tiers), least, most, local[delivery], "", true));
        }
        return all;
    }

    private List<WeekProblem.Resource> resources() {
        int[] daily = {0, 1, 2, 3};
        long[] hands = new long[DAYS];
        for (int d = 0; d < DAYS; d++) {
            hands[d] = prep[d] ? 30 + g.nextInt(60) : 0;
        }
        long dock = g.nextInt(4) == 0 ? 10 : 25;
        return List.of(
                new WeekProblem.Resource("hot", "hot", true, daily, hands, fill(30 + g.nextInt(60)), g.nextInt(1500), false),
                new WeekProblem.Resource("oven", "oven", false, new int[DAYS], new long[] {4 + g.nextInt(9)},
                        new long[] {0}, 0, false),
                new WeekProblem.Resource("dock", "dock", false, daily, fill(dock), fill(g.nextInt(20)), 1200, false));
    }

    private static long[] fill(long value) {
        long[] all = new long[DAYS];
        Arrays.fill(all, value);
        return all;
    }

    private List<WeekProblem.ItemStock> stock() {
        List<WeekProblem.ItemStock> all = new ArrayList<>();
        for (int k = 0; k < g.nextInt(3); k++) {
            int from = g.nextInt(2);
            all.add(new WeekProblem.ItemStock(g.nextInt(items), from, from + g.nextInt(6), mg(50, 500)));
        }
        return all;
    }

    private WeekProblem.Prices prices() {
        int dock = g.nextInt(3) == 0 ? -1 : g.nextInt(4) == 0 ? STATION : DOCK;
        return new WeekProblem.Prices(1 + g.nextInt(3), List.of(new WeekProblem.CoverageRule("vegan", 1, g.nextInt(200)),
                new WeekProblem.CoverageRule("free", 1, g.nextInt(200))),
                List.of(new WeekProblem.VarietyRule(0, false, 1, g.nextInt(150)),
                        new WeekProblem.VarietyRule(1, true, 0, g.nextInt(150))),
                Ratio.of(g.nextInt(70), 100), Ratio.of(g.nextInt(60), 100),
                g.nextBoolean() ? Ratio.ONE : Ratio.of(10 + g.nextInt(30), 100), Ratio.of(g.nextInt(50), 100),
                g.nextBoolean() ? Ratio.ZERO : Ratio.of(g.nextInt(80), 10), dock, 9 + g.nextInt(6));
    }
}
