package croftboard.plan.work;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.RecipeTree;
import croftboard.plan.WeekPlan;
import croftboard.safety.DishStatement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Every making of a plan. Recipes that today's book no longer has are left out. */
public final class Makings {
    private final Book book;
    private final WeekPlan plan;
    private final RecipeTree tree;
    private final Map<String, String> swaps = new TreeMap<>();
    private final Map<String, Integer> depths = new HashMap<>();

    private Makings(Book book, WeekPlan plan) {
        this.book = book;
        this.plan = plan;
        this.tree = new RecipeTree(book);
        plan.swaps().values().forEach(swaps::putAll);
    }

    /** By day; on one day parts before what they go into, then the longest without hands first. */
    public static List<Making> of(Book book, WeekPlan plan) {
        return new Makings(book, plan).all();
    }

    private List<Making> all() {
        List<Making> all = new ArrayList<>();
        for (WeekPlan.Batch b : plan.batches()) {
            recipe(b.recipe()).ifPresent(r -> all.add(new Making(r, b.made(), b.lastServed(), b.useBy(), b.batches(),
                    Optional.empty(), Optional.empty(), items(r, b.batches()))));
        }
        for (WeekPlan.Served s : plan.menu()) {
            s.recipe().flatMap(this::recipe).ifPresent(r -> dish(s, r, all));
        }
        all.sort(Comparator.comparing(Making::day).thenComparingInt(m -> depth(m.recipe().id()))
                .thenComparing(Making::unattended, Comparator.reverseOrder()).thenComparing(m -> m.recipe().name()));
        return List.copyOf(all);
    }

    private void dish(WeekPlan.Served served, Recipe recipe, List<Making> into) {
        LocalDate after = LocalDate.MIN;
        for (WeekPlan.Production p : served.productions()) {
            LocalDate from = after;
            LocalDate first = served.days().stream().filter(d -> d.isAfter(from)).findFirst().orElse(p.lastServed());
            after = p.lastServed();
            into.add(new Making(recipe, p.made(), p.lastServed(), p.useBy(), p.batches(), Optional.of(p.portions()),
                    Optional.of(new Making.Service(served.slot(), served.line(), first)), items(recipe, p.batches())));
        }
    }

    private Optional<Recipe> recipe(String id) {
        return Optional.ofNullable(book.recipes().get(id));
    }

    /** 0 for a recipe of ingredients only; else one more than the deepest of its parts: parts are made first. */
    private int depth(String recipe) {
        Integer known = depths.get(recipe);
        if (known != null) {
            return known;
        }
        int depth = 0;
        for (Recipe.Line line : book.recipe(recipe).ingredients()) {
            if (book.recipes().containsKey(line.item())) {
                depth = Math.max(depth, 1 + depth(line.item()));
            }
        }
        depths.put(recipe, depth);
        return depth;
    }

    private List<Making.Item> items(Recipe recipe, Ratio batches) {
        return tree.lines(recipe).stream().map(w -> item(recipe.id(), w, batches)).toList();
    }

    /** What the plan uses on a line in place of its ingredient: of this dish on every line, or where the recipe lets it. */
    private Optional<Ingredient.Substitute> instead(String recipe, Recipe.Line line, Ingredient own) {
        Optional<String> every = Optional.ofNullable(plan.swaps().getOrDefault(recipe, new TreeMap<>())
                .get(own.id() + DishStatement.EVERY_LINE));
        if (every.isPresent()) {
            return own.substitutes().stream().filter(s -> s.use().equals(every.get())).findFirst();
        }
        return line.planSubstitute() && swaps.containsKey(own.id()) ? own.substitutes().stream().findFirst() : Optional.empty();
    }

    private Making.Item item(String recipe, RecipeTree.Weighed w, Ratio batches) {
        Recipe.Line line = w.line();
        Amount amount = line.amount().times(batches);
        Ingredient own = book.ingredients().get(line.item());
        if (own == null) {
            return new Making.Item(line.item(), Optional.empty(), amount, w.ep().times(batches), w.ap().times(batches),
                    true, 0, 0, false, Optional.empty(), line.note());
        }
        Optional<Ingredient.Substitute> instead = instead(recipe, line, own);
        if (instead.isPresent()) {
            Ingredient.Substitute other = instead.get();
            Ingredient used = book.ingredient(other.use());
            Ratio ep = w.ep().times(batches).times(other.ratio());
            return new Making.Item(used.id(), other.cut(), new Amount(ep, Unit.GRAM).in(Unit.OUNCE), ep,
                    ep.over(used.yieldOf(other.cut())), false, Math.max(line.aheadDays(), used.thawDays()),
                    line.aheadDays(), used.thawDays() > 0, Optional.of(own.name()), line.note());
        }
        return new Making.Item(own.id(), line.cut(), amount, w.ep().times(batches), w.ap().times(batches), false,
                Math.max(line.aheadDays(), own.thawDays()), line.aheadDays(), own.thawDays() > 0, Optional.empty(),
                line.note());
    }
}
