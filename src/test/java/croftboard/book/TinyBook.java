package croftboard.book;

import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * Seeded books so small that every plan can be tried: three slots, four dishes that share a component whose batches are
 * rounded, three offers of one delivery each, with minimums, fees, price breaks, short lives and stock.
 */
public final class TinyBook {
    private TinyBook() { }

    public static Book of(long seed) {
        Random g = new Random(seed * 101 + 3);
        Book random = RandomBook.of(seed);
        Map<String, Ingredient> ingredients = new TreeMap<>();
        for (String id : List.of("beet", "leek")) {
            int life = 1 + g.nextInt(6);
            ingredients.put(id, new Ingredient(id, id, id, "shelf", EnumSet.of(Ingredient.Origin.PLANT),
                    new Ingredient.Statement(Set.of(), true), Ingredient.Statement.UNKNOWN, Ingredient.Tcs.NO,
                    Ingredient.Storage.WALK_IN, life, 0, Optional.empty(), Optional.empty(), false, Ratio.ZERO,
                    Map.of("diced", new Ingredient.Cut("diced", Ratio.of(70 + g.nextInt(31), 100), "random")), List.of(),
                    List.of()));
        }
        Map<String, Recipe> recipes = new TreeMap<>();
        recipes.put("base", recipe("base", List.of(line("beet", 20 + g.nextInt(20))), Optional.empty(), g, 4));
        for (int d = 0; d < 4; d++) {
            List<Recipe.Line> lines = new ArrayList<>();
            lines.add(line(g.nextBoolean() ? "beet" : "leek", 30 + g.nextInt(40)));
            if (d < 2 || g.nextBoolean()) {
                lines.add(line("base", 8 + g.nextInt(30)));
            }
            Recipe.Sale sale = new Recipe.Sale(Set.of("main"), Set.of(), Optional.empty(),
                    new Amount(Ratio.of(8), Unit.OUNCE), new Cents(500 + g.nextInt(500)), Ratio.of(80 + g.nextInt(40), 100),
                    "main-" + g.nextInt(2), "method", "cuisine");
            recipes.put("dish-" + d, recipe("dish-" + d, lines, Optional.of(sale), g, 2));
        }
        Map<String, Vendor> vendors = new TreeMap<>();
        vendors.put("grower", vendor("grower", List.of("beet", "leek"), true, g));
        vendors.put("wholesale", vendor("wholesale", List.of(g.nextBoolean() ? "beet" : "leek"), false, g));
        return new Book(kitchen(random.kitchen(), g), ingredients, recipes, vendors, seasons(g), Map.of(), stock(g),
                "tiny " + seed);
    }

    private static Recipe.Line line(String item, int ounces) {
        return new Recipe.Line(new Amount(Ratio.of(ounces), Unit.OUNCE), item,
                item.equals("base") ? Optional.empty() : Optional.of("diced"), false, 0, false, Optional.empty());
    }

    private static Recipe recipe(String id, List<Recipe.Line> lines, Optional<Recipe.Sale> sale, Random g, int life) {
        int ounces = lines.stream().mapToInt(l -> (int) l.amount().value().floor()).sum();
        Recipe.Step step = new Recipe.Step("Make it.", Optional.of("hot"), Ratio.of(10 + g.nextInt(30)), Ratio.ZERO,
                Ratio.ZERO, Map.of());
        return new Recipe(id, id, sale, new Amount(Ratio.of(ounces), Unit.OUNCE), Optional.empty(),
                Ratio.of(1, 1 + g.nextInt(3)), life, Recipe.Hold.COLD, 0, Ratio.ZERO, lines, List.of(step), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Vendor vendor(String id, List<String> items, boolean local, Random g) {
        LocalDate day = RandomBook.WEEK.monday().plusDays(local ? g.nextInt(2) : 0);
        Vendor.Delivery delivery = new Vendor.Delivery(day.getDayOfWeek(), day.getDayOfWeek().minus(1), LocalTime.NOON);
        List<Vendor.Offer> offers = new ArrayList<>();
        for (String item : items) {
            long cents = 400 + g.nextInt(900);
            offers.add(new Vendor.Offer(item, Optional.empty(), "box", new Amount(Ratio.of(2 + g.nextInt(5)), Unit.POUND),
                    new Cents(cents), g.nextBoolean() ? List.of(new Vendor.Break(2, new Cents(cents * 4 / 5))) : List.of(),
                    Set.of(), local ? new Vendor.Whence.Here() : new Vendor.Whence.Unknown(), new Vendor.Whence.Nowhere(),
                    Optional.empty(), List.of(new Vendor.Expected(WeekRange.ALL, 3, Vendor.Confidence.SURE))));
        }
        return new Vendor(id, id, Vendor.Kind.GROWER, new croftboard.measure.Place("Nearby", "NY", 42.6, -76.8),
                List.of(delivery), new Cents(g.nextInt(2500)), new Cents(g.nextInt(800)),
                Optional.of(new Vendor.Span(day, day)), offers, List.of(), List.of());
    }

    private static Kitchen kitchen(Kitchen k, Random g) {
        return new Kitchen(k.name(), k.place(), k.zone(), k.paper(),
                EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY), k.prepDays(),
                List.of(new Kitchen.ServiceLine("main-1", "Main", "main", 1, Optional.empty())), 1 + g.nextInt(7),
                k.stations(), k.cooks(), k.receiving(), k.equipment(), k.surplusWorth(), k.leftWorth(), k.goodwill(),
                k.wastePerPound(), k.promises(), k.local(), k.healthCodeEdition(), k.healthAuthority());
    }

    private static Seasons seasons(Random g) {
        Map<DayOfWeek, Ratio> mean = new TreeMap<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            mean.put(day, Ratio.of(6 + g.nextInt(14)));
        }
        return new Seasons(Map.of(), List.of(new Seasons.Target(WeekRange.ALL, Ratio.of(50, 100))),
                Map.of("main-1", new Seasons.LineDemand(Ratio.of(30, 100), mean)), List.of(), Map.of(), List.of(), List.of());
    }

    private static List<OnHand> stock(Random g) {
        return g.nextInt(3) > 0 ? List.of() : List.of(new OnHand("beet", new Amount(Ratio.ONE, Unit.POUND),
                Optional.of(RandomBook.WEEK.monday().minusDays(1)), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), ""));
    }
}
