package croftboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CookAmountsTest {
    private static Amount amount(String text) {
        return Amount.parse(text).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"15.9999 oz, 1 lb", "32 oz, 2 lb", "0.05 oz, 1.4 g", "0 lb, 0 g", "24 lb, 24 lb"})
    void mass_inPoundsAndOunces(String exact, String printed) {
        assertThat(CookAmounts.of(amount(exact))).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({"8 tbsp, 1/2 cup", "1.5 cup, 1-1/2 cups", "5 tbsp, 5 tbsp", "2 cups, 1 pt", "6 tsp, 2 tbsp",
        "4.9 tsp, 1 tbsp 2 tsp", "8 fl-oz, 1 cup", "250 ml, 250 ml", "1500 ml, 1.5 L", "2.2 bushels, 2-1/4 bushels"})
    void volume_inMeasuresThatACookHolds(String exact, String printed) {
        assertThat(CookAmounts.of(amount(exact))).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({"2.1 cans, 3 cans", "1 can, 1 can", "7.1 bunches, 7-1/2 bunches", "0.3 bunch, 1/2 bunch",
        "24 cloves, 24 cloves", "1.37 each, 1-1/2 each"})
    void counts_goUp_cansWhole(String exact, String printed) {
        assertThat(CookAmounts.of(amount(exact))).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({"45 min, 45 min", "2 h, 2 h", "64.2 min, 1 h 05 min", "90 s, 2 min"})
    void minutes_roundUp(String exact, String printed) {
        assertThat(CookAmounts.of(amount(exact))).isEqualTo(printed);
    }

    @Test
    void print_isNeverFartherThanHalfAQuarter() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            Ratio ounces = Ratio.of(random.nextInt(1_000_000) + 125, 1000);
            String[] words = CookAmounts.mass(ounces.times(Unit.OUNCE.base())).split(" ");
            Ratio printed = Ratio.ZERO;
            for (int w = 0; w < words.length; w += 2) {
                Ratio value = Amount.number(words[w]).orElseThrow();
                printed = printed.plus(words[w + 1].equals("lb") ? value.times(16) : value);
            }
            assertThat(printed.minus(ounces).max(ounces.minus(printed))).isLessThanOrEqualTo(Ratio.of(1, 8));
        }
    }
}
