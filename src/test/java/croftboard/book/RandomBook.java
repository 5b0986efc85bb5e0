package croftboard.book;

import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * Seeded random books, small and odd: nested components, short lives, staples, stock, events, closures, price breaks,
 * commitments, unknown allergens. Valid by construction; the same seed gives the same book.
 */
public final class RandomBook {
    public static final IsoWeek WEEK = new IsoWeek(2027, 33);
    private static final DayOfWeek[] OPEN = {DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY,
        DayOfWeek.THURSDAY, DayOfWeek.FRIDAY, DayOfWeek.SATURDAY};
    private static final String[] COURSES = {"main", "soup", "salad"};
    private static final String[] ALLERGENS = {"milk", "egg", "wheat", "soy", "sesame", "walnut", "fish-cod"};
    private final Random g;
    private final Map<String, Ingredient> ingredients = new TreeMap<>();
    private final Map<String, Recipe> recipes = new TreeMap<>();
    private final Map<String, Vendor> vendors = new TreeMap<>();

    private RandomBook(long seed) {
        g = new Random(seed * 31 + 7);
    }

    public static Book of(long seed) {
        return new RandomBook(seed).build(seed);
    }

    private Book build(long seed) {
        int items = 8 + g.nextInt(8);
        for (int i = 0; i < items; i++) {
            ingredient("item-" + (char) ('a' + i), i % 5 == 4);
        }
        ingredients.put("water", plain("water", true, Optional.empty(), 400, Map.of()));
        components(3 + g.nextInt(4));
        dishes(9 + g.nextInt(8));
        vendors(3 + g.nextInt(3));
        return new Book(kitchen(), ingredients, recipes, vendors, seasons(), Map.of(), stock(), "random " + seed);
    }

    private boolean chance(double p) {
        return g.nextDouble() < p;
    }

    private void ingredient(String id, boolean staple) {
        Map<String, Ingredient.Cut> cuts = new TreeMap<>();
        if (chance(.6)) {
            cuts.put("diced", new Ingredient.Cut("diced", Ratio.of(60 + g.nextInt(41), 100), "random"));
        }
        Optional<Amount> par = staple ? Optional.of(pounds(5)) : Optional.empty();
        int life = List.of(2, 3, 4, 5, 7, 10, 14, 30).get(g.nextInt(8));
        ingredients.put(id, plain(id, false, par, life, cuts));
    }

    private Ingredient plain(String id, boolean free, Optional<Amount> par, int life, Map<String, Ingredient.Cut> cuts) {
        EnumSet<Ingredient.Origin> origins = EnumSet.of(chance(.7) || free ? Ingredient.Origin.PLANT
                : chance(.5) ? Ingredient.Origin.DAIRY : Ingredient.Origin.UNKNOWN);
        Set<String> contains = !free && chance(.3) ? Set.of(ALLERGENS[g.nextInt(ALLERGENS.length)]) : Set.of();
        contains.forEach(c -> animal(c).ifPresent(origins::add));
        Ingredient.Statement statement = new Ingredient.Statement(contains, free || chance(.85));
        return new Ingredient(id, id.replace('-', ' '), id, "shelf", origins, statement, Ingredient.Statement.UNKNOWN,
                Ingredient.Tcs.UNKNOWN, Ingredient.Storage.values()[g.nextInt(2)], life, 0, Optional.empty(), par, free,
                Ratio.ZERO, cuts, List.of(), List.of());
    }

    /** The origin that an allergen of animal kind brings. */
    private static Optional<Ingredient.Origin> animal(String allergen) {
        return allergen.equals("milk") ? Optional.of(Ingredient.Origin.DAIRY)
                : allergen.equals("egg") ? Optional.of(Ingredient.Origin.EGG)
                : allergen.startsWith("fish-") ? Optional.of(Ingredient.Origin.FISH) : Optional.empty();
    }

    private static Amount pounds(long n) {
        return new Amount(Ratio.of(n), Unit.POUND);
    }

    private Recipe.Line line(String item, Amount amount) {
        Ingredient i = ingredients.get(item);
        Optional<String> cut = i == null || i.cuts().isEmpty() ? Optional.empty() : Optional.of("diced");
        return new Recipe.Line(amount, item, cut, i != null && chance(.2), i != null && chance(.1) ? 1 : 0, false,
                Optional.empty());
    }

    private Amount someOunces(int least, int more) {
        return new Amount(Ratio.of(least + g.nextInt(more), 1 + g.nextInt(2)), Unit.OUNCE);
    }

    private void components(int count) {
        for (int c = 0; c < count; c++) {
            List<Recipe.Line> lines = new ArrayList<>();
            List<String> names = List.copyOf(ingredients.keySet());
            for (int k = 0; k < 2 + g.nextInt(2); k++) {
                lines.add(line(names.get(g.nextInt(names.size())), someOunces(8, 60)));
            }
            if (c > 0 && chance(.6)) {
                lines.add(line("part-" + g.nextInt(c), someOunces(4, 20)));
            }
            recipe("part-" + c, lines, Optional.empty(), 4 + g.nextInt(4), g.nextInt(2));
        }
    }

