package croftboard.need;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * Random weeks of published shape: 8 daily lines and 3 lines of three days' run (54 slots), 170 recipes, 60 ingredients,
 * 14 vendors; a smaller one of 30 slots and a month of 216. The order of random draws is fixed, so that a seed always
 * gives the same week and figures can be compared over time.
 */
public final class RandomWeek {
    private static final double[] TYPE_SHARE = {.32, .22, .14, .20, .12};
    private static final double[] PRICE = {1050, 480, 600, 700, 520};
    private static final double[] BASE = {60, 60, 65, 70, 55, 50, 45, 50};
    private static final double[] DAY = {.9, .95, 1, 1.05, 1.2, 1.15};
    private static final double[] SIZES = {250, 500, 1000, 1500, 2000, 2500, 3000, 5000, 7500, 10000};
    private static final int LIMITS = 5;

    private final Random g;
    private final int weeks;
    private final int recipes;
    private final int items;
    private final int vendors;
    private final int perVendor;
    private final boolean small;
    private final int days;
    private int[] life;
    private double[] keep;
    private double[] price;
    private int[] type;
    private boolean[] vegan;
    private boolean[] free3;
    private int[] main;
    private int[][] ring;
    private double[][] gramsEach;
    private double[] draw;
    private double[] recipePrice;
    private double[][] recipeUse;
    private final List<int[]> slotDays = new ArrayList<>();
    private final List<int[]> slotFacts = new ArrayList<>();
    private final List<List<WeekProblem.Candidate>> candidates = new ArrayList<>();
    private double[] total;
    private final List<int[]> offers = new ArrayList<>();
    private final List<Long> offerPrice = new ArrayList<>();

    private RandomWeek(long seed, int weeks, int recipes, int items, int vendors, int perVendor, boolean small) {
        this.g = new Random(seed * 7919 + 13);
        this.weeks = weeks;
        this.recipes = recipes;
        this.items = items;
        this.vendors = vendors;
        this.perVendor = perVendor;
        this.small = small;
        this.days = 7 * weeks - 1;
    }

    /** 54 slots. */
    public static WeekProblem week(long seed) {
        return new RandomWeek(seed, 1, 170, 60, 14, 14, false).build("week " + seed);
    }

    /** 30 slots. */
    public static WeekProblem small(long seed) {
        return new RandomWeek(seed, 1, 90, 40, 9, 9, true).build("small week " + seed);
    }

    /** 54 slots in each of so many weeks; four make the month of 216. */
    public static WeekProblem weeks(long seed, int weeks) {
        return new RandomWeek(seed, weeks, 170, 60, 14, 14, false).build(weeks + " weeks " + seed);
    }

    private WeekProblem build(String name) {
        makeItems();
        makeRecipes();
        makeSlots();
        long[][] cap = capacity();
        long[] minimum = new long[vendors];
        long[] fee = new long[vendors];
        makeVendors(minimum, fee);
        fillGaps();
        return assemble(name, cap, minimum, fee);
    }

    private void makeItems() {
        life = new int[items];
        keep = new double[items];
        price = new double[items];
        for (int i = 0; i < items; i++) {
            double u = g.nextDouble();
            life[i] = u < .2 ? 2 : u < .4 ? 3 : u < .55 ? 4 : u < .65 ? 5 : u < .8 ? 7 : u < .9 ? 10 : 14;
            keep[i] = life[i] >= 7 ? (life[i] >= 10 ? .8 : .6) * (.8 + .2 * g.nextDouble()) : 0;
            price[i] = 0.38 * Math.exp(g.nextGaussian() * .55) + 0.18;
        }
    }

    private void makeRecipes() {
        type = new int[recipes];
        int c = 0;
        for (int t = 0; t < 5; t++) {
            int end = t == 4 ? recipes : c + (int) Math.round(TYPE_SHARE[t] * recipes);
            for (; c < end && c < recipes; c++) {
                type[c] = t;
            }
        }
        vegan = new boolean[recipes];
        free3 = new boolean[recipes];
        main = new int[recipes];
        ring = new int[recipes][];
        gramsEach = new double[recipes][5];
        draw = new double[recipes];
        recipePrice = new double[recipes];
        recipeUse = new double[recipes][5];
        double[] popular = new double[items];
        double sum = 0;
        for (int i = 0; i < items; i++) {
            popular[i] = .3 + g.nextDouble();
            sum += popular[i];
        }
        for (int r = 0; r < recipes; r++) {
            recipe(r, popular, sum);
        }
    }

