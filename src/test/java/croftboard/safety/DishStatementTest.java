package croftboard.safety;

import static croftboard.book.FoodBook.food;
import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.FoodBook;
import croftboard.book.Ingredient.Origin;
import croftboard.book.Promises;
import croftboard.measure.Cents;
import croftboard.safety.DishStatement.Known;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class DishStatementTest {
    private static DishStatement of(FoodBook.Food... foods) {
        return DishStatement.ofIngredients(java.util.Arrays.stream(foods).map(FoodBook.Food::build).toList());
    }

    private static Promises.Coverage promise(Optional<Promises.Diet> diet, String... without) {
        return new Promises.Coverage("p", "say", "P", Optional.empty(), diet, Set.of(without), 1, new Cents(100));
    }

    @Test
    void nothingKnownToBeIn_andAllStated_listsNone() {
        DishStatement kale = of(food("kale"));
        assertThat(kale.sentence()).isEqualTo("Recipe lists none of the nine major allergens.");
        assertThat(kale.lists("milk")).isEqualTo(Known.NO);
    }

    @Test
    void nothingKnown_saysOnlyWhatIsNotStated() {
        assertThat(of(food("curry-powder").othersNotStated()).sentence())
                .isEqualTo("Allergens not stated: curry powder.");
    }

    @Test
    void knownPart_ofAnIngredientNotWhollyKnown_isStillPrinted() {
        DishStatement pesto = of(food("pesto").contains("milk").othersNotStated(), food("bread").contains("wheat"));
        assertThat(pesto.sentence()).isEqualTo("Contains milk, wheat. Other allergens not stated: pesto.");
        assertThat(pesto.lists("milk")).isEqualTo(Known.YES);
        assertThat(pesto.lists("egg")).isEqualTo(Known.UNKNOWN);
    }

    @Test
    void severalNotStated_areAllNamed_inOrder() {
        DishStatement two = of(food("relish").othersNotStated(), food("bouillon").othersNotStated(), food("kale"));
        assertThat(two.sentence()).isEqualTo("Allergens not stated: bouillon, relish.");
    }

    @Test
    void allergenOfAnimalKind_endsTheDiet_whateverTheOriginSays() {
        DishStatement milk = of(food("odd-drink").from(Origin.PLANT).contains("milk"));
        assertThat(milk.vegan()).isEqualTo(Known.NO);
        assertThat(milk.vegetarian()).isEqualTo(Known.YES);
        DishStatement fish = of(food("odd-sauce").from(Origin.PLANT).contains("fish-anchovy"));
        assertThat(fish.vegan()).isEqualTo(Known.NO);
        assertThat(fish.vegetarian()).isEqualTo(Known.NO);
    }

    @Test
    void group_asksForAnyOfItsKinds_kindOnlyForItself() {
        DishStatement cod = of(food("cod").from(Origin.FISH).contains("fish-cod"));
        assertThat(cod.lists("fish")).isEqualTo(Known.YES);
        assertThat(cod.lists("fish-cod")).isEqualTo(Known.YES);
        assertThat(cod.lists("fish-tuna")).isEqualTo(Known.NO);
        assertThat(cod.lists("shellfish")).isEqualTo(Known.NO);
    }

    @Test
    void oneUnknownOrigin_leavesTheDietOpen_oneAnimalOriginEndsIt() {
        assertThat(of(food("kale"), food("bouillon").from(Origin.UNKNOWN)).vegan()).isEqualTo(Known.UNKNOWN);
        assertThat(of(food("kale"), food("bouillon").from(Origin.PLANT, Origin.UNKNOWN)).vegan())
                .isEqualTo(Known.UNKNOWN);
        assertThat(of(food("bouillon").from(Origin.UNKNOWN), food("ham").from(Origin.MEAT)).vegan())
                .isEqualTo(Known.NO);
        assertThat(of(food("mix").from(Origin.PLANT, Origin.DAIRY)).vegan()).isEqualTo(Known.NO);
        assertThat(of(food("mix").from(Origin.PLANT, Origin.DAIRY)).vegetarian()).isEqualTo(Known.YES);
    }

    @Test
    void noIngredientAtAll_claimsNoDiet() {
        assertThat(DishStatement.ofIngredients(List.of()).vegan()).isEqualTo(Known.UNKNOWN);
    }

    @Test
    void promise_isKeptByWhatIsKnown_neverByWhatIsNot() {
        DishStatement known = of(food("kale"), food("bun").contains("wheat"));
        DishStatement open = of(food("kale"), food("curry-powder").othersNotStated());
        assertThat(known.keeps(promise(Optional.empty(), "milk", "egg"))).isTrue();
        assertThat(known.keeps(promise(Optional.empty(), "milk", "wheat"))).isFalse();
        assertThat(open.keeps(promise(Optional.empty(), "milk"))).isFalse();
        assertThat(open.keeps(promise(Optional.of(Promises.Diet.VEGAN)))).isTrue();
    }

    @Test
    void dietPromise_isKeptOnlyByAKnownDiet() {
        DishStatement open = of(food("kale"), food("bouillon").from(Origin.UNKNOWN));
        DishStatement cheese = of(food("kale"), food("cheese").from(Origin.DAIRY).contains("milk"));
        assertThat(open.keeps(promise(Optional.of(Promises.Diet.VEGAN)))).isFalse();
        assertThat(open.keeps(promise(Optional.of(Promises.Diet.VEGETARIAN)))).isFalse();
        assertThat(cheese.keeps(promise(Optional.of(Promises.Diet.VEGAN)))).isFalse();
        assertThat(cheese.keeps(promise(Optional.of(Promises.Diet.VEGETARIAN)))).isTrue();
    }

    @Test
    void substitute_isWhatTheStatementSpeaksOf() {
        Book book = new FoodBook().food(food("soy-sauce").contains("soy", "wheat")).food(food("tamari").contains("soy"))
                .recipe("sauce", "1 lb", "1 lb soy-sauce").recipe("dish", "1 lb", "1 lb sauce").build();
        DishStatement served = DishStatement.of(book, "dish", i -> i.equals("soy-sauce") ? "tamari" : i);
        assertThat(served.sentence()).isEqualTo("Contains soy.");
        assertThat(DishStatement.of(book, "dish").sentence()).isEqualTo("Contains soy, wheat.");
    }
}
