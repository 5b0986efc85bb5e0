package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Amount;
import croftboard.measure.HouseholdAmounts;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Household measures against published tables. */
class HouseholdAmountsOutsideTest {
    /** NIST, cooking measurement equivalencies: 60, 80, 120, 240, 480 mL; 21 CFR 101.9(b)(5)(viii): 5 and 15 mL. */
    @ParameterizedTest(name = "{0} ml: {1}")
    @CsvSource({"60, 1/4 cup", "80, 1/3 cup", "120, 1/2 cup", "240, 1 cup", "480, 2 cups", "5, 1 tsp", "15, 1 tbsp",
        "30, 2 tbsp"})
    void published(int ml, String words) {
        assertThat(HouseholdAmounts.volume(Ratio.of(ml))).isEqualTo(words);
    }

    /** The same NIST page: 28 g 1 oz, 114 g a quarter pound, 454 g 1 lb; the grams stand beside it. */
    @ParameterizedTest(name = "{0} g: {1}")
    @CsvSource({"28, 1 oz (28 g)", "114, 4 oz (115 g)", "454, 1 lb (455 g)", "680, 1 lb 8 oz (680 g)", "2, 2 g"})
    void publishedWeights(int grams, String words) {
        assertThat(HouseholdAmounts.mass(Ratio.of(grams))).isEqualTo(words);
    }

    /** No source: what the class promises, over random amounts. */
    @Test
    void rounding_staysWithinWhatIsPromised() {
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            Ratio ml = Ratio.of(1 + random.nextInt(400_000), 100);
            String words = HouseholdAmounts.volume(ml);
            if (words.equals("a pinch") || words.equals("1/8 tsp")) {
                assertThat(ml.compareTo(Unit.TEASPOON.base().over(4))).isNegative();
                continue;
            }
            Ratio read = Amount.parse(words).orElseThrow().base();
            Ratio off = read.compareTo(ml) > 0 ? read.minus(ml) : ml.minus(read);
            Ratio most = ml.compareTo(Unit.CUP.base().over(2)) >= 0 ? Ratio.of(1, 7)
                    : ml.compareTo(Unit.TABLESPOON.base()) >= 0 ? Ratio.of(1, 5) : Ratio.of(1, 3);
            assertThat(off.compareTo(ml.times(most))).as(ml + " ml: " + words).isLessThanOrEqualTo(0);
        }
    }
}
