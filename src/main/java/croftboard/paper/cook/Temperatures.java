package croftboard.paper.cook;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.ScaledRecipe;
import croftboard.plan.work.Making;
import croftboard.plan.work.PartUse;
import croftboard.safety.Caution;
import croftboard.safety.Cooked;
import croftboard.safety.FoodCode;
import croftboard.safety.Rule;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The limits of the health code that can concern one making. The book does not say whether meat comes raw or cooked, whole
 * or ground: then each limit names what it is for, and the cook picks.
 */
final class Temperatures {
    private static final Set<Ingredient.Origin> FLESH = EnumSet.of(Ingredient.Origin.MEAT, Ingredient.Origin.FISH,
            Ingredient.Origin.SHELLFISH, Ingredient.Origin.EGG);

    /** @param of what it is for. @param limit in words. @param section of the code */
    record Critical(String of, String limit, String section) { }

    private final CookWeek week;
    private final FoodCode code;
    private final List<Critical> rows = new ArrayList<>();

    private Temperatures(CookWeek week) {
        this.week = week;
        this.code = week.code;
    }

    static List<Critical> of(CookWeek week, Making making) {
        Temperatures t = new Temperatures(week);
        t.cooking(making);
        t.holding(making);
        return t.rows;
    }

    private void cooking(Making making) {
        Set<Ingredient.Origin> origins = EnumSet.noneOf(Ingredient.Origin.class);
        making.items().stream().filter(i -> !i.component())
                .forEach(i -> origins.addAll(week.context.book().ingredient(i.id()).origins()));
        if (origins.contains(Ingredient.Origin.POULTRY)) {
            minimum("Poultry, if it comes raw", Cooked.POULTRY);
        }
        if (origins.stream().anyMatch(FLESH::contains)) {
            minimum("Meat or fish in one piece, if raw; eggs served at once", Cooked.WHOLE);
            minimum("Ground or tenderized meat or fish, if raw; eggs that are held", Cooked.GROUND);
        }
        if (making.recipe().hold() == Recipe.Hold.HOT && rows.isEmpty()) {
            minimum("Vegetables and grains for hot holding", Cooked.PLANT);
        }
    }

    private void minimum(String of, Cooked food) {
        List<String> ways = new ArrayList<>();
        code.minimums(food).forEach(m -> ways.add(m.fahrenheit() + " F"
                + (m.seconds() == 0 ? "" : m.seconds() % 60 == 0 ? " for " + m.seconds() / 60 + " min" : " for " + m.seconds() + " s")));
        rows.add(new Critical(of, String.join(", or ", ways), code.minimums(food).get(0).section()));
    }

    private void holding(Making making) {
        boolean hot = making.recipe().hold() == Recipe.Hold.HOT;
        boolean cold = making.recipe().hold() == Recipe.Hold.COLD;
        if (hot && week.tracing.partsOf(making).stream().anyMatch(u -> isCold(u, making))) {
            rows.add(new Critical("Parts that were cooled, reheated", code.limit(Rule.REHEATING).shown() + " for "
                    + code.limit(Rule.REHEATING_HOLD).shown() + ", within " + code.limit(Rule.REHEATING_TIME).shown(),
                    code.limit(Rule.REHEATING).section()));
        }
        if (hot) {
            rows.add(new Critical("Held hot", code.limit(Rule.HOT_HOLDING).shown() + " or above",
                    code.limit(Rule.HOT_HOLDING).section()));
        }
        if (cold || hot && making.lastServed().isAfter(making.day())) {
            rows.add(new Critical("Cooled from hot", code.limit(Rule.COOLING_FIRST).shown() + " within "
                    + code.limit(Rule.COOLING_FIRST_TIME).shown() + ", " + code.limit(Rule.COOLING_TO).shown() + " within "
                    + code.limit(Rule.COOLING_TIME).shown() + " in all", code.limit(Rule.COOLING_TIME).section()));
        }
        if (cold) {
            rows.add(new Critical("Mixed from food at room temperature", code.limit(Rule.COOLING_TO).shown() + " within "
                    + code.limit(Rule.COOLING_AMBIENT_TIME).shown(), code.limit(Rule.COOLING_AMBIENT_TIME).section()));
            rows.add(new Critical("Held cold", code.limit(Rule.COLD_HOLDING).shown() + " or below",
                    code.limit(Rule.COLD_HOLDING).section()));
        }
    }

    /** Made on an earlier day or counted. */
    private static boolean isCold(PartUse use, Making making) {
        return use.counted().isPresent() || use.batch().filter(b -> b.day().isBefore(making.day())).isPresent();
    }

    /** What is said of garlic in oil, where the recipe says it holds some or is mostly garlic and oil. */
    static Optional<String> garlicInOil(CookWeek week, Making making) {
        Book book = week.context.book();
        boolean inOil = making.recipe().care().garlicInOil() || ScaledRecipe.tree(book, making.recipe(), Ratio.ONE).stream()
                .anyMatch(r -> r.recipe().id().equals(making.recipe().id()) && r.garlicInOil());
        return inOil ? Optional.of(Caution.garlicInOil(week.code)) : Optional.empty();
    }
}
