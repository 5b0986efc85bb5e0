package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleCommandTest {
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void sitDown() {
        desk = new Desk(folder, Desk.always(true));
    }

    @Test
    void portions_scaleTheWholeTree() {
        Desk.Run run = desk.run("scale", "lentil-bake", "--portions", "120");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("Lentil bake, for 120 portions").contains(
                "Makes 90 lb, 120 portions of 12 oz: 3-3/4 of the standard batch (24 lb).",
                "House marinara (for the above: 24 lb 5 oz)", "Soffritto (for the above:", "Convection ovens: 15 pans of 24",
                "Allergens not stated: curry powder.", "Done when: 165 F", "Holding: 135 F");
    }

    @Test
    void times_andNothing() {
        assertThat(desk.run("scale", "lentil-bake", "--times", "1-1/2").out())
                .startsWith("Lentil bake, 1-1/2 times the standard batch").contains("Makes 36 lb, 48 portions");
        assertThat(desk.run("scale", "house-marinara").out()).contains("Makes 16 lb: 1 of the standard batch");
    }

    @Test
    void have_usesUpWhatIsOnHand_byIdOrName() {
        assertThat(desk.run("scale", "carrot-slaw", "--have", "20 lb carrots").out())
                .startsWith("Carrot slaw with sesame, from 20 lb carrots")
                .contains("20 lb  15 lb 9-1/2 oz");
        assertThat(desk.run("scale", "carrot-slaw", "--have", "20 lb carrot").code()).isZero();
        assertThat(desk.run("scale", "penne-bake", "--have", "3 cans tomato-crushed-can").code()).isZero();
        assertThat(desk.run("scale", "penne-bake", "--have", "2 cups house marinara").code()).isZero();
    }

    @Test
    void recipeByName() {
        assertThat(desk.run("scale", "lentil BAKE").code()).isZero();
    }

    @Test
    void knownAllergens_areNamed() {
        assertThat(desk.run("scale", "penne-bake").out()).contains("Contains milk, wheat.",
                "Check the label of this delivery");
    }

    @ParameterizedTest
    @CsvSource({"lentil-bake, --portions, 0", "lentil-bake, --portions, -4", "house-marinara, --portions, 10",
        "lentil-bake, --times, 0", "lentil-bake, --times, -1", "lentil-bake, --times, 1e9", "lentil-bake, --have, carrots",
        "lentil-bake, --have, 0 lb carrots", "lentil-bake, --have, 5 lb beets", "lentil-bake, --have, 5 cups thyme",
        "lentil-bak, --times, 1", "lentil-bake, --week, W33"})
    void wrongUse_exit2_saysWhatWouldBeRight(String recipe, String option, String value) {
        Desk.Run run = desk.run("scale", recipe, option + "=" + value);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("->");
    }

    @Test
    void unknownRecipe_namesNearOnes() {
        assertThat(desk.run("scale", "lentil-stew").err()).contains("one of lentil-bake");
    }

    @Test
    void twoSizes_exit2() {
        assertThat(desk.run("scale", "lentil-bake", "--portions", "5", "--times", "2").code()).isEqualTo(2);
    }

    @Test
    void csv_hasALineForEveryIngredientOfTheTree() {
        Desk.Run run = desk.run("scale", "lentil-bake", "--format", "csv");
        assertThat(run.out().split("\r\n")).hasSize(1 + 4 + 6 + 7);
        assertThat(run.out()).contains("soffritto,Soffritto,");
    }
}