    private void dishes(int count) {
        for (int d = 0; d < count; d++) {
            List<Recipe.Line> lines = new ArrayList<>();
            List<String> names = List.copyOf(ingredients.keySet());
            for (int k = 0; k < 2 + g.nextInt(3); k++) {
                lines.add(line(names.get(g.nextInt(names.size())), someOunces(16, 60)));
            }
            int parts = (int) recipes.keySet().stream().filter(r -> r.startsWith("part-")).count();
            if (chance(.7)) {
                lines.add(line("part-" + g.nextInt(parts), someOunces(8, 40)));
            }
            Recipe.Sale sale = new Recipe.Sale(Set.of(COURSES[d % 3]), Set.of(), Optional.empty(),
                    new Amount(Ratio.of(6 + g.nextInt(7)), Unit.OUNCE), new Cents(400 + g.nextInt(700)),
                    Ratio.of(75 + g.nextInt(50), 100), "main-" + g.nextInt(4), "method-" + g.nextInt(3),
                    "cuisine-" + g.nextInt(3));
            recipe("dish-" + (char) ('a' + d), lines, Optional.of(sale), 2 + g.nextInt(3), 0);
        }
    }

    private void recipe(String id, List<Recipe.Line> lines, Optional<Recipe.Sale> sale, int life, int lead) {
        Amount makes = new Amount(Ratio.of(lines.stream().map(l -> l.amount().base()).reduce(Ratio.ZERO, Ratio::plus)
                .over(Unit.OUNCE.base()).ceil()), Unit.OUNCE);
        String station = chance(.6) ? "hot" : "cold";
        Recipe.Step step = new Recipe.Step("Make it.", Optional.of(station), Ratio.of(10 + g.nextInt(40)),
                sale.isPresent() ? Ratio.of(g.nextInt(10), 60) : Ratio.ZERO, Ratio.ZERO,
                Map.of("oven", Ratio.of(g.nextInt(4)), "walk-in", Ratio.of(g.nextInt(3))));
        recipes.put(id, new Recipe(id, id.replace('-', ' '), sale, makes, Optional.empty(), Ratio.of(1, 1 + g.nextInt(4)),
                life, Recipe.Hold.COLD, lead, Ratio.ZERO, lines, List.of(step), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty()));
    }

    private void vendors(int count) {
        for (int v = 0; v < count; v++) {
            boolean wholesale = v == 0;
            List<Vendor.Delivery> deliveries = new ArrayList<>();
            for (DayOfWeek day : OPEN) {
                if (wholesale || chance(.35)) {
                    deliveries.add(new Vendor.Delivery(day, day.minus(2), LocalTime.NOON));
                }
            }
            if (deliveries.isEmpty()) {
                deliveries.add(new Vendor.Delivery(DayOfWeek.TUESDAY, DayOfWeek.SUNDAY, LocalTime.NOON));
            }
            vendor("vendor-" + v, wholesale, deliveries);
        }
    }

    private void vendor(String id, boolean wholesale, List<Vendor.Delivery> deliveries) {
        List<Vendor.Offer> offers = new ArrayList<>();
        List<Vendor.Commitment> commitments = new ArrayList<>();
        for (Ingredient i : ingredients.values()) {
            if (i.free() || !wholesale && chance(.5)) {
                continue;
            }
            long cents = 150 + g.nextInt(1500);
            List<Vendor.Break> breaks = chance(.2) ? List.of(new Vendor.Break(3, new Cents(cents * 9 / 10))) : List.of();
            Vendor.Whence grown = wholesale ? chance(.2) ? new Vendor.Whence.Unknown()
                    : new Vendor.Whence.At(new Place("Farhaven", "CA", 36.7, -119.7)) : new Vendor.Whence.Here();
            Vendor.Expected weeks = new Vendor.Expected(WeekRange.ALL, wholesale ? 60 : 1 + g.nextInt(5),
                    Vendor.Confidence.LIKELY);
            offers.add(new Vendor.Offer(i.id(), Optional.empty(), "case", pounds(1 + g.nextInt(8)), new Cents(cents), breaks,
                    Set.of(), grown, new Vendor.Whence.Nowhere(), Optional.empty(), List.of(weeks)));
            if (!i.isStaple() && chance(.05)) {
                commitments.add(new Vendor.Commitment(i.id(), "case", WeekRange.ALL, 1));
            }
        }
        vendors.put(id, new Vendor(id, id, wholesale ? Vendor.Kind.DISTRIBUTOR : Vendor.Kind.GROWER,
                new Place("Nearby", "NY", 42.6, -76.8), deliveries, new Cents(wholesale ? 5000 : 1000 + g.nextInt(3000)),
                new Cents(g.nextInt(1500)), Optional.empty(), offers, commitments, List.of()));
    }