    private void recipe(int r, double[] popular, double sum) {
        int t = type[r];
        vegan[r] = g.nextDouble() < .3;
        free3[r] = g.nextDouble() < .35;
        main[r] = g.nextInt(12);
        Set<Integer> chosen = new LinkedHashSet<>();
        while (chosen.size() < 5) {
            double u = g.nextDouble() * sum;
            int i = 0;
            while (u > popular[i] && i < items - 1) {
                u -= popular[i];
                i++;
            }
            chosen.add(i);
        }
        ring[r] = chosen.stream().mapToInt(x -> x).toArray();
        double[] grams = {85, 50, 30, 18, 10};
        double factor = t == 0 ? 1 : t == 1 ? .75 : t == 2 ? .8 : t == 3 ? .9 : .6;
        for (int j = 0; j < 5; j++) {
            gramsEach[r][j] = grams[j] * factor * (.6 + .8 * g.nextDouble());
        }
        draw[r] = .75 + .5 * g.nextDouble();
        recipePrice[r] = PRICE[t] * (.85 + .3 * g.nextDouble());
        recipeUse[r][0] = t == 0 || t == 2 || t == 1 ? 40 + 60 * g.nextDouble() : 10;
        recipeUse[r][1] = t == 3 ? 40 + 60 * g.nextDouble() : 15 + 20 * g.nextDouble();
        recipeUse[r][2] = t == 4 ? 60 + 60 * g.nextDouble() : 8 * g.nextDouble();
        recipeUse[r][3] = (t == 0 || t == 1 || t == 4) && g.nextDouble() < .6 ? 1 + g.nextInt(2) : 0;
        recipeUse[r][4] = t == 2 || (t < 2 && g.nextDouble() < .3) ? 1 : 0;
    }

    private void makeSlots() {
        int[] daily = small ? new int[] {0, 1, 2, 3} : new int[] {0, 0, 1, 1, 2, 3, 3, 4};
        int[] long3 = {3, 4, 1};
        for (int w = 0; w < weeks; w++) {
            for (int d = 0; d < 6; d++) {
                for (int l = 0; l < daily.length; l++) {
                    slotDays.add(new int[] {7 * w + d});
                    slotFacts.add(new int[] {daily[l], l});
                }
            }
            for (int l = 0; l < long3.length; l++) {
                for (int h = 0; h < 2; h++) {
                    int b = 7 * w + 3 * h;
                    slotDays.add(new int[] {b, b + 1, b + 2});
                    slotFacts.add(new int[] {long3[l], daily.length + l});
                }
            }
        }
        double[] lineFactor = new double[16];
        for (int l = 0; l < 16; l++) {
            lineFactor[l] = .85 + .3 * g.nextDouble();
        }
        Map<Integer, int[]> lineDishes = new TreeMap<>();
        total = new double[items];
        for (int s = 0; s < slotDays.size(); s++) {
            slot(s, lineFactor, lineDishes, daily.length);
        }
    }

    private void slot(int s, double[] lineFactor, Map<Integer, int[]> lineDishes, int daily) {
        int t = slotFacts.get(s)[0];
        int l = slotFacts.get(s)[1];
        int[] dishes = lineDishes.get(l);
        if (dishes == null) {
            List<Integer> all = new ArrayList<>();
            for (int r = 0; r < recipes; r++) {
                if (type[r] == t) {
                    all.add(r);
                }
            }
            Collections.shuffle(all, g);
            int n = Math.min(all.size(), small ? 30 : 40);
            dishes = all.subList(0, n).stream().mapToInt(x -> x).sorted().toArray();
            lineDishes.put(l, dishes);
        }
        double part = l >= daily ? .45 : 1;
        List<WeekProblem.Candidate> list = new ArrayList<>();
        for (int r : dishes) {
            list.add(candidate(s, r, l, part, lineFactor, dishes.length));
        }
        candidates.add(list);
    }

