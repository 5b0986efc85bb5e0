package croftboard.need;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A week's problem written by hand, number by number: seven days, all open, all prep days, no promise with a
 * price, unless said otherwise. The methods that add something return its number.
 */
final class HandWeek {
    static final int DAYS = 7;
    private final boolean[] prep = new boolean[DAYS];
    private final List<WeekProblem.Slot> slots = new ArrayList<>();
    private final List<WeekProblem.Item> items = new ArrayList<>();
    private final List<WeekProblem.Component> components = new ArrayList<>();
    private final List<WeekProblem.Offer> offers = new ArrayList<>();
    private final List<WeekProblem.Delivery> deliveries = new ArrayList<>();
    private final List<WeekProblem.Resource> resources = new ArrayList<>();
    private final List<WeekProblem.ItemStock> stock = new ArrayList<>();
    private final List<WeekProblem.ComponentStock> componentStock = new ArrayList<>();
    private final List<WeekProblem.CoverageRule> coverage = new ArrayList<>();
    private final List<WeekProblem.VarietyRule> variety = new ArrayList<>();
    private int[] open = IntStream.range(0, DAYS).toArray();
    private Ratio localTarget = Ratio.ZERO;
    private Ratio localPrice = Ratio.ZERO;
    private Ratio foodCost = Ratio.ONE;
    private Ratio foodCostPrice = Ratio.ZERO;
    private Ratio evenness = Ratio.ZERO;
    private int dock = -1;
    private int dockMinutes;
    private long events;

    HandWeek() {
        Arrays.fill(prep, true);
    }

    HandWeek noPrepOn(int day) {
        prep[day] = false;
        return this;
    }

    HandWeek openOn(int... days) {
        open = days;
        return this;
    }

    HandWeek events(long cents) {
        events = cents;
        return this;
    }

    /** Surplus keeps when it is usable on the day after the week. */
    int item(int life, Ratio kept, Ratio waste) {
        items.add(new WeekProblem.Item("item-" + items.size(), "item", life, DAYS, kept, waste));
        return items.size() - 1;
    }

    int item(int life) {
        return item(life, Ratio.ZERO, Ratio.ZERO);
    }

    int component(int life, int lead, long stepMg, Made made) {
        components.add(new WeekProblem.Component("part-" + components.size(), life, lead, stepMg, Ratio.of(1, 4),
                made.needs, made.parts, made.uses, made.staples));
        return components.size() - 1;
    }

    /** A station with the same minutes each day. */
    int station(long minutes, long overtime, long centsPerHour) {
        return resource(true, minutes, overtime, centsPerHour, false);
    }

    int equipment(long units, boolean held) {
        return resource(false, units, 0, 0, held);
    }

    private int resource(boolean hands, long regular, long overtime, long centsPerHour, boolean held) {
        long[] units = new long[DAYS];
        long[] more = new long[DAYS];
        Arrays.fill(units, regular);
        Arrays.fill(more, overtime);
        resources.add(new WeekProblem.Resource("r" + resources.size(), "resource", hands,
                IntStream.range(0, DAYS).toArray(),
                units, more, centsPerHour, held));
        return resources.size() - 1;
    }

    int slot(int line, int[] days, WeekProblem.Candidate... dishes) {
        slots.add(new WeekProblem.Slot("slot-" + slots.size(), line, days, true, 15_000, true, List.of(dishes)));
        return slots.size() - 1;
    }

    /** A standing dish or an event: takes no part in the rules. */
    int fixedSlot(int line, int[] days, WeekProblem.Candidate dish) {
        slots.add(new WeekProblem.Slot("slot-" + slots.size(), line, days, false, 15_000, true, List.of(dish)));
        return slots.size() - 1;
    }

    int delivery(int day, long fee) {
        deliveries.add(new WeekProblem.Delivery("vendor-" + deliveries.size(), day,
                LocalDate.of(2027, 1, 4).plusDays(day - 2L).atTime(12, 0), 0, fee, false));
        return deliveries.size() - 1;
    }

    int offer(int item, int delivery, long packMg, WeekProblem.Locality locality, WeekProblem.Tier... tiers) {
        offers.add(new WeekProblem.Offer(deliveries.get(delivery).vendor(), item, delivery, "case", packMg,
                List.of(tiers), 0,
                99, locality, "", false));
        return offers.size() - 1;
    }

