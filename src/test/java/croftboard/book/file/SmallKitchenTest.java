package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Ingredient.Statement;
import croftboard.book.Kitchen;
import croftboard.book.ListedOffer;
import croftboard.book.Promises;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.book.LabelStock;
import croftboard.book.Contact;
import croftboard.book.Vendor;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every value of the small kitchen arrives as it was written. */
class SmallKitchenTest {
    private final Book book = SmallKitchen.book();

    @Test
    void counts_andTheOneWarning() {
        BookReading.Read read = BookReader.read(SmallKitchen.FOLDER).fold(r -> r, f -> {
            throw new AssertionError(f.faults());
        });
        assertThat(read.counts()).isEqualTo(new Counts(17, 17, 5, 2, 3, 19, 3, 1, 3, 4));
        assertThat(read.warnings()).extracting(Warning::toString)
                .containsExactly(
                "kitchen/ingredients/pantry.yaml:56:14: allergens not fully stated: curry-powder");
    }

    @Test
    void ingredient() {
        Ingredient carrot = book.ingredient("carrot");
        assertThat(carrot).isEqualTo(new Ingredient("carrot", "carrots", "carrots", "fresh",
                Set.of(Ingredient.Origin.PLANT),
                new Statement(Set.of(), true), new Statement(Set.of(), true), Ingredient.Tcs.WHEN_COOKED,
                Ingredient.Storage.WALK_IN, 21, 0, Optional.of(Ratio.of(7, 10)), Optional.empty(), false,
                Ratio.ZERO,
                Map.of("diced", new Ingredient.Cut("diced", Ratio.of(4, 5), "invented"),
                        "grated", new Ingredient.Cut("grated", Ratio.of(39, 50), "invented")),
                List.of(new Ingredient.Measure(amount(1, "cup"), Optional.of("diced"), false,
                amount(128, "g"), "invented"),
                        new Ingredient.Measure(amount(1, "each"), Optional.empty(), true, amount(85, "g"),
                        "invented")), List.of()));
    }

    @Test
    void unknown_replacesOnlyWhatIsNotStated() {
        Ingredient curry = book.ingredient("curry-powder");
        assertThat(curry.allergens()).isEqualTo(Statement.UNKNOWN);
        assertThat(curry.glutenGrains()).isEqualTo(Statement.UNKNOWN);
        assertThat(curry.origins()).containsExactly(Ingredient.Origin.PLANT, Ingredient.Origin.UNKNOWN);
        assertThat(curry.par()).contains(amount(2, "lb"));
        assertThat(curry.salt()).isEqualTo(Ratio.of(1, 500));
        Book milky = new SmallKitchen().change("kitchen/ingredients/pantry.yaml", "allergens: unknown",
                "allergens: [milk, unknown]")
                .reading().orElseThrow();
        assertThat(milky.ingredient("curry-powder").allergens())
                .isEqualTo(new Statement(Set.of("milk"), false));
    }

    @Test
    void unsaid_isUnknown() {
        Ingredient lentil = book.ingredient("lentil-brown");
        assertThat(lentil.glutenGrains()).isEqualTo(Statement.UNKNOWN);
        assertThat(lentil.cuts()).isEmpty();
        Book silent = new SmallKitchen().change("kitchen/ingredients/pantry.yaml", "  tcs: when-cooked\n",
                "").reading().orElseThrow();
        assertThat(silent.ingredient("lentil-brown").tcs()).isEqualTo(Ingredient.Tcs.UNKNOWN);
    }

    @Test
    void freezerFreeLabelSubstitutes() {
        assertThat(book.ingredient("pea-frozen").thawDays()).isEqualTo(1);
        assertThat(book.ingredient("water").free()).isTrue();
        assertThat(book.ingredient("tahini").label()).isEqualTo("sesame paste");
        assertThat(book.ingredient("thyme").substitutes()).containsExactly(
                new Ingredient.Substitute("thyme-dried", Optional.empty(), Ratio.of(1, 3)),
                new Ingredient.Substitute("garlic", Optional.of("minced"), Ratio.of(1, 2)));
    }

