package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.book.file.BookReader;
import croftboard.measure.Amount;
import croftboard.measure.CookAmounts;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.CheapestPrices;
import croftboard.need.ScaledRecipe;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scaling and cost against published answers; each source stands beside its check. */
class PublishedScalingTest {
    private static final Path SMALL = Path.of("src/test/resources/kitchens/small");

    private static Amount amount(String text) {
        return Amount.parse(text).orElseThrow();
    }

    private static String scaled(String text, String factor) {
        return CookAmounts.of(amount(text).times(Amount.number(factor).orElseThrow()));
    }

    @Test
    void mass_isScaledAndRoundedAsOnTheArmedForcesCard() {
        // TM 10-412, card A-1(2): 1 lb 4 oz for 100 portions, 348 wanted: 4 lb 5 1/2 oz
        assertThat(scaled("1.25 lb", "3.48")).isEqualTo("4 lb 5-1/2 oz");
    }

    @ParameterizedTest
    @CsvSource({"0.12, 5 oz", "0.13, 5-1/4 oz", "0.37, 5-1/4 oz", "0.38, 5-1/2 oz", "0.62, 5-1/2 oz",
        "0.63, 5-3/4 oz", "0.87, 5-3/4 oz", "0.88, 6 oz", "0.99, 6 oz"})
    void ounces_followTheCardsRoundingScale(String fraction, String printed) {
        // TM 10-412, card A-1(2): .00-.12 -> 0; .13-.37 -> 1/4; .38-.62 -> 1/2; .63-.87 -> 3/4; .88-.99 -> 1
        Ratio ounces = Ratio.of(5).plus(Ratio.decimal(fraction));
        assertThat(CookAmounts.mass(ounces.times(Unit.OUNCE.base()))).isEqualTo(printed);
    }

    @Test
    void volume_isBrokenDownTheLadderOfTheCard() {
        // TM 10-412, card A-1(3): 6 gal for 100 portions, 333 wanted
        assertThat(scaled("6 gal", "3.33")).isEqualTo("19 gal 3 qt 1 pt 1 cup 10 tbsp 2-3/4 tsp");
    }

    @Test
    void edibleToPurchased_isPrintedAsOnTheCard() {
        // TM 10-412, card A-6: pared cucumbers, 3 lb EP x 1.19 = 3.57 lb, 3 lb 9 oz AP
        assertThat(scaled("3 lb", "1.19")).isEqualTo("3 lb 9 oz");
    }

    @ParameterizedTest
    @CsvSource({"15 lb, 80, 12 lb", "13.125 lb, 80, 10 lb 8 oz"})
    void purchasedToEdible_cabbageOfTheRecipeCards(String ap, int percent, String ep) {
        // TM 10-412, card M-9: 15 lb cabbage -> 12 lb shredded; cabbage and carrot slaw: 13 lb 2 oz -> 10 lb 8 oz
        assertThat(CookAmounts.mass(amount(ap).base().times(percent).over(100))).isEqualTo(ep);
    }

    /** The small kitchen with a pie of five portions; a portion weighs 1 lb, which the published figures do not need. */
    private static Book pie() throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(SMALL)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(SMALL.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        StringBuilder shelf = new StringBuilder();
        StringBuilder offers = new StringBuilder("name: Pie Sources\nkind: distributor\n"
                + "place: {town: Syrrup, state: NY, latitude: 43.05, longitude: -76.15}\n"
                + "deliveries: [{day: tue, cut_off: mon 10:00}]\nminimum: $0\nfee: $0\noffers:\n");
        String[][] items = {{"pie-chicken", "poultry", "1 kg", "2.75"}, {"pie-onion", "plant", "1 kg", "0.65"},
            {"pie-butter", "dairy", "1 kg", "5.95"}, {"pie-flour", "plant", "40 kg", "22.00"},
            {"pie-milk", "dairy", "20 kg", "15.65"}};
        for (String[] i : items) {
            shelf.append(i[0]).append(": {name: ").append(i[0]).append(", origin: ").append(i[1])
                    .append(", allergens: unknown, tcs: unknown, storage: walk-in, keeps: 9 days}\n");
            offers.append("  - {item: ").append(i[0]).append(", pack: one, holds: ").append(i[2]).append(", price: $")
                    .append(i[3]).append(", grown_at: unknown, weeks: [{from: W01, to: W53, packs: 9, confidence: sure}]}\n");
        }
        String recipe = """
                pie:
                  name: Pie
                  kind: dish
                  fits: [main]
                  seasons: all
                  makes: 5 lb
                  portion: 1 lb
                  price: $5.95
                  draw: 1
                  main: chicken
                  method: baked
                  cuisine: american
                  batch_step: 1
                  life: 2 days
                  hold: hot
                  lead: 0 days
                  loss: 50%
                  ingredients: [1.5 kg pie-chicken, 120 g pie-onion, 220 g pie-butter, 220 g pie-flour, 2.5 kg pie-milk]
                  steps: [{do: "Bake.", station: hot, active: 5 min}]
                """;
        files.put("kitchen/ingredients/pie.yaml", shelf.toString().getBytes(StandardCharsets.UTF_8));
        files.put("farms/pie-sources.yaml", offers.toString().getBytes(StandardCharsets.UTF_8));
        files.put("recipes/pie.yaml", recipe.getBytes(StandardCharsets.UTF_8));
        return BookReader.readFiles(files).orElseThrow();
    }

    @Test
    void portionCost_ofThePublishedPie() throws IOException {
        // Trade Calculations, objective 7 (members.shaw.ca/gwall/tradecalc/porcost.htm): lines $4.13, $0.08, $1.31,
        // $0.12, $1.96; $1.52 a portion. Milk is taken as 1 kg a litre: it is bought and used by the same measure.
        Book book = pie();
        Recipe pie = book.recipe("pie");
        CheapestPrices prices = new CheapestPrices(book, new IsoWeek(2027, 33));
        ScaledRecipe scaled = ScaledRecipe.tree(book, pie, Ratio.ONE).get(0);
        assertThat(scaled.lines().stream().map(l -> prices.cents(l.written().item(), l.ap()).round()))
                .containsExactly(413L, 8L, 131L, 12L, 196L);
        // their total adds rounded lines: $7.60; ours rounds the exact sum, $7.589, once
        Ratio cents = prices.batchCents(pie);
        assertThat(cents.toDecimal(1)).isEqualByComparingTo("758.9");
        assertThat(cents.over(5).round()).isEqualTo(152);
    }

    @Test
    void batches_fromWhatIsOnHand() throws IOException {
        // TM 10-412, card A-1(3): 102 lb on hand, 30 lb for 100 portions: factor 3.40. Here as 1.5 kg a batch: 5.1 kg
        Book book = pie();
        assertThat(ScaledRecipe.batchesFromOnHand(book, book.recipe("pie"), "pie-chicken", Ratio.of(5100)))
                .contains(Ratio.decimal("3.4"));
    }

    @Test
    void ounceTable_ofTheCard() {
        // TM 10-412, card A-1: ounces as decimal pounds, a half going up: 2 oz .13, 10 oz .63, 1 lb 4 oz 1.25
        assertThat(pounds(2)).isEqualTo("0.13");
        assertThat(pounds(10)).isEqualTo("0.63");
        assertThat(pounds(20)).isEqualTo("1.25");
    }

    private static String pounds(int ounces) {
        return new Amount(Ratio.of(ounces), Unit.OUNCE).in(Unit.POUND).value().toDecimal(2).toPlainString();
    }
}
