package croftboard.planted;

import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A week with its best plan.
 *
 * @param menu candidate of each slot
 * @param packs of each offer
 * @param cents what the plan is worth, reckoned here without the account
 * @param bestCents what no plan can pass, by the prices from which the week was made (weak duality)
 */
public record PlantedWeek(WeekProblem problem, int[] menu, int[] packs, long cents, double bestCents) {
    private static final Ratio LOCAL_PRICE = Ratio.of(30, 100);

    /** 54 slots. @param tied one decoy in seven comes within a cent of the planted dish, else within a hundredth */
    public static PlantedWeek week(long seed, boolean tied) {
        return new Making(Shape.week(tied), seed).make("planted week " + seed);
    }

    /** 54 slots in each of several weeks, 216 in a month of four. */
    public static PlantedWeek weeks(long seed, int weeks, boolean tied) {
        return new Making(Shape.weeks(weeks, tied), seed).make(weeks + " planted weeks " + seed);
    }

    /** Three slots: every menu can be tried with every order. */
    public static PlantedWeek tiny(long seed) {
        return new Making(Shape.tiny(), seed).make("tiny planted week " + seed);
    }

    private static final class Making {
        private final Shape shape;
        private final boolean shortOfLocal;
        /** A plan from two vendors may be all local. */
        private final Ratio highTarget;
        private final List<Place> places;
        private final Market market;
        private final Worths worths;
        private final List<Market.Key> keys;

        Making(Shape shape, long seed) {
            this.shape = shape;
            Random g = new Random(seed * 7919 + 101);
            shortOfLocal = seed % 2 == 0;
            highTarget = shape.planVendors() > 2 ? Ratio.of(80, 100) : Ratio.ONE;
            places = new Menus(shape, g).places;
            double[] weight = IntStream.range(0, shape.vendors()).mapToDouble(this::weight).toArray();
            market = new Market(shape, g, places, weight);
            worths = new Worths(shape, g, places, market.supplies);
            keys = List.copyOf(market.deliveries.keySet());
        }

        /** Where the plan misses its local share, every local cent counts for less and every other for more. */
        private double weight(int vendor) {
            double local = Market.local(vendor) ? 1 : 0;
            return shortOfLocal ? 1 + LOCAL_PRICE.toDouble() * (highTarget.toDouble() - local) : 1;
        }

        PlantedWeek make(String name) {
            int[] packs = market.offers.stream().mapToInt(Market.Offer::planned).toArray();
            long money = market.offers.stream().mapToLong(o -> o.planned() * o.priceCents()).sum();
            long local = market.offers.stream().filter(o -> Market.local(o.vendor()))
                    .mapToLong(o -> o.planned() * o.priceCents()).sum();
            Ratio target = shortOfLocal ? highTarget : Ratio.of(local, money);
            Ratio missing = target.times(money).minus(Ratio.of(local));
            if (shortOfLocal && missing.signum() < 0) {
                throw new IllegalStateException(name + " is not short of local money");
            }
            long fees = market.deliveries.values().stream().filter(d -> d.money > 0).mapToLong(d -> d.fee).sum();
            double kept = market.deliveries.values().stream().filter(d -> d.money > 0)
                    .mapToDouble(d -> d.earned - d.fee).sum();
            long brings = places.stream().mapToLong(p -> p.plantedDraft().cents).sum();
            long cents = brings - money - fees - LOCAL_PRICE.times(missing).round();
            return new PlantedWeek(problem(name, target), places.stream().mapToInt(p -> p.planted).toArray(), packs,
                    cents, worths.dualCents() + kept);
        }

