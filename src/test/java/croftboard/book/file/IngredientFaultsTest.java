package croftboard.book.file;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class IngredientFaultsTest {
    /** The rest of an ingredient that nothing uses. */
    private static final String WHOLE =
                    " {name: x, origin: plant, allergens: none, storage: dry, keeps: 9 days}\n";
    private static final String FRESH = "kitchen/ingredients/fresh.yaml";
    private static final String PANTRY = "kitchen/ingredients/pantry.yaml";

    @ParameterizedTest
    @MethodSource
    void oneFault_toldOnceAtItsPlaceWithTheRemedy(FaultCase fault) {
        fault.holds();
    }

    static Stream<FaultCase> oneFault_toldOnceAtItsPlaceWithTheRemedy() {
        return Stream.of(
            fresh("unknown key", "  storage: walk-in\n", "  storage: walk-in\n  «colour: orange\n",
                    "unknown key [colour]", "the keys here are name"),
            fresh("mistyped key", "keep_worth: 70%", "«keep_wort: 70%", "unknown key [keep_wort]",
                    "did you mean [keep_worth]?"),
            fresh("key twice", "  keeps: 21 days\n", "  keeps: 21 days\n  «keeps: 20 days\n",
                    "[keeps] stands twice", "keep one"),
            fresh("key missing", "carrot:\n  name: carrots\n", "«carrot:\n",
                    "the key [name] is missing in the ingredient [carrot]", "add name: ..."),
            fresh("id twice in a file", "onion-yellow:", "«carrot:" + WHOLE + "onion-yellow:",
                    "[carrot] stands twice", "a name of its own"),
            fresh("id in capitals", "carrot:\n", "«Carrot Root:" + WHOLE + "carrot:\n",
                    "[Carrot Root] is not lower-case", "write carrot-root"),
            fresh("id too long", "thyme:\n", "«" + "t".repeat(61) + ":" + WHOLE + "thyme:\n",
                    "longer than 60", "shorten"),
            fresh("id begins with a digit", "thyme:\n", "«1thyme:" + WHOLE + "thyme:\n",
                    "[1thyme] is not lower-case", "write thyme"),
            fresh("unknown word", "origin: plant", "origin: «plnt", "[plnt] is not one of plant, fungus",
                    "did you mean [plant]?"),
            fresh("a list where a word belongs", "storage: walk-in", "storage: «[walk-in]",
                    "a list or a group of keys", "write one of walk-in, dry, freezer"),
            fresh("nothing written", "name: carrots", "name: «~", "nothing is written here",
                    "write a text"),
            fresh("allergen group", "allergens: none", "allergens: [«nuts]", "[nuts] is none of the words",
                    "almond, walnut"),
            fresh("fish without kind", "allergens: none", "allergens: [«fish]",
                    "[fish] is none of the words", "fish-cod"),
            fresh("mistyped allergen", "allergens: none", "allergens: [milk, «sesam]",
                    "[sesam] is none of the words", "did you mean [sesame]?"),
            fresh("allergen without list", "allergens: none", "allergens: «milk",
                    "[milk] is neither none, unknown nor a list", "write [milk]"),
            fresh("none inside a list", "allergens: none", "allergens: [«none, milk]",
                    "[none] is none of the words", "none stands alone"),
            fresh("empty list of allergens", "allergens: none", "allergens: «[]", "empty list",
                    "write none or unknown"),
            fresh("allergen twice", "allergens: none", "allergens: [milk, «milk]", "[milk] stands twice",
                    "keep one"),
            fresh("gluten grain", "gluten_grains: none", "gluten_grains: [«ryee]",
                    "[ryee] is none of the words", "[rye]"),
            fresh("wrong kind of unit", "keeps: 21 days", "keeps: «21 lb", "[lb] is a weight, not days",
                    "units here: s min h day"),
            fresh("wrong unit of time", "keeps: 21 days", "keeps: «48 h",
                    "[48 h] is not 0 to 1500 whole days", "write days like"),
            fresh("part of a day", "keeps: 21 days", "keeps: «1/2 day", "[1/2 day] is not",
                    "write days like"),
            fresh("no unit", "keeps: 21 days", "keeps: «21", "[21] has no unit", "write days like"),
            fresh("no space before the unit", "weighs: 128 g", "weighs: «128g", "[128g] needs a space",
                    "25 lb"),
            fresh("unknown unit", "weighs: 128 g", "weighs: «128 grm", "[grm] is no unit",
                    "units here: g kg oz lb"),
            fresh("no number", "weighs: 128 g", "weighs: «some g", "[some] is no number", "1-1/2"),
            fresh("exponent", "weighs: 128 g", "weighs: «1e2 g", "[1e2] is no number", "2.5"),
            fresh("thousands separator", "weighs: 128 g", "weighs: «\"1,280 g\"",
                    "[1,280] has a thousands separator", "write it like"),
            fresh("negative", "weighs: 128 g", "weighs: «-128 g", "[-128] is negative", "write it like"),
            fresh("zero", "weighs: 128 g", "weighs: «0 g", "an amount of zero", "above zero"),
            fresh("too much", "weighs: 128 g", "weighs: «1000001 g", "more than a kitchen handles",
                    "check the number"),
            fresh("denominator zero", "weighs: 128 g", "weighs: «1/0 g", "[1/0] is no number", "1/2"),
            fresh("weight by volume", "weighs: 128 g", "weighs: «128 ml", "[ml] is a volume, not a weight",
                    "units here: g kg oz lb"),
            fresh("measure by weight", "measure: 1 cup, cut: diced", "measure: «1 oz, cut: diced",
                    "[oz] is a weight, not a measure", "ml L tsp"),
            fresh("yield zero", "yield: 80%", "yield: «0%", "[0%] is out of range", "above 0% to 100%"),
            fresh("yield above all", "yield: 80%", "yield: «101%", "[101%] is out of range",
                    "above 0% to 100%"),
            fresh("share without sign", "yield: 80%", "yield: «0.8", "[0.8] is no share", "like 36%"),
            fresh("source missing", "diced: {yield: 80%, source: \"invented\"}", "«diced: {yield: 80%}",
                    "[source] is missing in the cut [diced]", "add source"),
            fresh("measure of an unknown cut", "cut: diced, weighs", "cut: «dised, weighs",
                    "there is no cut [dised]", "did you mean [diced]?"),
            fresh("two measures for one cut", "    - {measure: 1 each, of: ap, weighs: 85 g",
                    "    - «{measure: 2 tbsp, cut: diced, weighs: 16 g, source: x}\n    - {measure: 1 "
                    + "each, of: "
            + "ap, weighs: 85 g",
                "a second measure by the tbsp for the cut [diced]", "a volume tells all volumes"),
            fresh("of something else", "1 each, of: ap, weighs: 85 g", "1 each, of: «ep, weighs: 85 g",
                    "[ep] is not one of ap", "[ap]"),
            fresh("unknown substitute", "{use: thyme-dried, ratio: 1/3}",
                    "{use: «dried-thyme, ratio: 1/3}", "no ingredient is called [dried-thyme]",
                    "did you mean [thyme-dried]?"),
            fresh("substitute with an unknown cut", "{use: garlic, cut: minced, ratio: 0.5}",
                    "{use: garlic, cut: «mincd, ratio: 0.5}", "[garlic] has no cut [mincd]",
                    "did you mean [minced]?"),
            fresh("substitute without its cut", "{use: garlic, cut: minced, ratio: 0.5}",
                    "{use: «garlic, ratio: 0.5}", "[garlic] is used without a cut", "add one: minced"),
            fresh("substitute is a recipe", "{use: thyme-dried, ratio: 1/3}",
                    "{use: «soffritto, ratio: 1/3}", "[soffritto] is a recipe", "name an ingredient"),
            fresh("substitute is itself", "{use: thyme-dried, ratio: 1/3}",
                    "{use: «thyme, cut: leaves, ratio: 1/3}", "cannot replace itself", "another"),
            fresh("ratio zero", "ratio: 1/3", "ratio: «0", "[0] is out of range", "like 1/3"),
            fresh("thaw outside the freezer", "  keep_worth: 70%\n", "  keep_worth: 70%\n  thaw: «1 day\n",
                    "not in the freezer", "storage: freezer"),
            fresh("cuts as a list", "  cuts:\n    leaves: {yield: 65%, source: \"invented\"}\n",
                    "  cuts:\n    «- leaves\n", "cuts are not written as name: ... lines", "write name:"),
            pantry("par that cannot be weighed", "par: 2 lb", "par: «2 cans",
                    "no measure says what one can of [curry-powder] weighs as purchased", "of: ap"),
            fresh("milk of plant origin", "allergens: none", "allergens: «[milk]",
                    "an allergen of animal kind in food of origin plant", "add its origin"),
            pantry("par of something free", "  free: yes\n", "  free: yes\n  par: «1 lb\n",
                    "a par for something free", "leave par out"),
            pantry("not yes", "free: yes", "free: «true", "[true] is neither yes nor no",
                    "write yes or no"));
    }

    @Test
    void anIngredientInTwoFiles_namesTheFirstPlace() {
        new SmallKitchen().change(PANTRY, "tahini:\n", "tahini:\n").put("kitchen/ingredients/zz.yaml",
                "«salt:\n  name: salt\n  origin: mineral\n  allergens: none\n  storage: dry\n  keeps: 9 "
                + "days\n")
                .hasOneFault("the ingredient [salt] is already in kitchen/ingredients/pantry.yaml:73:1",
                "keep one of them");
    }

    private static FaultCase fresh(String name, String before, String after, String wrong, String right) {
        return new FaultCase(name, FRESH, before, after, wrong, right);
    }

    private static FaultCase pantry(String name, String before, String after, String wrong, String right) {
        return new FaultCase(name, PANTRY, before, after, wrong, right);
    }
}
