package croftboard.book;

import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** A book with only what one check needs: some foods and some recipes; nothing is bought or served. */
public final class FoodBook {
    private final Map<String, Ingredient> ingredients = new TreeMap<>();
    private final Map<String, Recipe> recipes = new TreeMap<>();

    /** An amount that is surely one. */
    public static Amount amount(String text) {
        return Amount.parse(text).orElseThrow(() -> new IllegalArgumentException("no amount: " + text));
    }

    public FoodBook food(Food food) {
        ingredients.put(food.id, food.build());
        return this;
    }

    /** @param lines {@code 3 lb zucchini, sliced} or {@code 3 lb AP zucchini, sliced} */
    public FoodBook recipe(String id, String makes, String... lines) {
        List<Recipe.Line> list = new ArrayList<>();
        for (String line : lines) {
            list.add(line(line));
        }
        recipes.put(id, new Recipe(id, id, Optional.empty(), amount(makes), Optional.of(amount("240 g")), Ratio.ONE, 4,
                Recipe.Hold.COLD, 0, Ratio.ZERO, list, List.of(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty()));
        return this;
    }

    private static Recipe.Line line(String text) {
        String[] cut = text.split(", ");
        String[] words = cut[0].split(" ");
        boolean ap = words[2].equals("AP");
        return new Recipe.Line(amount(words[0] + " " + words[1]), words[ap ? 3 : 2],
                cut.length > 1 ? Optional.of(cut[1]) : Optional.empty(), ap, 0, false, Optional.empty());
    }

    /** Kitchen and seasons are some random book's: nothing here looks at them. */
    public Book build() {
        Book any = RandomBook.of(1);
        return new Book(any.kitchen(), ingredients, recipes, Map.of(), any.seasons(), Map.of(), List.of(), "foods");
    }

    public static Food food(String id) {
        return new Food(id);
    }

    /** An ingredient of plant origin, known to contain no allergen, used as it comes, unless said otherwise. */
    public static final class Food {
        private final String id;
        private final Map<String, Ingredient.Cut> cuts = new TreeMap<>();
        private final List<Ingredient.Measure> measures = new ArrayList<>();
        private Set<Ingredient.Origin> origins = EnumSet.of(Ingredient.Origin.PLANT);
        private Set<String> contains = Set.of();
        private boolean othersKnown = true;

        private Food(String id) {
            this.id = id;
        }

        public Food cut(String name, Ratio yield) {
            cuts.put(name, new Ingredient.Cut(name, yield, "a check"));
            return this;
        }

        /** What a measure of the edible portion weighs. */
        public Food measure(String measure, String weighs) {
            return measure(measure, weighs, false);
        }

        /** What a measure as purchased weighs. */
        public Food purchasedMeasure(String measure, String weighs) {
            return measure(measure, weighs, true);
        }

        private Food measure(String measure, String weighs, boolean asPurchased) {
            measures.add(new Ingredient.Measure(amount(measure), Optional.empty(), asPurchased, amount(weighs),
                    "a check"));
            return this;
        }

        public Food from(Ingredient.Origin... all) {
            origins = EnumSet.copyOf(List.of(all));
            return this;
        }

        public Food contains(String... allergens) {
            contains = Set.of(allergens);
            return this;
        }

        public Food othersNotStated() {
            othersKnown = false;
            return this;
        }

        public Ingredient build() {
            return new Ingredient(id, id.replace('-', ' '), id, "shelf", origins,
                    new Ingredient.Statement(contains, othersKnown), Ingredient.Statement.UNKNOWN,
                    Ingredient.Tcs.UNKNOWN, Ingredient.Storage.WALK_IN, 7, 0, Optional.empty(), Optional.empty(), false,
                    Ratio.ZERO, cuts, measures, List.of());
        }
    }

    /** Grams in so many of a unit. */
    public static Ratio grams(String amount) {
        Amount parsed = amount(amount);
        if (parsed.unit().kind() != Unit.Kind.MASS) {
            throw new IllegalArgumentException("not a mass: " + amount);
        }
        return parsed.base();
    }
}
