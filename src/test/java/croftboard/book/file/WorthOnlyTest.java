package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Fault;
import croftboard.book.Recipe;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;

/** Books of the kind "worth only" need days, lines and equipment, and nothing else. */
class WorthOnlyTest {
    private static final String DISHES = "recipes/dishes.yaml";
    private final SortedMap<String, byte[]> files = SmallKitchen.files(SmallKitchen.WORTH_ONLY);

    private void change(String path, String before, String after) {
        String text = new String(files.get(path), StandardCharsets.UTF_8);
        assertThat(text).contains(before);
        files.put(path, text.replace(before, after).getBytes(StandardCharsets.UTF_8));
    }

    private List<String> faults() {
        return BookReader.readFiles(files).faultsFound().stream().map(Fault::toString).toList();
    }

    @Test
    void defaults_standForWhatOnlyAWorkingKitchenNeeds() {
        Book book = BookReader.read(SmallKitchen.WORTH_ONLY).orElseThrow();
        assertThat(book.recipe("soup-a").worthOnly()).contains(new Recipe.WorthOnly(new Cents(900),
                Map.of("oven-a", Ratio.of(5), "oven-b", Ratio.of(4))));
        assertThat(book.recipe("soup-a").sale().orElseThrow().fits()).containsExactly("line-1");
        assertThat(book.kitchen().prepDays()).isEqualTo(book.kitchen().open());
        assertThat(book.kitchen().gapDays()).isZero();
        assertThat(book.kitchen().promises()).isEqualTo(PromisesReader.NO_PROMISES);
        assertThat(book.kitchen().local()).isEmpty();
        assertThat(book.kitchen().receiving()).isEmpty();
        assertThat(book.kitchen().equipment()).extracting(e -> e.perWeek())
                .containsExactly(Optional.of(12), Optional.empty());
        assertThat(book.vendors()).isEmpty();
        assertThat(book.seasons().demand()).isEmpty();
    }

    @Test
    void worthAndIngredients_donotGoTogether() {
        change(DISHES, "worth: $9.00,", "worth: $9.00, ingredients: [1 lb salt],");
        assertThat(faults()).singleElement().asString()
                .contains("dishes.yaml:1:52: unknown key [ingredients] in the dish [soup-a]");
    }

    @Test
    void unknownEquipment_andWrongUnit() {
        change(DISHES, "oven-a: 7 units", "oven-c: 7 units");
        change(DISHES, "oven-a: 6 units", "oven-a: 6 pans");
        assertThat(faults()).containsExactly(
                "recipes/dishes.yaml:2:58: no equipment is called [oven-c] -> did you mean [oven-a]?",
                "recipes/dishes.yaml:4:67: [oven-a] is counted in units, not in [pans] -> write the "
                + "number and units");
    }

    @Test
    void noUnits_areLeftOut_andADishMayUseNothing() {
        change(DISHES, "oven-a: 5 units, oven-b: 4 units", "oven-a: 0 units, oven-b: 4 units");
        change(DISHES, "uses: {oven-a: 7 units}", "uses: {}");
        change(DISHES, "oven-a: 3 units", "oven-a: -3 units");
        assertThat(faults()).singleElement().asString().contains("[-3 units] is no number of units");
        change(DISHES, "oven-a: -3 units", "oven-a: 3 units");
        Book book = BookReader.readFiles(files).orElseThrow();
        assertThat(book.recipe("soup-a").worthOnly().orElseThrow().uses()).containsExactly(Map.entry("oven-b", Ratio.of(4)));
        assertThat(book.recipe("soup-b").worthOnly().orElseThrow().uses()).isEmpty();
    }

    @Test
    void oneCookedDish_makesItAWorkingKitchen() {
        files.put("recipes/more.yaml",
                ("broth: {name: x, kind: component, makes: 1 lb, batch_step: 1, life: 1 day, hold: cold,"
                + " ingredients: [1 lb soup-a], steps: [{do: x}]}\n").getBytes(StandardCharsets.UTF_8));
        assertThat(faults()).hasSize(KitchenReader.NEEDED.size() - 1 + 1)
                .anyMatch(f -> f.contains("the key [promises] is missing in the kitchen"))
                .anyMatch(f -> f.startsWith("seasons/demand.yaml: "));
    }
}
