package croftboard.paper.served;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.need.ScaledRecipe;
import croftboard.paper.Contexts;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.file.PdfText;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HomeCardsTest {
    private static Sheet card(int servings, String dish) {
        return new HomeCards(servings, Optional.of(dish)).make(Contexts.sample()).get(0);
    }

    @Test
    void gramsAreThoseOfTheScaledRecipe() {
        Book book = Contexts.sample().book();
        Recipe dish = book.recipe("lentil-bake");
        Ratio batches = ScaledRecipe.batchesForPortions(dish, Ratio.of(6));
        List<ScaledRecipe> tree = ScaledRecipe.tree(book, dish, batches);
        List<List<String>> rows = card(6, "lentil-bake").data().rows();
        assertThat(rows).hasSize(tree.stream().mapToInt(r -> r.lines().size()).sum());
        for (ScaledRecipe r : tree) {
            for (ScaledRecipe.Line line : r.lines()) {
                assertThat(rows).anySatisfy(row -> assertThat(row).containsSequence("lentil-bake", r.recipe().id(),
                        line.written().item()).contains(line.ep().toDecimal(1).toPlainString()));
            }
        }
    }

    @Test
    void card_hasMeasuresStepsSubstitutesAndCautions_inThePdf() {
        PaperContext context = Contexts.sample();
        String pdf = String.join(" ", PdfText.pages(context, List.of(card(4, "lentil-bake"))));
        assertThat(pdf).contains("For 4 servings of 12 oz, at home", "Allergens not stated: curry powder",
                "What may take the place of what", "For fresh thyme: 1/3 times its weight of dried thyme",
                "What does not scale down", "freeze it. Do not can, bottle or seal it", "Simmer lentils");
    }

    @Test
    void oneServing_isWrittenAsOne_andHasItsOwnId() {
        assertThat(card(1, "lentil-bake").under().get(0)).startsWith("For 1 serving of");
        assertThat(card(1, "lentil-bake").id()).isEqualTo("home-card-lentil-bake-for-1");
        assertThat(card(HomeCards.SERVINGS, "lentil-bake").id()).isEqualTo("home-card-lentil-bake");
    }

    @Test
    void dishThatIsNone_hasNoCard() {
        assertThat(new HomeCards(4, Optional.of("soffritto")).make(Contexts.sample())).isEmpty();
        assertThat(new HomeCards(4, Optional.of("no-such-dish")).make(Contexts.sample())).isEmpty();
    }
}
