package croftboard.book.file;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RecipeFaultsTest {
    private static final String DISHES = "recipes/dishes.yaml";
    private static final String COMPONENTS = "recipes/components.yaml";

    @ParameterizedTest
    @MethodSource
    void oneFault_toldOnceAtItsPlaceWithTheRemedy(FaultCase fault) {
        fault.holds();
    }

    static Stream<FaultCase> oneFault_toldOnceAtItsPlaceWithTheRemedy() {
        return Stream.of(
            dish("unknown key", "  draw: 1.05\n", "  «drw: 1.05\n",
                    "unknown key [drw] in the dish [lentil-bake]", "did you mean [draw]?"),
            dish("unknown kind", "kind: dish", "kind: «dihs", "[dihs] is not one of",
                    "did you mean [dish]?"),
            component("component with a price", "  cup: 230 g\n", "  cup: 230 g\n  «price: $3.00\n",
                    "unknown key [price] in the component [soffritto]", "cup"),
            dish("dish without a price",
                    "lentil-bake:\n  name: Lentil bake\n  kind: dish\n  fits: [main]\n  seasons: all\n  "
                    + "makes: "
            + "24 lb\n  portion: 12 oz\n  price: $9.50\n",
                "«lentil-bake:\n  name: Lentil bake\n  kind: dish\n  fits: [main]\n  seasons: all\n  "
                + "makes: 24 lb\n  portion: 12 oz\n", "[price] is missing in the dish [lentil-bake]",
                "add price"),
            dish("price of nothing", "price: $9.50", "price: «$0.00", "[$0.00] is no price: it is zero",
                    "$3.40"),
            dish("price without dollars", "price: $9.50", "price: «9.50", "[9.50] is no money", "$3.40"),
            dish("price with one digit", "price: $9.50", "price: «$9.5", "[$9.5] is no money",
                    "dollars and cents"),
            dish("negative price", "price: $9.50", "price: «$-9.50", "it is negative", "$3.40"),
            dish("makes by volume", "makes: 24 lb", "makes: «6 gal", "[gal] is a volume, not a weight",
                    "g kg oz lb"),
            dish("portion above the batch", "makes: 24 lb\n  portion: 12 oz",
                    "makes: 24 lb\n  portion: «25 lb", "a portion of 25 lb is more than the batch of 24 lb",
                    "check makes"),
            dish("draw too high", "draw: 1.05", "draw: «1.7", "[1.7] is out of range", "0.5 to 1.6"),
            dish("batch step above one", "batch_step: 1/4", "batch_step: «5/4", "[5/4] is out of range",
                    "like 1/4"),
            dish("life too long when hot", "life: 4 days", "life: «8 days",
                    "a life of 8 days for food held hot or cold", "at most 7 days"),
            component("life too long when cold", "life: 4 days", "life: «10 days",
                    "a life of 10 days for food held hot or cold", "at most 7 days"),
            component("garlic in oil kept too long", "garlic_in_oil: no", "garlic_in_oil: yes",
                    "a life of 5 days for garlic in oil", "at most 4 days").expecting("life: «5 days"),
            dish("more declared than there is", "net_weight: 1 oz", "net_weight: «5 oz",
                    "a declared weight of 5 oz for a portion of 4 oz", "at most the portion"),
            dish("item number of four digits", "item_number: 12345", "item_number: «1234",
                    "[1234] is no item number of five digits", "like 12345"),
            dish("life of nothing", "life: 4 days", "life: «0 days", "[0 days] is not 1 to", "days like"),
            dish("lead too long", "lead: 0 days", "lead: «2 days", "[2 days] is not 0 to 1 whole days",
                    "write days like"),
            dish("loss of all", "loss: 13%", "loss: «100%", "[100%] is out of range", "0% to 95%"),
            dish("unknown season", "seasons: [summer, autumn", "seasons: [«sumer, autumn",
                    "no season is called [sumer]", "did you mean [summer]?"),
            dish("season without list", "seasons: [summer, autumn, winter, spring]", "seasons: «summer",
                    "[summer] is not a list of seasons", "[summer]"),
            dish("season twice", "seasons: [summer, autumn", "seasons: [summer, «summer, autumn",
                    "[summer] stands twice", "keep one"),
            dish("no weeks", "weeks: W01..W52", "weeks: «W01..W54", "[W01..W54] is no week of the year",
                    "W01 to W53"),
            dish("weeks of one year", "weeks: W01..W52", "weeks: «2027-W33",
                    "[2027-W33] is no week of the year", "like W30..W38"),
            dish("fits nothing", "fits: [main]", "fits: «[]", "a dish that fits nowhere", "[main]"),
            dish("unknown ingredient", "- 5 lb lentil-brown", "- 5 lb «lentil-bron",
                    "no ingredient or recipe is called [lentil-bron]", "did you mean [lentil-brown]?"),
            dish("words of the name swapped", "- 5 lb lentil-brown", "- 5 lb «brown-lentil",
                    "no ingredient or recipe is called [brown-lentil]", "did you mean [lentil-brown]?"),
            dish("nothing near", "- 5 lb lentil-brown", "- 5 lb «quetzal",
                    "no ingredient or recipe is called [quetzal]",
                    "add it under kitchen/ingredients/ or recipes/"),
            dish("used without a cut", "- 4 lb carrot, diced", "- 4 lb «carrot",
                    "[carrot] is used without a cut", "add one: diced, grated"),
            dish("unknown cut", "- 4 lb carrot, diced", "- 4 lb carrot, «dicd",
                    "[carrot] has no cut [dicd]", "did you mean [diced]?"),
            dish("cut unlike any", "- 4 lb carrot, diced", "- 4 lb carrot, «julienne",
                    "[carrot] has no cut [julienne]", "its cuts are diced, grated"),
            dish("cut of uncut food", "- 5 lb lentil-brown", "- 5 lb lentil-brown, «whole",
                    "[lentil-brown] has no cuts", "leave [whole] out"),
            dish("two cuts", "- 4 lb carrot, diced", "- 4 lb carrot,« diced, small",
                    "[diced, small] is no cut", "notes in (brackets)"),
            dish("unit without a measure", "- 4 lb carrot, diced", "- 4 «bunches carrot, diced",
                    "no measure says what one bunch of [carrot, diced] weighs",
                    "its measures: cup (diced), each"),
            dish("measure of another cut", "- 10 lb carrot, grated", "- 10 «cups carrot, grated",
                    "no measure says what one cup of [carrot, grated] weighs", "use a weight"),
            dish("AP with an EP measure", "- 1 cup lemon, juiced", "- 1 «cup AP lemon, juiced",
                    "AP, but the cup of [lemon, juiced] is a measure of the edible portion",
                    "leave AP out"),
            dish("unknown unit", "- 5 lb lentil-brown", "- 5 «lbz lentil-brown", "[lbz] is no unit",
                    "did you mean [lb]?"),
            dish("time for food", "- 5 lb lentil-brown", "- 5 «min lentil-brown",
                    "[min] is a time, not an amount of food", "units here: g kg"),
            dish("no number", "- 5 lb lentil-brown", "- «five lb lentil-brown", "[five] is no number",
                    "1-1/2"),
            dish("negative", "- 5 lb lentil-brown", "- «-5 lb lentil-brown", "[-5] is negative", "6, 2.5"),
            dish("zero", "- 5 lb lentil-brown", "- «0 lb lentil-brown", "an amount of zero",
                    "leave the whole line out"),
            dish("no unit", "- 5 lb lentil-brown", "- «5 lentil-brown",
                    "[5 lentil-brown] is no ingredient line", "say the unit: 5 lb lentil-brown"),
            dish("name of two words", "- 5 lb lentil-brown", "- «5 lb lentil brown",
                    "[5 lb lentil brown] is no ingredient line", "with hyphens, like [lentil-brown]"),
            dish("name in capitals", "- 5 lb lentil-brown", "- 5 lb «Lentil-brown",
                    "[Lentil-brown] is not lower-case", "write lentil-brown"),
            dish("words behind the note", "- 5 lb lentil-brown", "- 5 lb lentil-brown «(rinsed) twice",
                    "a note that is not closed", "end the line with )"),
            dish("a colon in the line", "- 5 lb lentil-brown", "- «5 lb lentil-brown (note: rinsed)",
                    "a colon in the line", "put \"quotes\""),
            dish("a comma without quotes", "{use: \"6 lb chickpea, soaked\", ahead: 1 day}",
                    "{use: \"6 lb chickpea, soaked\", «small, ahead: 1 day}", "unknown key [small]",
                    "put \"quotes\" around a text that holds a comma"),
            dish("no list", "  ingredients:\n    - 5 lb lentil-brown\n    - 4 lb carrot, diced\n    - 3 "
            + "qt house-marinara\n    - 2 lb AP onion-yellow, diced\n    - 1 gal water\n    - 2 lb "
            + "pea-frozen\n    - 2 tbsp curry-powder\n",
                "  ingredients: «5 lb lentil-brown\n", "a list belongs here", "a line - ... for each"),
            dish("no cup", "- 3 qt house-marinara", "- 3 «qt carrot-slaw",
                    "[carrot-slaw] is used by the qt", "add cup: ... g to [carrot-slaw]"),
            dish("recipe by the piece", "- 3 qt house-marinara", "- 3 «each house-marinara",
                    "[house-marinara] is a recipe, which is used by weight or by the cup",
                    "write a weight"),
            dish("recipe as purchased", "- 8 lb house-marinara", "- 8 lb AP «house-marinara",
                    "which nobody purchases", "leave AP out"),
            dish("recipe with a cut", "- 8 lb house-marinara", "- 8 lb house-marinara, «hot",
                    "which has no cuts", "(note)"),
            dish("recipe ahead", "- 8 lb house-marinara", "- {use: «8 lb house-marinara, ahead: 1 day}",
                    "which has its own lead", "leave ahead out"),
            dish("no substitute declared", "- 5 lb lentil-brown",
                    "- {use: «5 lb lentil-brown, substitute: plan}",
                    "[lentil-brown] declares no substitute",
                    "add substitutes"),
            dish("unknown use of a substitute", "- 5 lb lentil-brown",
                    "- {use: 5 lb lentil-brown, substitute: «short}", "[short] is not one of plan", "plan"),
            dish("dish in itself", "- 10 lb carrot, grated", "- 10 lb «carrot-slaw",
                    "[carrot-slaw] is made from itself: carrot-slaw -> carrot-slaw", "take it out"),
            component("ring of two", "- 3 lb carrot, diced", "- 3 lb «house-marinara",
                    "made from itself: house-marinara -> soffritto -> house-marinara", "take it out"),
            dish("unknown station", "station: hot, active: 20 min", "station: «hott, active: 20 min",
                    "no station is called [hott]", "did you mean [hot]?"),
            dish("the receiving station", "station: hot, active: 20 min", "station: «dock, active: 20 min",
                    "[dock] receives deliveries and does no recipe's work", "name another station"),
            dish("unknown equipment", "uses: {kettle: 16 L}", "uses: {«ketle: 16 L}",
                    "no equipment is called [ketle]", "did you mean [kettle]?"),
            dish("wrong unit of equipment", "uses: {kettle: 16 L}", "uses: {kettle: «16 pans}",
                    "[kettle] is counted in L, not in [pans]", "write the number and L"),
            dish("no unit of equipment", "uses: {kettle: 16 L}", "uses: {kettle: «16}", "[16] has no unit",
                    "like 4 pans"),
            dish("active without a station",
                    "- {do: \"Simmer lentils with the vegetables until they hold their shape.\", "
                    + "station: hot, "
            + "active", "- «{do: \"Simmer\", active", "active time without a station", "add station"),
            dish("days of work", "active: 20 min", "active: «2 days", "[2 days] is no time of work",
                    "s, min or h"),
            component("portions of a component", "active: 25 min", "active: 25 min, per_portion: «5 s",
                    "which has no portions", "put it into active"),
            dish("step without words", "- {do: \"Grate, dress, chill to 41 F or below.\", ", "- «{",
                    "[do] is missing in the step", "add do"));
    }

    @Test
    void sameRecipeInTwoFiles_namesTheFirstPlace() {
        SmallKitchen kitchen = new SmallKitchen();
        String slaw = kitchen.text(DISHES).substring(kitchen.text(DISHES).indexOf("carrot-slaw:"),
                kitchen.text(DISHES).indexOf("chickpea-salad:"));
        kitchen.put("recipes/zz.yaml", "«" + slaw)
                .hasOneFault("the recipe [carrot-slaw] is already in recipes/dishes.yaml:62:1",
                "keep one of them");
    }

    @Test
    void idOfAnIngredient_forARecipe() {
        new SmallKitchen().change(DISHES, "carrot-slaw:", "«tahini:")
                .hasOneFault("[tahini] is both a recipe and the ingredient in "
                + "kitchen/ingredients/pantry.yaml", "rename one");
    }

    private static FaultCase dish(String name, String before, String after, String wrong, String right) {
        return new FaultCase(name, DISHES, before, after, wrong, right);
    }

    private static FaultCase component(String name, String before, String after, String wrong,
            String right) {
        return new FaultCase(name, COMPONENTS, before, after, wrong, right);
    }
}
