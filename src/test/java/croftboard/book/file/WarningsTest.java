package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is no fault, but is told: with the numbers, at its place. */
class WarningsTest {
    private static final String CURRY =
            "kitchen/ingredients/pantry.yaml:56:14: allergens not fully stated: curry-powder";

    @Test
    void weightsOffByMoreThanThreePercent_tellBothNumbers() {
        // 4 lb + 3 lb + 8 oz + 1 oz = 7.5625 lb; less 20 % = 6.05 lb
        assertThat(new SmallKitchen().change("recipes/components.yaml", "makes: 6 lb", "makes: 5 lb")
                .warnings()).containsExactly(CURRY,
                "recipes/components.yaml:1:1: [soffritto] makes 5 lb, but its ingredients less 20% loss "
                + "weigh 6.05 lb");
    }

    @Test
    void weightsWithinThreePercent_areSilent() {
        // 6.05 / 6.2 is 2.4 % off; 6.05 / 6.25 is 3.2 % off
        assertThat(new SmallKitchen().change("recipes/components.yaml", "makes: 6 lb", "makes: 6.2 lb")
                .warnings()).containsExactly(CURRY);
        assertThat(new SmallKitchen().change("recipes/components.yaml", "makes: 6 lb", "makes: 6.25 lb")
                .warnings()).hasSize(2);
    }

    @Test
    void purchasedWeight_countsAsItsEdiblePortion() {
        // the diced onion yields 88 %
        String without = new SmallKitchen().change("recipes/dishes.yaml", "    - 1 lb onion-yellow, diced",
                "    - 10 lb AP onion-yellow, diced").warnings().toString();
        String edible = new SmallKitchen().change("recipes/dishes.yaml", "    - 1 lb onion-yellow, diced",
                "    - 8.8 lb onion-yellow, diced").warnings().toString();
        assertThat(without).isEqualTo(edible).contains("[chickpea-salad] makes 16 lb, but");
    }

    @Test
    void dishThatNoLineFits() {
        assertThat(new SmallKitchen().change("recipes/dishes.yaml", "fits: [hot-main-1]",
                "fits: [hot-mian-1]").warnings())
                .contains("recipes/dishes.yaml:36:9: no line fits [penne-bake]: hot-mian-1; did you "
                + "mean [hot-main-1]?");
        assertThat(new SmallKitchen().change("recipes/dishes.yaml", "fits: [hot-main-1]",
                "fits: [hot-main-1, side]").warnings())
                .contains("recipes/dishes.yaml:36:9: [penne-bake] fits side, which is no course or line");
    }

    @Test
    void componentThatNobodyUses() {
        assertThat(new SmallKitchen().change("recipes/components.yaml", "- 3 lb soffritto", "- 3 lb tahini")
                .warnings())
                .contains("recipes/components.yaml:1:1: no recipe uses the component [soffritto]");
    }

    @Test
    void countWithoutAnyDate() {
        assertThat(new SmallKitchen().change("kitchen/on-hand.csv", "salt,4 lb,2027-06-01", "salt,4 lb,")
                .warnings())
                .contains("kitchen/on-hand.csv:4:1: [salt] is counted without any date: not usable in "
                + "ready-to-eat food");
    }

    @Test
    void ingredientThatNobodySells_inAWeekOfNeed() {
        assertThat(new SmallKitchen().change("farms/stone-creamery.yaml", "{from: W01, to: W53",
                "{from: W10, to: W40").warnings())
                .contains("kitchen/ingredients/dairy.yaml:1:1: nobody sells [cheddar] in W01..W09, "
                + "W41..W53, when penne-bake may need it");
    }

    @Test
    void ingredientOutOfItsRecipesSeason_isNotMissed() {
        SmallKitchen kitchen = new SmallKitchen()
                .change("farms/stone-creamery.yaml", "{from: W01, to: W53", "{from: W23, to: W36")
                .change("recipes/dishes.yaml", "seasons: [summer, autumn, winter, spring]",
                "seasons: [summer]");
        assertThat(kitchen.warnings()).noneMatch(w -> w.contains("cheddar"));
    }

    @Test
    void ingredientOfAComponent_isNeededWhenItsDishesAre() {
        SmallKitchen kitchen = new SmallKitchen()
                .change("farms/mill-run-depot.yaml", "{item: tomato-crushed-can,", "{item: salt,")
                .change("farms/mill-run-depot.yaml", "pack: case of 6 No. 10 cans, holds: 6 cans",
                "pack: box, holds: 6 lb");
        assertThat(kitchen.warnings()).contains(
                "kitchen/ingredients/pantry.yaml:26:1: nobody sells [tomato-crushed-can] in W01..W53, "
                + "when house-marinara may need it");
    }

    @Test
    void dishThatIsNeverInSeason() {
        SmallKitchen kitchen = new SmallKitchen()
                .change("recipes/dishes.yaml", "weeks: W01..W52", "weeks: W02..W08")
                .change("recipes/dishes.yaml", "seasons: [summer, autumn, winter, spring]",
                "seasons: [summer]");
        assertThat(kitchen.warnings()).contains("recipes/dishes.yaml:33:1: [penne-bake] is never in season:"
                + " its weeks hold none of its seasons' weeks");
    }

    @Test
    void unstatedAllergens_inOneLine() {
        assertThat(new SmallKitchen().change("kitchen/ingredients/dairy.yaml", "[milk]", "[milk, unknown]")
                .warnings())
                .containsExactly(
                "kitchen/ingredients/dairy.yaml:5:14: allergens not fully stated: cheddar, curry-powder");
    }
}