    private WeekProblem.Candidate candidate(int s, int r, int l, double part, double[] lineFactor, int n) {
        int[] on = slotDays.get(s);
        long value = 0;
        double q = 0;
        for (int d : on) {
            q = Math.round(BASE[Math.min(l, 7)] * DAY[d % 7] * lineFactor[l] * draw[r] * part
                    * (.93 + .14 * g.nextDouble()));
            value += Math.round(q * recipePrice[r] * .92 - (recipeUse[r][0] + recipeUse[r][1] + recipeUse[r][2]) * 45);
        }
        List<WeekProblem.Need> needs = new ArrayList<>();
        List<WeekProblem.LooseNeed> loose = new ArrayList<>();
        for (int j = 0; j < 5; j++) {
            int grams = (int) Math.round(q * gramsEach[r][j]);
            total[ring[r][j]] += grams * on.length / (double) n / weeks;
            for (int d : on) {
                needs.add(new WeekProblem.Need(ring[r][j], d, 1000L * grams));
                loose.add(new WeekProblem.LooseNeed(ring[r][j], d, d, 1000L * grams));
            }
        }
        List<WeekProblem.Use> uses = new ArrayList<>();
        for (int x = 0; x < LIMITS; x++) {
            int units = (int) Math.ceil(recipeUse[r][x] * (x < 3 ? part : 1));
            for (int d : on) {
                if (units > 0) {
                    uses.add(new WeekProblem.Use(x, d, units));
                }
            }
        }
        long covers = (vegan[r] && type[r] == 0 ? 1 : 0) | (free3[r] ? 2 : 0);
        return new WeekProblem.Candidate(r, "dish-" + r, (int) q, value, 0, 0, needs, uses, List.of(), loose, 0,
                covers, main[r], 0, 0, List.of());
    }

    private long[][] capacity() {
        long[][] cap = new long[LIMITS][days];
        for (int x = 0; x < LIMITS; x++) {
            for (int d = 0; d < days; d++) {
                double mean = 0;
                for (int s = 0; s < slotDays.size(); s++) {
                    for (int on : slotDays.get(s)) {
                        if (on == d) {
                            mean += meanUse(candidates.get(s), x, d);
                        }
                    }
                }
                cap[x][d] = x < 3 ? Math.round(mean * 1.03) : Math.round(mean + .5);
            }
        }
        return cap;
    }

    private static double meanUse(List<WeekProblem.Candidate> dishes, int x, int d) {
        double sum = 0;
        for (WeekProblem.Candidate c : dishes) {
            for (WeekProblem.Use u : c.uses()) {
                sum += u.resource() == x && u.day() == d ? u.units() : 0;
            }
        }
        return sum / dishes.size();
    }

    private boolean local(int vendor) {
        return vendor < vendors * 6 / 10;
    }