    @Test
    void dish() {
        Recipe bake = book.recipe("lentil-bake");
        assertThat(bake.sale()).contains(new Recipe.Sale(Set.of("main"), Set.of(), Optional.empty(),
                amount(12, "oz"),
                new Cents(950), Ratio.of(105, 100), "lentil", "baked", "british"));
        assertThat(List.of(bake.makes(), bake.batchStep(), bake.lifeDays(), bake.hold(), bake.leadDays(),
                bake.loss()))
                .isEqualTo(List.of(amount(24, "lb"), Ratio.of(1, 4), 4, Recipe.Hold.HOT, 0,
                Ratio.of(13, 100)));
        assertThat(bake.ingredients().get(3)).isEqualTo(new Recipe.Line(amount(2, "lb"), "onion-yellow",
                Optional.of("diced"),
                true, 0, false, Optional.empty()));
        assertThat(bake.steps().get(1)).isEqualTo(new Recipe.Step(
                "Spread in 4 pans, bake at 375 F until it bubbles at the edge.",
                Optional.of("hot"), Ratio.of(15), Ratio.of(1, 12), Ratio.of(45),
                Map.of("oven", Ratio.of(4), "walk-in", Ratio.of(4))));
        assertThat(bake.doneness()).contains("165 F in the middle; the lentils hold their shape.");
        assertThat(book.recipe("penne-bake").sale().orElseThrow().weeks()).contains(new WeekRange(1, 52));
        assertThat(book.recipe("chickpea-salad").ingredients().get(0).aheadDays()).isEqualTo(1);
        assertThat(book.recipe("chickpea-salad").caution()).isPresent();
    }

    @Test
    void component() {
        Recipe marinara = book.recipe("house-marinara");
        assertThat(marinara.isDish()).isFalse();
        assertThat(marinara.cup()).contains(amount(245, "g"));
        assertThat(marinara.leadDays()).isEqualTo(1);
        assertThat(marinara.ingredients().get(2))
                .isEqualTo(new Recipe.Line(amount(12, "clove"), "garlic", Optional.of("minced"),
                false, 0, false, Optional.of("last: it burns")));
        assertThat(marinara.ingredients().get(3).planSubstitute()).isTrue();
        assertThat(marinara.scaling()).contains("Salt to three quarters above two batches, then taste.");
    }

