package croftboard.book.file;

import croftboard.book.Ingredient;
import croftboard.book.Ingredient.Substitute;
import croftboard.book.Recipe;
import croftboard.measure.Unit;
import java.util.Optional;

/**
 * Lines of recipes against what they use: cuts, units, cups, substitutes; and what each ingredient
 * itself points to.
 */
final class LineChecks {
    private final Notebook notebook;
    private final Drafts drafts;

    LineChecks(Notebook notebook, Drafts drafts) {
        this.notebook = notebook;
        this.drafts = drafts;
    }

    void check() {
        for (Recipe recipe : drafts.recipes.values()) {
            recipe.ingredients().stream().filter(notebook::isSound).forEach(this::line);
        }
        for (Ingredient ingredient : drafts.ingredients.values()) {
            ingredient.substitutes().forEach(s -> substitute(ingredient, s));
            ingredient.par().filter(p -> notebook.isSound(ingredient)
                    && !Weigher.knowsPurchased(ingredient, p.unit())).ifPresent(p ->
                    notebook.fault(notebook.spotOf(ingredient, "par"),
                    noPurchasedMeasure(ingredient, p.unit()), measureRemedy(p.unit())));
        }
    }

    private void line(Recipe.Line line) {
        Ingredient ingredient = drafts.ingredients.get(line.item());
        if (ingredient != null) {
            if (notebook.isSound(ingredient)) {
                ofIngredient(line, ingredient);
            }
            return;
        }
        Recipe recipe = drafts.recipes.get(line.item());
        if (recipe != null) {
            ofRecipe(line, recipe);
        }
    }

    private void ofIngredient(Recipe.Line line, Ingredient ingredient) {
        boolean cutFits = cut(ingredient, line.cut(), notebook.spotOf(line, "item"),
                notebook.spotOf(line, "cut"));
        Unit unit = line.amount().unit();
        if (cutFits && unit.kind() != Unit.Kind.MASS) {
            Optional<Ingredient.Measure> measure = ingredient.measureFor(unit, line.cut());
            if (measure.isEmpty()) {
                notebook.fault(notebook.spotOf(line, "unit"), "no measure says what one " + unit + " of "
                        + called(ingredient, line.cut()) + " weighs", measureRemedy(ingredient, unit));
            } else if (line.asPurchased() && !measure.get().asPurchased() && !ingredient.cuts().isEmpty()) {
                notebook.fault(notebook.spotOf(line, "unit"), "AP, but the " + unit + " of "
                        + called(ingredient, line.cut())
                        + " is a measure of the edible portion",
                        "leave AP out, use a weight, or add a measure with of: ap");
            }
        }
        if (line.planSubstitute() && ingredient.substitutes().isEmpty()) {
            notebook.fault(notebook.spotOf(line), "[" + ingredient.id() + "] declares no substitute",
                    "leave substitute out, or add substitutes to the ingredient");
        }
    }

    private static String called(Ingredient ingredient, Optional<String> cut) {
        return "[" + ingredient.id() + cut.map(c -> ", " + c).orElse("") + "]";
    }

    private static String measureRemedy(Ingredient ingredient, Unit unit) {
        String known = String.join(", ", ingredient.measures().stream().map(m -> m.measure().unit().name()
                + m.cut().map(c -> " (" + c + ")").orElse("")).distinct().toList());
        return "use a weight" + (known.isEmpty() ? "" : ", one of its measures: " + known)
                + ", or add to the ingredient {measure: 1 "
                + unit + ", weighs: ... g, source: ...}";
    }

    /** Whether the cut is one of the ingredient's; the fault is noted when not. */
    private boolean cut(Ingredient ingredient, Optional<String> cut, Spot itemSpot, Spot cutSpot) {
        if (cut.isEmpty() && ingredient.cuts().isEmpty()) {
            return true;
        }
        String cuts = String.join(", ", ingredient.cuts().keySet());
        if (cut.isEmpty()) {
            notebook.fault(itemSpot, "[" + ingredient.id() + "] is used without a cut", "add one: " + cuts);
            return false;
        }
        if (ingredient.cuts().isEmpty()) {
            notebook.fault(cutSpot, "[" + ingredient.id() + "] has no cuts and is used as it comes",
                    "leave " + Notebook.show(cut.get()) + " out, or write it as a (note)");
            return false;
        }
        if (!ingredient.cuts().containsKey(cut.get())) {
            notebook.fault(cutSpot, "[" + ingredient.id() + "] has no cut " + Notebook.show(cut.get()),
                    notebook.meant(cut.get(), ingredient.cuts().keySet(), "its cuts are " + cuts));
            return false;
        }
        return true;
    }

    private void ofRecipe(Recipe.Line line, Recipe recipe) {
        Unit unit = line.amount().unit();
        String called = "[" + recipe.id() + "]";
        if (line.cut().isPresent()) {
            notebook.fault(notebook.spotOf(line, "cut"), called + " is a recipe, which has no cuts",
                    "leave the cut out, or write it as a (note)");
        }
        if (line.asPurchased()) {
            notebook.fault(notebook.spotOf(line, "item"), called + " is a recipe, which nobody purchases",
                    "leave AP out");
        }
        if (unit.kind() == Unit.Kind.COUNT) {
            notebook.fault(notebook.spotOf(line, "unit"), called
                    + " is a recipe, which is used by weight or by the cup",
                    "write a weight, or cups");
        } else if (unit.kind() == Unit.Kind.VOLUME && recipe.cup().isEmpty() && notebook.isSound(recipe)) {
            notebook.fault(notebook.spotOf(line, "unit"), called + " is used by the " + unit
                    + ", but does not say what a cup of it weighs",
                    "add cup: ... g to " + called + ", or write a weight");
        }
        if (line.aheadDays() > 0) {
            notebook.fault(notebook.spotOf(line), called + " is a recipe, which has its own lead",
                    "leave ahead out");
        }
        if (line.planSubstitute()) {
            notebook.fault(notebook.spotOf(line), called + " is a recipe, which has no substitute",
                    "leave substitute out");
        }
    }

    private void substitute(Ingredient ingredient, Substitute substitute) {
        if (substitute.use().equals(ingredient.id())) {
            notebook.fault(notebook.spotOf(substitute), "an ingredient cannot replace itself",
                    "name another ingredient");
            return;
        }
        Ingredient other = drafts.ingredients.get(substitute.use());
        if (other != null && notebook.isSound(other) && notebook.isSound(substitute)) {
            cut(other, substitute.cut(), notebook.spotOf(substitute), notebook.spotOf(substitute, "cut"));
        }
    }

    static String noPurchasedMeasure(Ingredient ingredient, Unit unit) {
        return "no measure says what one " + unit + " of [" + ingredient.id() + "] weighs as purchased";
    }

    static String measureRemedy(Unit unit) {
        return "write a weight, or add to the ingredient {measure: 1 " + unit
                + ", of: ap, weighs: ... g, source: ...}";
    }
}