    private void makeVendors(long[] minimum, long[] fee) {
        for (int v = 0; v < vendors; v++) {
            minimum[v] = local(v) ? 3000 + 500 * g.nextInt(11) : 10000 + 1000 * g.nextInt(11);
            fee[v] = local(v) ? 100 * g.nextInt(13) : 500 + 100 * g.nextInt(16);
            int howMany = 2 + g.nextInt(2);
            List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5));
            Collections.shuffle(order, g);
            List<Integer> on = new ArrayList<>(order.subList(0, howMany));
            Collections.sort(on);
            if (!local(v) && !on.contains(0)) {
                on.set(0, 0);
            }
            int n = small ? (local(v) ? 7 : 13) : local(v) ? perVendor - 2 : perVendor + 6;
            Set<Integer> sold = new LinkedHashSet<>();
            while (sold.size() < Math.min(n, items)) {
                sold.add(g.nextInt(items));
            }
            for (int i : sold) {
                offer(v, i, on, price[i]);
            }
        }
    }

    private void offer(int v, int i, List<Integer> on, double centsPerGram) {
        double target = total[i] / (1.5 + 6 * g.nextDouble()) * (local(v) ? .8 : 1.3);
        int best = 0;
        for (int q = 0; q < SIZES.length; q++) {
            if (Math.abs(Math.log(SIZES[q] / target)) < Math.abs(Math.log(SIZES[best] / target))) {
                best = q;
            }
        }
        double factor = (local(v) ? 1.05 : .92) * (.85 + .3 * g.nextDouble());
        for (int w = 0; w < weeks; w++) {
            for (int t : on) {
                long cents = Math.round(centsPerGram * SIZES[best] * factor * (.95 + .1 * g.nextDouble()));
                int most = local(v) ? 1 + g.nextInt(5) : 6 + g.nextInt(10);
                offers.add(new int[] {i, v, 7 * w + t, (int) SIZES[best], most});
                offerPrice.add(cents);
            }
        }
    }

    /** Every item can be had for every day: the last two vendors fill in. */
    private void fillGaps() {
        for (int i = 0; i < items; i++) {
            int item = i;
            boolean first = offers.stream().anyMatch(o -> o[0] == item && o[2] == 0);
            if (!first) {
                int v = vendors - 1 - g.nextInt(2);
                offer(v, i, new ArrayList<>(List.of(0, 3)), price[i] * 1.1);
            }
            boolean[] reached = new boolean[7];
            for (int[] o : offers) {
                if (o[0] == i && o[2] < 7) {
                    for (int d = o[2]; d <= Math.min(6, o[2] + life[i]); d++) {
                        reached[d] = true;
                    }
                }
            }
            for (int d = 0; d < 6; d++) {
                if (!reached[d]) {
                    int v = vendors - 1 - g.nextInt(2);
                    offer(v, i, new ArrayList<>(List.of(d)), price[i] * 1.15);
                    for (int e = d; e <= Math.min(6, d + life[i]); e++) {
                        reached[e] = true;
                    }
                }
            }
        }
    }

    private WeekProblem assemble(String name, long[][] cap, long[] minimum, long[] fee) {
        TreeMap<Integer, Integer> number = new TreeMap<>();
        offers.forEach(o -> number.put(o[1] * 1000 + o[2], 0));
        List<WeekProblem.Delivery> deliveries = new ArrayList<>();
        LocalDate monday = LocalDate.of(2027, 1, 4);
        number.replaceAll((key, old) -> {
            int v = key / 1000;
            deliveries.add(new WeekProblem.Delivery("vendor-" + v, key % 1000,
                    monday.plusDays(key % 1000 - 2L).atTime(12, 0), minimum[v], fee[v], false));
            return deliveries.size() - 1;
        });
        List<WeekProblem.Offer> all = new ArrayList<>();
        for (int o = 0; o < offers.size(); o++) {
            int[] a = offers.get(o);
            all.add(new WeekProblem.Offer("vendor-" + a[1], a[0], number.get(a[1] * 1000 + a[2]), a[3] + " g pack",
                    1000L * a[3], List.of(new WeekProblem.Tier(1, offerPrice.get(o))), 0, a[4],
                    local(a[1]) ? WeekProblem.Locality.LOCAL : WeekProblem.Locality.NOT_LOCAL, "", false));
        }
        List<WeekProblem.Slot> slots = new ArrayList<>();
        for (int s = 0; s < slotDays.size(); s++) {
            slots.add(new WeekProblem.Slot("day-" + slotDays.get(s)[0] + "/line-" + slotFacts.get(s)[1],
                    slotFacts.get(s)[1], slotDays.get(s), true, 15000, true, List.copyOf(candidates.get(s))));
        }
        int[] open = java.util.stream.IntStream.range(0, days).filter(d -> d % 7 < 6).toArray();
        boolean[] prep = new boolean[days];
        for (int d : open) {
            prep[d] = true;
        }
        WeekProblem.Prices prices = new WeekProblem.Prices(weeks == 1 ? 7 : 10,
                List.of(new WeekProblem.CoverageRule("vegan-main", 1, 4000),
                        new WeekProblem.CoverageRule("free-three", 2, 3000)),
                List.of(new WeekProblem.VarietyRule(0, false, 2, 1500)), Ratio.of(45, 100), Ratio.of(30, 100),
                Ratio.ONE, Ratio.ZERO, Ratio.ZERO, -1, 0);
        return new WeekProblem(name, monday, days, open, prep, slots, itemList(), List.of(), all, deliveries,
                resources(cap), List.of(), List.of(), List.of(), prices, 0);
    }

    private List<WeekProblem.Item> itemList() {
        List<WeekProblem.Item> list = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            double cheapest = Double.MAX_VALUE;
            for (int o = 0; o < offers.size(); o++) {
                if (offers.get(o)[0] == i) {
                    cheapest = Math.min(cheapest, offerPrice.get(o) / (double) offers.get(o)[3]);
                }
            }
            Ratio kept = Ratio.of(Math.round(keep[i] * cheapest * 1e6), 1_000_000_000L);
            list.add(new WeekProblem.Item("item-" + i, "item " + i, life[i], days + 1, kept, Ratio.ZERO));
        }
        return list;
    }

    private List<WeekProblem.Resource> resources(long[][] cap) {
        List<WeekProblem.Resource> list = new ArrayList<>();
        int[] period = java.util.stream.IntStream.range(0, days).toArray();
        String[] names = {"hot", "cold", "bake", "oven", "kettle"};
        for (int x = 0; x < LIMITS; x++) {
            list.add(new WeekProblem.Resource(names[x], names[x], false, period, cap[x], new long[days], 0, false));
        }
        return list;
    }
}
