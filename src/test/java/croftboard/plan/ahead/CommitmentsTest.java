package croftboard.plan.ahead;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CommitmentsTest {
    private static final double[] NOTHING_LEFT = {0, 0, 0};

    private static List<Commitments.Week> random(Random g) {
        List<Commitments.Week> weeks = new ArrayList<>();
        for (int w = 0; w < 1 + g.nextInt(12); w++) {
            double wanted = 1 + 8 * g.nextDouble();
            weeks.add(new Commitments.Week(wanted, wanted + 6 * g.nextDouble(), 0.4 * g.nextDouble(), 0.4 * g.nextDouble()));
        }
        return weeks;
    }

    /** Three outcomes have the mean and the spread that they stand for. */
    @Test
    void outcomes_haveMeanAndSpread() {
        double mean = 0;
        double variance = 0;
        for (int k = 0; k < 3; k++) {
            mean += Commitments.CHANCE[k] * Commitments.STEP[k];
            variance += Commitments.CHANCE[k] * Commitments.STEP[k] * Commitments.STEP[k];
        }
        assertThat(mean).isCloseTo(0, within(1e-12));
        assertThat(variance).isCloseTo(1, within(1e-12));
    }

    /** Buying week by week is one of the choices: a proposal is worth something, and no number between is worth more. */
    @Test
    void proposal_isTheBestOfAllNumbers() {
        Random g = new Random(11);
        for (int n = 0; n < 300; n++) {
            List<Commitments.Week> weeks = random(g);
            Commitments c = new Commitments(new Commitments.Terms(1_000, 1_000 + g.nextInt(900), g.nextInt(900) - 100));
            Commitments.Answer answer = c.best(weeks);
            assertThat(answer.worth()).isGreaterThanOrEqualTo(0);
            assertThat(answer.worth()).isCloseTo(c.cents(weeks, 0) - c.cents(weeks, answer.packs()), within(1e-6));
            for (int q = answer.floor(); q <= answer.ceiling(); q++) {
                assertThat(c.cents(weeks, q)).isGreaterThanOrEqualTo(c.cents(weeks, answer.packs()) - 1e-3);
            }
            assertThat(answer.floor()).isLessThanOrEqualTo(answer.ceiling());
            assertThat(answer.packs() == 0 || answer.packs() >= answer.floor()).isTrue();
            assertThat(answer.packs()).isLessThanOrEqualTo(answer.ceiling());
        }
    }

    /**
     * Where nothing is left unless it is promised and the field is sure, one week is a newsvendor: promise as long as the
     * chance of using one more pack is above (price - surplus) / (elsewhere - surplus). By hand: demand 6, 10, 14 with
     * chances 1/4, 1/2, 1/4; price 10, elsewhere 16, surplus 4 dollars: ratio 1/2, so 10 packs.
     */
    @Test
    void oneWeek_isANewsvendor() {
        double spread = 0.4 / Math.sqrt(2);
        Commitments.Week week = new Commitments.Week(10, 100, spread, 0);
        assertThat(new Commitments(new Commitments.Terms(1_000, 1_600, 400), NOTHING_LEFT).best(List.of(week)))
                .satisfies(a -> assertThat(a.packs()).isEqualTo(10)).satisfies(a -> assertThat(a.floor()).isEqualTo(6))
                .satisfies(a -> assertThat(a.ceiling()).isEqualTo(14));
        assertThat(new Commitments(new Commitments.Terms(1_000, 5_000, 400), NOTHING_LEFT).best(List.of(week)).packs()).isEqualTo(14);
        assertThat(new Commitments(new Commitments.Terms(1_000, 1_050, -500), NOTHING_LEFT).best(List.of(week)).packs()).isEqualTo(6);
    }

    /** Nothing is gained by a promise where all is left anyway, or elsewhere is as cheap. */
    @Test
    void promise_isWorthNothing_whereNothingIsScarce() {
        Commitments.Week week = new Commitments.Week(4, 40, 0.1, 0.1);
        assertThat(new Commitments(new Commitments.Terms(1_000, 1_500, 500), new double[] {1, 1, 1}).best(List.of(week)).worth())
                .isCloseTo(0, within(1e-6));
        assertThat(new Commitments(new Commitments.Terms(1_000, 900, 500)).best(List.of(week)).packs()).isZero();
    }
}