        private WeekProblem problem(String name, Ratio target) {
            int days = shape.days();
            int[] open = IntStream.range(0, days).filter(d -> d % 7 < shape.open()).toArray();
            boolean[] prep = new boolean[days];
            for (int d : open) {
                prep[d] = true;
            }
            WeekProblem.Prices prices = new WeekProblem.Prices(shape.gapDays(),
                    List.of(new WeekProblem.CoverageRule("vegan-main", 1, 4000),
                            new WeekProblem.CoverageRule("free-three", Math.min(2, shape.daily().length), 3000)),
                    List.of(new WeekProblem.VarietyRule(0, false, 2, 1500)), target, LOCAL_PRICE, Ratio.ONE, Ratio.ZERO,
                    Ratio.ZERO, -1, 0);
            LocalDate monday = LocalDate.of(2027, 1, 4);
            return new WeekProblem(name, monday, days, open, prep, places.stream().map(this::slot).toList(),
                    market.supplies.stream().map(this::item).toList(), List.of(),
                    market.offers.stream().map(this::offer).toList(),
                    keys.stream().map(k -> delivery(k, monday)).toList(), resources(), List.of(), List.of(), List.of(),
                    prices, 0);
        }

        private WeekProblem.Slot slot(Place p) {
            return new WeekProblem.Slot(p.id, p.line, p.days, true, 15_000, true,
                    p.drafts.stream().map(d -> candidate(p, d)).toList());
        }

        private static WeekProblem.Candidate candidate(Place p, Place.Draft d) {
            List<WeekProblem.Need> needs = new ArrayList<>();
            List<WeekProblem.LooseNeed> loose = new ArrayList<>();
            List<WeekProblem.Use> uses = new ArrayList<>();
            for (int k = 0; k < p.days.length; k++) {
                int day = p.days[k];
                for (int j = 0; j < d.grams.length; j++) {
                    needs.add(new WeekProblem.Need(d.dish.item()[j], day, 1000 * d.grams[j][k]));
                    loose.add(new WeekProblem.LooseNeed(d.dish.item()[j], day, day, 1000 * d.grams[j][k]));
                }
                for (int x = 0; x < Dish.RESOURCES; x++) {
                    if (Worths.units(p, d, x) > 0) {
                        uses.add(new WeekProblem.Use(x, day, Worths.units(p, d, x)));
                    }
                }
            }
            return new WeekProblem.Candidate(d.number, "dish-" + d.number, d.portions, d.cents, 0, 0, needs, uses,
                    List.of(), loose, 0, d.dish.covers(), d.dish.main(), 0, 0, List.of());
        }

        /** Surplus that keeps is worth half the cheapest price, so that nothing is bought to be kept. */
        private WeekProblem.Item item(Supply s) {
            double cheapest = market.offers.stream().filter(o -> o.item() == s.item)
                    .mapToDouble(o -> o.priceCents() * market.weight[o.vendor()] / (double) o.grams()).min().orElse(0);
            Ratio kept = s.life >= 7 ? Ratio.of((long) (cheapest * .5 * 1e6), 1_000_000_000L) : Ratio.ZERO;
            return new WeekProblem.Item("item-" + s.item, "item " + s.item, s.life, shape.days() + 1, kept, Ratio.ZERO);
        }

        private WeekProblem.Offer offer(Market.Offer o) {
            return new WeekProblem.Offer("vendor-" + o.vendor(), o.item(),
                    keys.indexOf(new Market.Key(o.vendor(), o.day())), o.grams() + " g pack", 1000 * o.grams(),
                    List.of(new WeekProblem.Tier(1, o.priceCents())), 0, o.most(), Market.local(o.vendor())
                            ? WeekProblem.Locality.LOCAL : WeekProblem.Locality.NOT_LOCAL, "", false);
        }

        private WeekProblem.Delivery delivery(Market.Key k, LocalDate monday) {
            Market.Delivery d = market.deliveries.get(k);
            return new WeekProblem.Delivery("vendor-" + k.vendor(), k.day(),
                    monday.plusDays(k.day() - 2L).atTime(12, 0), d.minimum, d.fee, false);
        }

        private List<WeekProblem.Resource> resources() {
            String[] names = {"hot", "cold", "bake", "oven", "kettle"};
            int[] period = IntStream.range(0, shape.days()).toArray();
            return IntStream.range(0, names.length).mapToObj(x -> new WeekProblem.Resource(names[x], names[x], false,
                    period, worths.regular[x], new long[period.length], 0, false)).toList();
        }
    }
}
