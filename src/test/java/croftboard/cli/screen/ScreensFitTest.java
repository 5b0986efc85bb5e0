package croftboard.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.book.Vendor;
import croftboard.cli.SamplePlan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScreensFitTest {
    /** Words that belong to those who make planners, not to those who plan a kitchen's week. */
    static final List<String> SOLVER_WORDS = List.of("score", "constraint", "infeasible", "feasible", "penalty",
            "objective", "heuristic", "optimal", "optimum", "solver", "variable", "lower bound", "upper bound", "hard ",
            "branch and", "relaxation", "dual", "incumbent", "iteration", "neighbourhood");
    private static final String HOSTILE = "a\u202Ebackwards\u2066\u200F \u0007bell\u001b[31mred\r\n\ttab \u0301\u0301\u0301 "
            + "\u6f22\u5b57\u306e\u540d\u524d \ud83e\udd55 " + "long".repeat(75) + " end\u0000";
    private static final Book BOOK = SamplePlan.book();

    @ParameterizedTest
    @ValueSource(ints = {40, 55, 80, 81, 100, 120, 132, 400})
    void noLine_isWiderThanThePage(int width) {
        fits(BOOK, width);
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80, 120})
    void hostileNames_neitherBreakLinesNorReachTheTerminal(int width) {
        fits(hostile(BOOK), width);
    }

    private static void fits(Book book, int width) {
        int most = Math.min(Page.WIDEST, width);
        Screens.of(book).forEach((name, screen) -> Screens.text(screen, width).lines().forEach(line -> {
            assertThat(PlainText.width(line)).as("%s at %d: %s", name, width, line).isLessThanOrEqualTo(most);
            assertThat(line.codePoints().filter(c -> c != ' ' && (Character.isISOControl(c)
                    || Character.getType(c) == Character.FORMAT)).toArray()).as(name).isEmpty();
        }));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 120})
    void noSolverWord_isOnAnyScreen(int width) {
        Screens.of(BOOK).forEach((name, screen) -> {
            String text = Screens.text(screen, width).toLowerCase(Locale.ROOT).replace('\n', ' ');
            SOLVER_WORDS.forEach(word -> assertThat(text).as(name).doesNotContain(word));
        });
    }

    private static Book hostile(Book book) {
        Map<String, Recipe> recipes = new LinkedHashMap<>();
        book.recipes().forEach((id, r) -> recipes.put(id, new Recipe(id, HOSTILE, r.sale(), r.makes(), r.cup(),
                r.batchStep(), r.lifeDays(), r.hold(), r.leadDays(), r.loss(), r.ingredients(), r.steps(),
                java.util.Optional.of(HOSTILE), r.doneness(), r.holding(), r.caution(), r.worthOnly())));
        Map<String, Ingredient> ingredients = new LinkedHashMap<>();
        book.ingredients().forEach((id, i) -> ingredients.put(id, new Ingredient(id, HOSTILE, i.label(), i.shelf(),
                i.origins(), i.allergens(), i.glutenGrains(), i.tcs(), i.storage(), i.keepsDays(), i.thawDays(),
                i.keepWorth(), i.par(), i.free(), i.salt(), i.cuts(), i.measures(), i.substitutes())));
        Map<String, Vendor> vendors = new LinkedHashMap<>();
        book.vendors().forEach((id, v) -> vendors.put(id, new Vendor(id, HOSTILE, v.kind(), v.place(), v.deliveries(),
                v.minimum(), v.fee(), v.mayBuy(), v.offers(), v.commitments(), v.priorities())));
        return new Book(book.kitchen(), ingredients, recipes, vendors, book.seasons(), book.lists(), book.onHand(),
                book.fingerprint());
    }
}
