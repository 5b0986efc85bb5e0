package croftboard.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Two hundred kitchens whose demand is known; {@code SimulatedFigures} prints the same by hand. */
class LearnerOnSimulatedKitchensTest {
    private static final SimulatedFigures AFTER_12_WEEKS = SimulatedFigures.of(200, 12, 0.3);

    @Test
    void aboutThreeDaysInTen_runOut() {
        assertThat((double) AFTER_12_WEEKS.soldOut / AFTER_12_WEEKS.days).isBetween(0.28, 0.35);
    }

    @Test
    void learnedMeans_areWithinFivePercent_inTheMedian_andNotBiased() {
        assertThat(SimulatedFigures.median(AFTER_12_WEEKS.error)).isLessThan(0.05);
        assertThat(SimulatedFigures.mean(AFTER_12_WEEKS.signed)).isBetween(-0.01, 0.01);
    }

    @Test
    void meansOfSales_areTooLow() {
        assertThat(SimulatedFigures.mean(AFTER_12_WEEKS.naive)).isLessThan(-0.04);
        assertThat(SimulatedFigures.median(AFTER_12_WEEKS.naive)).isLessThan(-0.04);
    }

    @Test
    void learnedQuantities_earnNearlyWhatKnowingWouldEarn() {
        assertThat(AFTER_12_WEEKS.learned / AFTER_12_WEEKS.best).isGreaterThan(0.97);
        assertThat(AFTER_12_WEEKS.byNaive).isLessThan(AFTER_12_WEEKS.learned);
    }

    /** Nothing in the result is an artefact of running out: it is the same where next to nothing does. */
    @Test
    void withoutRunningOut_meansOfSalesAreNotTooLow() {
        SimulatedFigures plenty = SimulatedFigures.of(40, 12, 0.002);
        assertThat(SimulatedFigures.mean(plenty.naive)).isBetween(-0.02, 0.02);
        assertThat(SimulatedFigures.median(plenty.error)).isLessThan(0.05);
    }

    @Test
    void afterTwoYears_theSeasonIsLearned() {
        SimulatedFigures years = SimulatedFigures.of(3, 104, 0.3);
        assertThat(SimulatedFigures.median(years.error)).isLessThan(0.05);
        assertThat(SimulatedFigures.mean(years.signed)).isBetween(-0.03, 0.03);
    }
}
