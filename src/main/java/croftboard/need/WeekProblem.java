package croftboard.need;

import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/**
 * One week's planning problem as plain numbers: what may stand where, what each choice brings, needs and uses,
 * what can be bought, and what promises cost. Everything a solver needs and nothing else; built once, never changed.
 *
 * <p>Lists are indexed: a slot, item, component, offer, delivery or resource is named by its position.
 *
 * @param name for messages, for example {@code 2027-W33}
 * @param firstDay date of day 0
 * @param days number of days, deliveries before the week included
 * @param openDays days with service, ascending; coverage and variety count on them
 * @param prepDays whether batches may be made on the day
 * @param components in an order in which no component uses an earlier one
 * @param stock dated stock of items, used before anything bought
 * @param looseStock what component stock holds, exploded into items usable on every day: for bounds only
 * @param constantCents value that no decision changes (event sales)
 */
public record WeekProblem(String name, LocalDate firstDay, int days, int[] openDays, boolean[] prepDays,
        List<Slot> slots, List<Item> items, List<Component> components, List<Offer> offers,
        List<Delivery> deliveries, List<Resource> resources, List<ItemStock> stock,
        List<ComponentStock> componentStock, List<ItemStock> looseStock, Prices prices, long constantCents) {

    /** Whether every delivery that is ordered at all reaches its minimum. @param packs by offer */
    public boolean minimumsMet(int[] packs) {
        long[] money = new long[deliveries.size()];
        for (int o = 0; o < packs.length; o++) {
            money[offers.get(o).delivery()] += offers.get(o).costCents(packs[o]);
        }
        for (int v = 0; v < money.length; v++) {
            if (money[v] > 0 && money[v] < deliveries.get(v).minimumCents()) {
                return false;
            }
        }
        return true;
    }

    /** The same with other offers of the same deliveries. */
    public WeekProblem withOffers(List<Offer> other) {
        return new WeekProblem(name, firstDay, days, openDays, prepDays, slots, items, components, other, deliveries,
                resources, stock, componentStock, looseStock, prices, constantCents);
    }

    /**
     * A place in the offer on given days that holds one dish.
     *
     * @param id {@code mon/hot-main-1}, as {@code --keep} takes it; events: {@code EVENT/COURSE}
     * @param line lines are numbered in the kitchen's order; events count from the end
     * @param serviceDays ascending, at least one
     * @param free takes part in the gap, variety and coverage rules; false for standing dishes and events
     * @param emptyCents what leaving it empty costs
     * @param mayBeEmpty false for kept dishes
     * @param candidates never empty
     */
    public record Slot(String id, int line, int[] serviceDays, boolean free, long emptyCents, boolean mayBeEmpty,
            List<Candidate> candidates) {
        public int startDay() {
            return serviceDays[0];
        }
    }

    /**
     * One dish in one slot.
     *
     * @param dish number of the recipe, equal for the same recipe in every slot
     * @param recipe its id
     * @param portions made, over all productions
     * @param salesCents expected sales
     * @param leftCents what expected left portions still bring
     * @param stapleCents staples used directly, rounded once a production
     * @param needs of items, direct only
     * @param uses of resources, direct only
     * @param demands on components
     * @param loose all needs through the whole tree, unrounded: for bounds. Never more than the batches will need
     * @param looseStapleCents staples through components, unrounded, rounded down: for bounds
     * @param covers bit k set when the dish counts for coverage promise k
     * @param main, method, cuisine numbers for the variety rules
     * @param productions the batches of the dish itself
     */
    public record Candidate(int dish, String recipe, int portions, long salesCents, long leftCents, long stapleCents,
            List<Need> needs, List<Use> uses, List<Demand> demands, List<LooseNeed> loose, long looseStapleCents,
            long covers, int main, int method, int cuisine, List<Production> productions) {
        /** What the choice brings before anything is bought: cents. */
        public long valueCents() {
            return salesCents + leftCents - stapleCents;
        }
    }

    /** @param mg as purchased, rounded up */
    public record Need(int item, int day, long mg) { }

    /** @param units minutes or equipment units, whole, rounded up once a production and resource */
    public record Use(int resource, int day, int units) { }

    /**
     * A production or batch that needs a component.
     *
     * @param useDay it must be ready for this day
     * @param lastDay it must still be good on this day
     * @param mg of the component, rounded up
     */
    public record Demand(int component, int useDay, int lastDay, long mg) { }

    /** A need that may be met on any day from {@code from} to {@code to}. @param mg rounded down */
    public record LooseNeed(int item, int from, int to, long mg) { }

    /**
     * @param lastDay last service day it covers
     * @param useByDay last day its own life allows, parts not regarded
     * @param batches standard batches, a multiple of the batch step
     */
    public record Production(int day, int lastDay, int useByDay, Ratio batches, int portions) { }

    /**
     * Something bought by need, or a staple to bring back to par (which nothing needs here).
     *
     * @param lifeDays usable from delivery day + 0 to + lifeDays
     * @param keepDay surplus usable on this day or later keeps
     * @param keptCentsPerMg worth of surplus that keeps: keep share x cheapest price of the week
     * @param wasteCentsPerMg cost of throwing the rest away
     */
    public record Item(String id, String name, int lifeDays, int keepDay, Ratio keptCentsPerMg, Ratio wasteCentsPerMg) {
        /** Whether surplus of a delivery of that day still has worth after the week. */
        public boolean keeps(int deliveryDay) {
            return deliveryDay + lifeDays >= keepDay;
        }
    }

    /**
     * A recipe that others use, made in batches of whole steps.
     *
     * @param lifeDays day of making is day 1
     * @param leadDays made so many days before it is used
     * @param stepMg what one batch step yields, rounded down
     * @param step the batch step as a share of the standard batch
     * @param perStep needs of one step; {@code aheadDays} before the batch
     * @param parts sub-components of one step
     * @param uses minutes and units for n steps: rounded up once a batch
     * @param stapleCentsPerStep exact; rounded half up once a batch
     */
    public record Component(String recipe, int lifeDays, int leadDays, long stepMg, Ratio step,
            List<StepNeed> perStep, List<StepPart> parts, List<StepUse> uses, Ratio stapleCentsPerStep) {
        /** Staples of a batch of that many steps, in cents, half up. */
        public long stapleCents(int steps) {
            return stapleCentsPerStep.times(steps).round();
        }
    }

    public record StepNeed(int item, int aheadDays, long mg) { }

    public record StepPart(int component, long mg) { }

    /** Units for n steps: n x num / den, rounded up. */
    public record StepUse(int resource, long num, long den) {
        public int units(int steps) {
            return Math.toIntExact(Math.floorDiv(steps * num + den - 1, den));
        }
    }

    /**
     * Packs that can be bought for one delivery.
     *
     * @param packMg contents, rounded down
     * @param tiers prices a pack, ascending by packs, the first from 1 on; all packs cost the tier reached
     * @param minPacks commitments and packs already ordered
     * @param maxPacks at least minPacks
     * @param onList true when a list of this week says so, false when the calendar does
     */
    public record Offer(String vendor, int item, int delivery, String pack, long packMg, List<Tier> tiers,
            int minPacks, int maxPacks, Locality locality, String whyLocal, boolean onList) {
        /** Price of one pack when that many are bought. */
        public long priceCents(int packs) {
            long price = tiers.get(0).priceCents();
            for (Tier tier : tiers) {
                if (packs >= tier.packs()) {
                    price = tier.priceCents();
                }
            }
            return price;
        }

        /** The same with its packs settled. */
        public Offer pinned(int packs) {
            return new Offer(vendor, item, delivery, pack, packMg, tiers, packs, packs, locality, whyLocal, onList);
        }

        public long costCents(int packs) {
            return packs == 0 ? 0 : priceCents(packs) * packs;
        }

        /** The lowest price a pack can have within maxPacks. */
        public long lowestPriceCents() {
            return tiers.stream().filter(t -> t.packs() <= Math.max(1, maxPacks)).mapToLong(Tier::priceCents).min()
                    .orElseThrow();
        }
    }

    public record Tier(int packs, long priceCents) { }

    public enum Locality { LOCAL, NOT_LOCAL, UNCLASSIFIED }

    /**
     * @param minimumCents least money of an order that is not nothing; already ordered money taken off
     * @param feeCents 0 when another plan's order already pays it
     */
    public record Delivery(String vendor, int day, LocalDateTime cutOff, long minimumCents, long feeCents,
            boolean forced) { }

    /**
     * Hands of a station or equipment: units a period.
     *
     * @param hands true: minutes of a station, counted for evenness
     * @param period period of each day; a resource by the week has one
     * @param regular units of each period
     * @param overtime units above regular that may be bought
     * @param overtimeCentsPerHour price of 60 such units
     * @param held taken from making to the last day of use
     */
    public record Resource(String id, String name, boolean hands, int[] period, long[] regular, long[] overtime,
            long overtimeCentsPerHour, boolean held) {
        public int periods() {
            return regular.length;
        }

        /** Overtime money of one period with that many units used, half up. */
        public long overtimeCents(int period, long used) {
            long over = Math.max(0, used - regular[period]);
            return (over * overtimeCentsPerHour + 30) / 60;
        }
    }

    /** @param from, until days on which it may be used, both included */
    public record ItemStock(int item, int from, int until, long mg) { }

    /** @param until last day on which what is made of it may be served */
    public record ComponentStock(int component, int from, int until, long mg) { }

    /**
     * Promises and their prices.
     *
     * @param gapDays two slots with the same dish start at least so many days apart
     * @param localTarget promised share of food money
     * @param localPrice dollars for each dollar short
     * @param foodCostAtMost share of sales; 1 when nothing is promised
     * @param evennessCentsPerMinute for each minute of a station's busiest day above its average prep day
     * @param receivingResource hands that receive deliveries; -1 when none
     */
    public record Prices(int gapDays, List<CoverageRule> coverage, List<VarietyRule> variety, Ratio localTarget,
            Ratio localPrice, Ratio foodCostAtMost, Ratio foodCostPrice, Ratio evennessCentsPerMinute,
            int receivingResource, int receivingMinutes) { }

    public record CoverageRule(String id, int atLeast, long centsEach) { }

    /** @param trait 0 main, 1 method, 2 cuisine. @param nextDay same line, following service day; else all lines of a day */
    public record VarietyRule(int trait, boolean nextDay, int atMost, long centsEach) { }
}