    int offer(int item, int delivery, long packMg, long cents) {
        return offer(item, delivery, packMg, WeekProblem.Locality.LOCAL, new WeekProblem.Tier(1, cents));
    }

    HandWeek stock(int item, int from, int until, long mg) {
        stock.add(new WeekProblem.ItemStock(item, from, until, mg));
        return this;
    }

    HandWeek componentStock(int component, int from, int until, long mg) {
        componentStock.add(new WeekProblem.ComponentStock(component, from, until, mg));
        return this;
    }

    HandWeek covering(int atLeast, long centsEach) {
        coverage.add(new WeekProblem.CoverageRule("rule-" + coverage.size(), atLeast, centsEach));
        return this;
    }

    HandWeek varying(int trait, boolean nextDay, int atMost, long centsEach) {
        variety.add(new WeekProblem.VarietyRule(trait, nextDay, atMost, centsEach));
        return this;
    }

    HandWeek localShare(Ratio target, Ratio price) {
        localTarget = target;
        localPrice = price;
        return this;
    }

    HandWeek foodCost(Ratio atMost, Ratio price) {
        foodCost = atMost;
        foodCostPrice = price;
        return this;
    }

    HandWeek evenness(Ratio centsPerMinute) {
        evenness = centsPerMinute;
        return this;
    }

    HandWeek receiving(int resource, int minutes) {
        dock = resource;
        dockMinutes = minutes;
        return this;
    }

    WeekProblem build() {
        return new WeekProblem("hand", LocalDate.of(2027, 1, 4), DAYS, open, prep, slots, items, components, offers,
                deliveries, resources, stock, componentStock, List.of(), new WeekProblem.Prices(7, coverage, variety,
                localTarget, localPrice, foodCost, foodCostPrice, evenness, dock, dockMinutes), events);
    }

    /** What one batch step of a component takes. */
    static final class Made {
        private final List<WeekProblem.StepNeed> needs = new ArrayList<>();
        private final List<WeekProblem.StepPart> parts = new ArrayList<>();
        private final List<WeekProblem.StepUse> uses = new ArrayList<>();
        private Ratio staples = Ratio.ZERO;

        Made need(int item, int ahead, long mg) {
            needs.add(new WeekProblem.StepNeed(item, ahead, mg));
            return this;
        }

        Made part(int component, long mg) {
            parts.add(new WeekProblem.StepPart(component, mg));
            return this;
        }

        Made use(int resource, long num, long den) {
            uses.add(new WeekProblem.StepUse(resource, num, den));
            return this;
        }

        Made staples(Ratio cents) {
            staples = cents;
            return this;
        }
    }

    /** One dish that may stand in a slot. */
    static final class Dish {
        private final int number;
        private final List<WeekProblem.Need> needs = new ArrayList<>();
        private final List<WeekProblem.Use> uses = new ArrayList<>();
        private final List<WeekProblem.Demand> demands = new ArrayList<>();
        private long sales;
        private long left;
        private long staples;
        private long covers;
        private int main = -1;
        private int method = -1;

        Dish(int number) {
            this.number = number;
        }

        Dish money(long salesCents, long leftCents, long stapleCents) {
            sales = salesCents;
            left = leftCents;
            staples = stapleCents;
            return this;
        }

        Dish need(int item, int day, long mg) {
            needs.add(new WeekProblem.Need(item, day, mg));
            return this;
        }

        Dish use(int resource, int day, int units) {
            uses.add(new WeekProblem.Use(resource, day, units));
            return this;
        }

        Dish demand(int component, int useDay, int lastDay, long mg) {
            demands.add(new WeekProblem.Demand(component, useDay, lastDay, mg));
            return this;
        }

        Dish covers(long bits) {
            covers = bits;
            return this;
        }

        Dish traits(int mainNumber, int methodNumber) {
            main = mainNumber;
            method = methodNumber;
            return this;
        }

        WeekProblem.Candidate on() {
            return new WeekProblem.Candidate(number, "dish-" + number, 10, sales, left, staples, needs, uses, demands,
                    List.of(), 0, covers, main, method, 0, List.of());
        }
    }
}
