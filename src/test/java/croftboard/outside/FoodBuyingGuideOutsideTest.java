package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Ratio;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Purchase units for 100 servings, USDA Food Buying Guide, Section 2 page 2-1 (January 2013): rounded up to
 * the next tenth. The rule is a reading of the printed numbers; all eight rows agree with it.
 */
class FoodBuyingGuideOutsideTest {
    private static final Ratio TENTH = Ratio.of(1, 10);

    private static Ratio unitsFor100(String servingsPerUnit) {
        return Ratio.of(100).over(Ratio.decimal(servingsPerUnit));
    }

    @ParameterizedTest(name = "{0}: {1} servings a unit, {2} units")
    @CsvSource({
        "'artichokes, leaves', 1.49, 67.2",
        "'artichokes, bottoms only', 1.38, 72.5",
        "'artichokes, bottoms and leaves', 2.84, 35.3",
        "'artichoke bottoms, No. 300 can', 5.97, 16.8",
        "'artichoke hearts, No. 300 can', 4.67, 21.5",
        "'artichoke hearts, frozen', 10.00, 10.0",
        "'vegetable, 1/4 cup heated, drained', 7.17, 14.0",
        "'vegetable, 1/4 cup drained', 8.10, 12.4"})
    void units_areRoundedUpToTheNextTenth(String item, String servings, String printed) {
        assertThat(unitsFor100(servings).ceilTo(TENTH)).isEqualTo(Ratio.decimal(printed));
    }

    /** Rows where the nearest tenth would be another number, and too little for 100 servings. */
    @ParameterizedTest(name = "{0} servings a unit: not {1}")
    @CsvSource({"1.49, 67.1", "2.84, 35.2", "4.67, 21.4", "7.17, 13.9", "8.10, 12.3"})
    void nearestTenth_wouldServeFewerThan100(String servings, String nearest) {
        assertThat(unitsFor100(servings).roundTo(TENTH)).isEqualTo(Ratio.decimal(nearest));
        assertThat(Ratio.decimal(nearest).times(Ratio.decimal(servings))).isLessThan(Ratio.of(100));
    }
}
