package croftboard.paper.served;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.LabelStock;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.paper.Block;
import croftboard.paper.LabelFit;
import croftboard.plan.WeekPlan;
import croftboard.safety.FoodCode;
import croftboard.safety.Limit;
import croftboard.safety.Rule;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The label of one making of a packed dish, or why there is none. No label rather than one whose Contains line could not be
 * complete.
 *
 * @param copies one a portion
 * @param why reasons against printing; none: it is printed
 */
record PackLabel(WeekPlan.Served slot, WeekPlan.Production made, DishFacts dish, int copies, List<Block> words,
        String ingredients, Optional<PriceNumber> number, List<String> why) {
    /** Small letters at least a sixteenth of an inch high (21 CFR 101.2(c), from memory). */
    static final int LEAST_TYPE = 9;
    static final int MOST_TYPE = 13;
    /** A single label where the kitchen names no label sheets. */
    static final LabelStock SINGLE = new LabelStock(1, 1, 12_700, 12_700, 101_600, 127_000, 101_600, 127_000);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

    static PackLabel of(Book book, FoodCode code, LabelStock stock, boolean complete, WeekPlan.Served slot,
            WeekPlan.Production made, DishFacts dish) {
        List<String> why = new ArrayList<>();
        if (!complete) {
            why.add("the plan is not complete: what is really put in is not known yet");
        }
        if (!dish.complete()) {
            why.add("its Contains line cannot be complete: allergens not stated for "
                    + String.join(", ", dish.statement().notStated()));
        }
        List<Block> words = List.of();
        String ingredients = "";
        Optional<PriceNumber> number = Optional.empty();
        if (dish.recipe().isPresent() && !dish.ingredients().isEmpty()) {
            Recipe recipe = dish.recipe().get();
            ingredients = IngredientList.of(book, recipe, dish.swaps()).sentence();
            number = recipe.care().itemNumber().flatMap(n -> recipe.sale().flatMap(s -> PriceNumber.of(n, s.price())));
            words = words(book.kitchen(), code, made, dish, recipe, ingredients, number);
            if (LabelFit.type(stock, words, LEAST_TYPE, MOST_TYPE).isEmpty()) {
                why.add("its words do not fit the label in readable type (" + LEAST_TYPE
                        + " points): use a larger label sheet, or write it by hand");
            }
        }
        return new PackLabel(slot, made, dish, made.portions(), words, ingredients, number, List.copyOf(why));
    }

    private static List<Block> words(Kitchen kitchen, FoodCode code, WeekPlan.Production made, DishFacts dish, Recipe recipe,
            String ingredients, Optional<PriceNumber> number) {
        List<Block> words = new ArrayList<>();
        words.add(new Block.Heading(1, dish.name()));
        words.add(new Block.Text(ingredients));
        words.add(new Block.Heading(3, dish.contains()));
        dish.advised().ifPresent(a -> words.add(new Block.Heading(3, a)));
        words.add(new Block.Text("Made with shared tools: they can carry allergens that are not named here."
                + (dish.diet().isPresent() ? " Vegan by recipe, which says nothing about allergens." : "")));
        words.add(new Block.Heading(2, "Use by " + date(made.useBy()) + " \u00b7 " + storage(code, recipe)));
        words.add(new Block.Text(NetWeight.of(recipe) + recipe.sale().map(s -> " \u00b7 " + s.price()).orElse("")));
        words.add(new Block.Text("Made by " + maker(kitchen)));
        number.ifPresent(n -> words.add(new Block.Picture(PriceBars.svg(n), "bars " + n.digits())));
        return List.copyOf(words);
    }

    static String date(LocalDate date) {
        return DATE.format(date);
    }

    /** Where the buyer keeps it. */
    static String storage(FoodCode code, Recipe recipe) {
        Limit cold = code.limit(recipe.care().garlicInOil() ? Rule.GARLIC_IN_OIL_COLD : Rule.COLD_HOLDING);
        return switch (recipe.hold()) {
            case COLD -> "Keep at " + cold.shown() + " or below";
            case HOT -> "Eat at once, or keep at " + code.limit(Rule.HOT_HOLDING).shown() + " or above";
            case AMBIENT -> recipe.care().garlicInOil() ? "Keep at " + cold.shown() + " or below" : "Keep cool and dry";
        };
    }

    /** Name and place, with the street where the kitchen gives its address (21 CFR 101.5). */
    static String maker(Kitchen kitchen) {
        List<String> lines = new ArrayList<>(List.of(kitchen.name()));
        kitchen.paperwork().contact().address().stream().filter(l -> !l.equals(kitchen.name())).forEach(lines::add);
        if (lines.size() == 1 && !kitchen.place().town().isEmpty()) {
            lines.add(kitchen.place().town() + ", " + kitchen.place().state());
        }
        return String.join(", ", lines);
    }

    boolean printed() {
        return why.isEmpty();
    }

    /** Declared grams; empty when each is weighed. */
    Optional<Ratio> declaredGrams() {
        return dish.recipe().flatMap(r -> r.care().netWeight()).map(n -> n.base());
    }
}