    private Kitchen kitchen() {
        List<Kitchen.ServiceLine> lines = List.of(new Kitchen.ServiceLine("main-1", "Main 1", "main", 1, Optional.empty()),
                new Kitchen.ServiceLine("soup-1", "Soup", "soup", 2, Optional.empty()),
                new Kitchen.ServiceLine("salad-1", "Salad", "salad", 3, Optional.empty()));
        Map<DayOfWeek, Map<String, Integer>> hours = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            hours.put(day, Map.of("hot", 120 + g.nextInt(120), "cold", 90 + g.nextInt(90), "dock", 240));
        }
        Promises promises = new Promises(new Cents(15000),
                List.of(new Promises.Coverage("vegan", "a vegan dish", "V", Optional.empty(), Optional.of(Promises.Diet.VEGAN),
                        Set.of(), 1, new Cents(4000)),
                        new Promises.Coverage("no-milk", "a dish that lists no milk", "M", Optional.of("main"),
                                Optional.empty(), Set.of("milk"), 1, new Cents(2500))),
                List.of(new Promises.Variety(Promises.Trait.MAIN, Promises.Within.DAY, 1, new Cents(1200)),
                        new Promises.Variety(Promises.Trait.METHOD, Promises.Within.NEXT_DAY, 1, new Cents(700))),
                Ratio.of(30, 100), Optional.of(new Promises.FoodCost(Ratio.of(33, 100), Ratio.of(20, 100))), Ratio.of(5),
                new Cents(1500));
        Map<Ingredient.Storage, Ratio> worth = Map.of(Ingredient.Storage.WALK_IN, Ratio.of(60, 100),
                Ingredient.Storage.DRY, Ratio.of(95, 100), Ingredient.Storage.FREEZER, Ratio.of(90, 100));
        LocalRules local = new LocalRules("near", List.of(new LocalRules.Definition("near", "in New York", Set.of("NY"),
                Optional.of(150), Ratio.of(1, 2))));
        return new Kitchen("Random kitchen", new Place("Larkmoor", "NY", 42.55, -76.9), ZoneId.of("America/New_York"),
                "letter", EnumSet.copyOf(List.of(OPEN)), EnumSet.allOf(DayOfWeek.class), lines, 5,
                List.of(new Kitchen.Station("hot", "Hot line", 120, new Cents(2800)),
                        new Kitchen.Station("cold", "Cold line", 60, new Cents(2600)),
                        new Kitchen.Station("dock", "Dock", 0, Cents.ZERO)),
                List.of(new Kitchen.Cook("cook-1", "Cook 1", hours)), Optional.of(new Kitchen.Receiving("dock", 12)),
                List.of(new Kitchen.Equipment("oven", "Oven", "pans", Optional.of(24), Optional.empty(), false),
                        new Kitchen.Equipment("walk-in", "Walk-in", "pans", Optional.of(40), Optional.empty(), true)),
                worth, Ratio.of(20, 100), Ratio.of(5, 100), new Cents(15), promises, Optional.of(local), "model", "your county");
    }

    private Seasons seasons() {
        Map<String, Seasons.LineDemand> demand = new TreeMap<>();
        for (String line : List.of("main-1", "soup-1", "salad-1")) {
            Map<DayOfWeek, Ratio> mean = new EnumMap<>(DayOfWeek.class);
            for (DayOfWeek day : OPEN) {
                mean.put(day, Ratio.of(8 + g.nextInt(30)));
            }
            demand.put(line, new Seasons.LineDemand(Ratio.of(20 + g.nextInt(30), 100), mean));
        }
        Map<LocalDate, String> closures = chance(.2) ? Map.of(WEEK.day(DayOfWeek.WEDNESDAY), "closed") : Map.of();
        List<Seasons.Event> events = chance(.3) ? List.of(new Seasons.Event("supper", "Supper",
                WEEK.day(DayOfWeek.THURSDAY), Optional.empty(), 10 + g.nextInt(20), Ratio.of(4, 100), new Cents(1200), "",
                List.of(new Seasons.Course("main", "main", Ratio.ONE, Optional.empty(), Optional.empty())))) : List.of();
        return new Seasons(Map.of(), List.of(new Seasons.Target(WeekRange.ALL, Ratio.of(40, 100))), demand, List.of(),
                closures, events, List.of());
    }

    private List<OnHand> stock() {
        List<OnHand> rows = new ArrayList<>();
        for (String id : ingredients.keySet()) {
            if (!ingredients.get(id).free() && chance(.3)) {
                rows.add(new OnHand(id, new Amount(Ratio.of(1 + g.nextInt(3)), Unit.POUND),
                        Optional.of(WEEK.monday().minusDays(1)), Optional.empty(), Optional.empty(), Optional.empty(),
                        Optional.empty(), ""));
            }
        }
        if (chance(.5)) {
            rows.add(new OnHand("part-0", new Amount(Ratio.of(2), Unit.POUND), Optional.empty(),
                    Optional.of(WEEK.monday().minusDays(1)), Optional.empty(), Optional.empty(), Optional.empty(), ""));
        }
        return rows;
    }
}