    @Test
    void vendor() {
        Vendor farm = book.vendor("hollow-brook");
        assertThat(farm.place()).isEqualTo(new Place("Quillby", "NY", 42.61, -76.93));
        assertThat(farm.deliveries()).containsExactly(
                new Vendor.Delivery(DayOfWeek.MONDAY, DayOfWeek.FRIDAY, LocalTime.NOON),
                new Vendor.Delivery(DayOfWeek.THURSDAY, DayOfWeek.TUESDAY, LocalTime.of(17, 0)));
        assertThat(List.of(farm.minimum(), farm.fee())).isEqualTo(List.of(new Cents(6000), new Cents(800)));
        assertThat(farm.mayBuy()).contains(new Vendor.Span(LocalDate.of(2026, 1, 1),
                LocalDate.of(2028, 12, 31)));
        assertThat(farm.offers().get(0)).isEqualTo(new Vendor.Offer("carrot",
                Optional.of("Carrots, bunching, no tops"), "25 lb sack",
                amount(25, "lb"), new Cents(2400), List.of(new Vendor.Break(4, new Cents(2150))),
                Set.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY), new Vendor.Whence.Here(),
                new Vendor.Whence.Nowhere(), Optional.empty(),
                List.of(new Vendor.Expected(new WeekRange(22, 44), 6, Vendor.Confidence.LIKELY),
                        new Vendor.Expected(new WeekRange(45, 12), 3, Vendor.Confidence.SURE))));
        assertThat(farm.commitments()).containsExactly(new Vendor.Commitment("carrot", "25 lb sack",
                new WeekRange(30, 38), 1));
        assertThat(farm.priorities()).containsExactly("carrot", "onion-yellow");
        Vendor depot = book.vendor("mill-run-depot");
        assertThat(depot.offers().get(2).grownAt()).isEqualTo(new Vendor.Whence.AtVendor("hollow-brook"));
        assertThat(depot.offers().get(4).grownAt()).isEqualTo(
                new Vendor.Whence.At(new Place("Orchard Flats", "CA", 36.60, -119.50)));
        assertThat(depot.offers().get(7).localPart()).contains(Ratio.ZERO);
        assertThat(depot.mayBuy()).isEmpty();
    }

    @Test
    void orderingAndLabels() {
        Vendor creamery = book.vendor("stone-creamery");
        assertThat(creamery.ordering()).isEqualTo(new Vendor.Ordering(new Contact(Optional.of("Make room"),
                List.of("8 Fold Lane", "Ebbing, NY"), Optional.of("607-555-0151 ext 4"),
                Optional.of("orders@stonefold.example")), Optional.of("TL-7"), Optional.of("Cold on the truck, please.")));
        assertThat(creamery.deliveries().get(0).window())
                .contains(new Vendor.Window(LocalTime.of(7, 0), LocalTime.of(10, 30)));
        assertThat(creamery.offers().get(0).number()).contains("CH-5");
        assertThat(creamery.offers().get(0).accept()).containsExactly(
                new Vendor.Accepted("Cheddar, mild, 5 lb block", Optional.of(2), Optional.of(new Cents(3000))),
                new Vendor.Accepted("Cheddar, 10 lb block", Optional.empty(), Optional.empty()));
        assertThat(book.kitchen().paperwork().orderNote()).contains("Side door. Ring twice.");
        assertThat(book.kitchen().paperwork().labels()).contains(
                new LabelStock(5, 2, 12_700, 3_969, 101_600, 50_000, 106_363, 50_800));
        assertThat(book.vendor("hollow-brook").ordering()).isEqualTo(Vendor.Ordering.NONE);
    }

    @Test
    void listAndOnHand() {
        assertThat(book.lists().get(new IsoWeek(2027, 33))).containsExactly(
                new ListedOffer("hollow-brook", "carrot", "25 lb sack", new Cents(2300), 5,
                LocalDate.of(2027, 8, 16), ""),
                new ListedOffer("hollow-brook", "carrot", "25 lb sack", new Cents(2300), 4,
                LocalDate.of(2027, 8, 19), "after the rain"),
                new ListedOffer("hollow-brook", "onion-yellow", "10 lb bag", new Cents(950), 6,
                LocalDate.of(2027, 8, 19), ""));
        assertThat(book.onHand().get(0).note()).isEqualTo("bin 2, walk-in");
        assertThat(book.onHand().get(3).thawed()).contains(LocalDate.of(2027, 8, 15));
        assertThat(book.onHand().get(3).received()).isEmpty();
    }

    @Test
    void kitchen() {
        Kitchen kitchen = book.kitchen();
        assertThat(kitchen.zone()).isEqualTo(ZoneId.of("America/New_York"));
        assertThat(kitchen.open()).hasSize(6).doesNotContain(DayOfWeek.SUNDAY);
        assertThat(kitchen.prepDays()).hasSize(7);
        assertThat(kitchen.lines().get(2)).isEqualTo(new Kitchen.ServiceLine("standing-dip", "House dip",
                "dip", 3, Optional.of("house-hummus")));
        assertThat(kitchen.gapDays()).isEqualTo(2);
        assertThat(kitchen.stations()).containsExactly(new Kitchen.Station("hot", "Hot line", 120,
                new Cents(2800)),
                new Kitchen.Station("cold", "Cold line", 90, new Cents(2600)),
                new Kitchen.Station("dock", "Dock", 0, Cents.ZERO));
        assertThat(kitchen.handsMinutes("dock", DayOfWeek.MONDAY)).isEqualTo(60);
        assertThat(kitchen.handsMinutes("hot", DayOfWeek.TUESDAY)).isEqualTo(300);
        assertThat(kitchen.receiving()).contains(new Kitchen.Receiving("dock", 12));
        assertThat(kitchen.equipment()).contains(new Kitchen.Equipment("walk-in", "Walk-in shelves",
                "pans", Optional.of(60), Optional.empty(), true),
                new Kitchen.Equipment("mixer", "Bowl mixer", "bowls", Optional.empty(), Optional.of(20),
                false));
        assertThat(kitchen.equipment().get(1).atOnce()).contains(20);
        assertThat(kitchen.equipment().get(0).atOnce()).isEmpty();
        assertThat(kitchen.paperwork().thawDays()).isEqualTo(2);
        assertThat(kitchen.surplusWorth()).isEqualTo(Map.of(Ingredient.Storage.WALK_IN, Ratio.of(3, 5),
                Ingredient.Storage.DRY, Ratio.of(19, 20), Ingredient.Storage.FREEZER, Ratio.of(9, 10)));
        assertThat(List.of(kitchen.leftWorth(), kitchen.goodwill(), kitchen.wastePerPound()))
                .isEqualTo(List.of(Ratio.of(1, 5), Ratio.of(1, 20), new Cents(15)));
        assertThat(kitchen.local().orElseThrow().definition().miles()).contains(150);
        assertThat(kitchen.healthCodeEdition()).isEqualTo("FDA Food Code 2017 (model)");
    }

    @Test
    void promises() {
        Promises promises = book.kitchen().promises();
        assertThat(promises.emptySlot()).isEqualTo(new Cents(15000));
        assertThat(promises.coverage()).containsExactly(
                new Promises.Coverage("vegan-main", "a vegan hot main", "V", Optional.of("main"),
                Optional.of(Promises.Diet.VEGAN), Set.of(), 1, new Cents(4000)),
                new Promises.Coverage("without-three", "two dishes that list no wheat, milk or egg", "W",
                Optional.empty(), Optional.empty(),
                        Set.of("wheat", "milk", "egg"), 2, new Cents(3000)));
        assertThat(promises.variety()).hasSize(4).contains(
                new Promises.Variety(Promises.Trait.MAIN, Promises.Within.NEXT_DAY, 1, new Cents(800)));
        assertThat(promises.localShare()).isEqualTo(Ratio.of(3, 10));
        assertThat(promises.foodCost()).contains(new Promises.FoodCost(Ratio.of(9, 25), Ratio.of(1, 5)));
        assertThat(promises.evennessPerMinute()).isEqualTo(Ratio.of(5));
        assertThat(promises.change()).isEqualTo(new Cents(1500));
    }

    @Test
    void seasons() {
        Seasons seasons = book.seasons();
        assertThat(seasons.named()).containsOnlyKeys("autumn", "spring", "summer", "winter")
                .containsEntry("winter", new WeekRange(49, 12));
        assertThat(seasons.targetFor(new IsoWeek(2027, 33))).isEqualTo(Ratio.of(45, 100));
        assertThat(seasons.demand().get("cold-salad-1").cv()).as("the file's own")
                .isEqualTo(Ratio.of(35, 100));
        assertThat(seasons.demand().get("cold-salad-1").mean())
                .containsEntry(DayOfWeek.FRIDAY, Ratio.of(51, 2));
        assertThat(seasons.demandFactorFor(new IsoWeek(2027, 33))).isEqualTo(Ratio.of(11, 10));
        assertThat(seasons.closures()).containsEntry(LocalDate.of(2027, 11, 25), "Thanksgiving");
        assertThat(seasons.events()).containsExactly(new Seasons.Event("harvest-meal",
                "Members' harvest meal", LocalDate.of(2027, 8, 19),
                Optional.of(LocalTime.of(18, 0)), 60, Ratio.of(1, 25), new Cents(1600),
                "12 vegan, 4 avoid wheat", List.of(
                new Seasons.Course("main", "main", Ratio.of(7, 10), Optional.of("lentil-bake"),
                Optional.empty()),
                new Seasons.Course("vegan", "main", Ratio.of(3, 10), Optional.empty(),
                Optional.of(Promises.Diet.VEGAN)),
                new Seasons.Course("side", "salad", Ratio.ONE, Optional.empty(), Optional.empty()))));
        assertThat(seasons.crops()).hasSize(2).contains(
                new Seasons.Crop("carrots", "carrot", new WeekRange(26, 48), "New York State", "invented"));
    }

    @Test
    void everyKeyOfTheFormat_standsInASampleKitchen() {
        String all = String.join("\n", SmallKitchen.files(SmallKitchen.FOLDER).keySet().stream()
                .filter(p -> p.endsWith(".yaml"))
                .map(p -> new SmallKitchen().text(p)).toList())
                + new String(SmallKitchen.files(SmallKitchen.WORTH_ONLY).get("recipes/dishes.yaml"),
                java.nio.charset.StandardCharsets.UTF_8)
                + LearnedText.of(LearnedFileTest.LEARNED) + LearnedText.of(LearnedFileTest.OWN); // the tool itself writes these
        for (Form form : Form.values()) {
            for (String key : form.known()) {
                assertThat(all).as(form + " " + key).containsPattern("(?m)(^|[ {,])" + key + ": ?");
            }
        }
    }

    private static Amount amount(long value, String unit) {
        return new Amount(Ratio.of(value), Unit.named(unit).orElseThrow());
    }
}
