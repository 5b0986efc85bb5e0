package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.safety.DishStatement;
import croftboard.safety.file.AllergenList;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The book's words for allergens are those of the list in force, and a label says each as the list does. */
class AllergenWordsTest {
    @Test
    void words_areThoseOfTheList() {
        Set<String> listed = AllergenList.all().stream().map(AllergenList::word).collect(Collectors.toSet());
        Set<String> book = Words.ALLERGENS.keySet().stream()
                .map(w -> w.startsWith("fish-") ? "fish-*" : w.startsWith("shellfish-") ? "shellfish-*" : w)
                .collect(Collectors.toSet());
        assertThat(book).isEqualTo(listed);
        AllergenList.droppedNuts().forEach(n -> assertThat(book).doesNotContain(n.replace(' ', '-')));
    }

    @Test
    void wordsOnLabels_areThoseOfTheList() {
        AllergenList.all().stream().filter(a -> !a.word().endsWith("*"))
                .forEach(a -> assertThat(DishStatement.spoken(a.word())).isEqualTo(a.spoken()));
    }

    @Test
    void garlicInOil_hasTheSameDaysInReaderAndTable() {
        assertThat(croftboard.safety.file.FoodCodes.of("none").limit(croftboard.safety.Rule.GARLIC_IN_OIL_DAYS).whole())
                .isEqualTo(CareReader.GARLIC_IN_OIL_DAYS);
    }
}
