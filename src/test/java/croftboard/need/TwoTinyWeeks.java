package croftboard.need;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Random problems of two weeks, two slots and two deliveries in each, small enough to try every menu with every order
 * ({@link Enumeration}). What is bought in the first week mostly lives into the second, and a dish of the first cannot
 * come back in the second within ten days.
 */
public final class TwoTinyWeeks {
    private static final int DAYS = 13;
    private static final int[] SERVED = {1, 4, 8, 11};
    private static final int[] DELIVERED = {0, 3, 7, 10};
    private static final int GAP = 10;
    private final Random g;

    private TwoTinyWeeks(long seed) {
        g = new Random(seed * 37 + 11);
    }

    public static WeekProblem of(long seed) {
        return new TwoTinyWeeks(seed).build("two tiny weeks " + seed);
    }

    /**
     * Lots of an item bought for known demands on five days of two weeks, at a set-up cost an order and so many cents for
     * each unit carried from one of the days to the next: as no plan pays for carrying, each day's price is lower by that.
     *
     * @param first price of a unit on the first day; a unit is a gram
     */
    public static WeekProblem lots(int[] demands, long setUp, long carrying, long first) {
        return lots(demands, setUp, carrying, first, DAYS);
    }

    /** @param life days that a unit lives after its delivery */
    public static WeekProblem lots(int[] demands, long setUp, long carrying, long first, int life) {
        int[] day = {0, 3, 5, 8, 11};
        List<WeekProblem.Slot> slots = new ArrayList<>();
        List<WeekProblem.Delivery> deliveries = new ArrayList<>();
        List<WeekProblem.Offer> offers = new ArrayList<>();
        for (int k = 0; k < day.length; k++) {
            slots.add(new WeekProblem.Slot("day-" + day[k], 0, new int[] {day[k]}, true, 0, false,
                    List.of(candidate(k, 0, List.of(new WeekProblem.Need(0, day[k], 1000L * demands[k]))))));
            deliveries.add(delivery(k, day[k], 0, setUp));
            offers.add(offer(0, k, 1, first - carrying * k, Arrays.stream(demands).sum(), false));
        }
        WeekProblem.Item item = new WeekProblem.Item("item", "item", life, DAYS + 30, Ratio.ZERO, Ratio.ZERO);
        return problem("lots", slots, List.of(item), offers, deliveries, List.of(), Ratio.ZERO);
    }

    private WeekProblem build(String name) {
        List<WeekProblem.Item> items = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Ratio kept = g.nextBoolean() ? Ratio.ZERO : Ratio.of(50 + g.nextInt(100), 1_000_000);
            items.add(new WeekProblem.Item("item-" + i, "item " + i, 2 + g.nextInt(9), DAYS + 1, kept,
                    g.nextBoolean() ? Ratio.ZERO : Ratio.of(1 + g.nextInt(40), 1_000_000)));
        }
        List<WeekProblem.Slot> slots = new ArrayList<>();
        for (int s = 0; s < SERVED.length; s++) {
            TreeSet<Integer> dishes = new TreeSet<>();
            while (dishes.size() < 2 + s % 2) {
                dishes.add(g.nextInt(4));
            }
            int day = SERVED[s];
            List<WeekProblem.Candidate> list = dishes.stream().map(d -> candidate(d, 600 + g.nextInt(900), List.of(
                    new WeekProblem.Need(0, day, 1000L * (100 + g.nextInt(300))),
                    new WeekProblem.Need(1, day, 1000L * (50 + g.nextInt(300)))))).toList();
            slots.add(new WeekProblem.Slot("day-" + day, s % 2, new int[] {day}, true, g.nextInt(300), true, list));
        }
        List<WeekProblem.Delivery> deliveries = new ArrayList<>();
        List<WeekProblem.Offer> offers = new ArrayList<>();
        for (int v = 0; v < DELIVERED.length; v++) {
            deliveries.add(delivery(v, DELIVERED[v], g.nextInt(3) == 0 ? 300 : 0, g.nextInt(120)));
            offers.add(offer(v % 2, v, 400 + 100 * g.nextInt(5), 250 + g.nextInt(250), 2, g.nextBoolean()));
            if (v < 2) {
                offers.add(offer(1 - v, v, 300 + 100 * g.nextInt(5), 250 + g.nextInt(250), 2, g.nextBoolean()));
            }
        }
        List<WeekProblem.ItemStock> stock = g.nextBoolean() ? List.of()
                : List.of(new WeekProblem.ItemStock(g.nextInt(2), 0, 2 + g.nextInt(9), 1000L * (100 + g.nextInt(400))));
        return problem(name, slots, items, offers, deliveries, stock, Ratio.of(g.nextInt(60), 100));
    }

    private static WeekProblem.Candidate candidate(int dish, long cents, List<WeekProblem.Need> needs) {
        return new WeekProblem.Candidate(dish, "dish-" + dish, 1, cents, 0, 0, needs, List.of(), List.of(), needs.stream()
                .map(n -> new WeekProblem.LooseNeed(n.item(), n.day(), n.day(), n.mg())).toList(), 0, 0, 0, 0, 0, List.of());
    }

    private static WeekProblem.Delivery delivery(int number, int day, long minimum, long fee) {
        return new WeekProblem.Delivery("vendor-" + number, day, LocalDate.of(2027, 1, 2).plusDays(day).atTime(12, 0),
                minimum, fee, false);
    }

    private static WeekProblem.Offer offer(int item, int delivery, int grams, long cents, int most, boolean local) {
        return new WeekProblem.Offer("vendor-" + delivery, item, delivery, grams + " g", 1000L * grams,
                List.of(new WeekProblem.Tier(1, cents)), 0, most,
                local ? WeekProblem.Locality.LOCAL : WeekProblem.Locality.NOT_LOCAL, "", true);
    }

    private static WeekProblem problem(String name, List<WeekProblem.Slot> slots, List<WeekProblem.Item> items,
            List<WeekProblem.Offer> offers, List<WeekProblem.Delivery> deliveries, List<WeekProblem.ItemStock> stock,
            Ratio localTarget) {
        boolean[] prep = new boolean[DAYS];
        Arrays.fill(prep, true);
        WeekProblem.Prices prices = new WeekProblem.Prices(GAP, List.of(), List.of(), localTarget, Ratio.of(30, 100),
                Ratio.ONE, Ratio.ZERO, Ratio.ZERO, -1, 0);
        return new WeekProblem(name, LocalDate.of(2027, 1, 4), DAYS, IntStream.range(0, DAYS).toArray(), prep, slots, items,
                List.of(), offers, deliveries, List.of(), stock, List.of(), List.of(), prices, 0);
    }
}
