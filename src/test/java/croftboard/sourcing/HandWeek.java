package croftboard.sourcing;

import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Problems written down by hand for tests: grams and cents, six days, no gap, nothing promised unless said. */
final class HandWeek {
    private static final int DAYS = 6;
    private final List<WeekProblem.Item> items = new ArrayList<>();
    private final List<WeekProblem.Delivery> deliveries = new ArrayList<>();
    private final List<WeekProblem.Offer> offers = new ArrayList<>();
    private final List<WeekProblem.Slot> slots = new ArrayList<>();
    private final List<WeekProblem.Resource> resources = new ArrayList<>();
    private Ratio localTarget = Ratio.ZERO;
    private Ratio localPrice = Ratio.ZERO;
    private int dockMinutes;

    /** A dish of a slot. @param needs item, day, grams; item, day, grams ... */
    record Dish(int number, long value, int... needs) { }

    HandWeek item(int lifeDays) {
        return item(lifeDays, Ratio.ZERO, Ratio.ZERO);
    }

    /** @param kept, waste cents a gram */
    HandWeek item(int lifeDays, Ratio kept, Ratio waste) {
        String id = "item-" + items.size();
        items.add(new WeekProblem.Item(id, id, lifeDays, DAYS + 1, kept.over(1000), waste.over(1000)));
        return this;
    }

    HandWeek delivery(int day, long minimum, long fee) {
        deliveries.add(new WeekProblem.Delivery("vendor-" + deliveries.size(), day,
                LocalDate.of(2027, 1, 2).atTime(12, 0), minimum, fee, false));
        return this;
    }

    HandWeek offer(int item, int delivery, int grams, long cents, int most) {
        return offer(item, delivery, grams, List.of(new WeekProblem.Tier(1, cents)), 0, most, false);
    }

    HandWeek offer(int item, int delivery, int grams, List<WeekProblem.Tier> tiers, int least, int most, boolean local) {
        offers.add(new WeekProblem.Offer("vendor-" + delivery, item, delivery, grams + " g", 1000L * grams, tiers, least,
                most, local ? WeekProblem.Locality.LOCAL : WeekProblem.Locality.NOT_LOCAL, "", true));
        return this;
    }

    /** A slot on one day that may stay empty for nothing. */
    HandWeek slot(int day, Dish... dishes) {
        List<WeekProblem.Candidate> candidates = Arrays.stream(dishes).map(HandWeek::candidate).toList();
        slots.add(new WeekProblem.Slot("day-" + day + "/line-" + slots.size(), slots.size(), new int[] {day}, true, 0,
                true, candidates));
        return this;
    }

    private static WeekProblem.Candidate candidate(Dish d) {
        List<WeekProblem.Need> needs = new ArrayList<>();
        List<WeekProblem.LooseNeed> loose = new ArrayList<>();
        for (int k = 0; k < d.needs.length; k += 3) {
            needs.add(new WeekProblem.Need(d.needs[k], d.needs[k + 1], 1000L * d.needs[k + 2]));
            loose.add(new WeekProblem.LooseNeed(d.needs[k], d.needs[k + 1], d.needs[k + 1], 1000L * d.needs[k + 2]));
        }
        return new WeekProblem.Candidate(d.number, "dish-" + d.number, 1, d.value, 0, 0, needs, List.of(), List.of(),
                loose, 0, 0, 0, 0, 0, List.of());
    }

    HandWeek local(Ratio target, Ratio price) {
        localTarget = target;
        localPrice = price;
        return this;
    }

    /** Each delivery takes so many minutes of a dock that has so many a day, and overtime at $12.00 an hour. */
    HandWeek dock(int minutesEach, long minutesADay, long overtime) {
        dockMinutes = minutesEach;
        long[] regular = new long[DAYS];
        Arrays.fill(regular, minutesADay);
        long[] more = new long[DAYS];
        Arrays.fill(more, overtime);
        resources.add(new WeekProblem.Resource("dock", "dock", false, IntStream.range(0, DAYS).toArray(), regular, more,
                1200, false));
        return this;
    }

    WeekProblem build() {
        boolean[] prep = new boolean[DAYS];
        Arrays.fill(prep, true);
        WeekProblem.Prices prices = new WeekProblem.Prices(0, List.of(), List.of(), localTarget, localPrice, Ratio.ONE,
                Ratio.ZERO, Ratio.ZERO, resources.isEmpty() ? -1 : 0, dockMinutes);
        return new WeekProblem("by hand", LocalDate.of(2027, 1, 4), DAYS, IntStream.range(0, DAYS).toArray(), prep,
                slots, items, List.of(), offers, deliveries, resources, List.of(), List.of(), List.of(), prices, 0);
    }
}
