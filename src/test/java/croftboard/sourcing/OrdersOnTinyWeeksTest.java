package croftboard.sourcing;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Account;
import croftboard.need.Enumeration;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Orders for the best menu of a tiny week, against every order that could be placed. */
class OrdersOnTinyWeeksTest {
    private static final int EACH = 50;
    private static final double LOCAL_WORTH = 0.2;
    private static final int ROUNDS = 300;
    private static final long ROUNDINGS = 12;

    @ParameterizedTest(name = "weeks from {0}")
    @ValueSource(longs = {1, 51, 101, 151, 201, 251})
    void exactOrders_forTheBestMenu_equalTheBestByEnumeration(long from) {
        for (long seed = from; seed < from + EACH; seed++) {
            WeekProblem problem = TinyWeek.of(seed);
            Optional<Enumeration.Best> best = Enumeration.bestPlan(problem);
            if (best.isPresent()) {
                int[] menu = best.get().choice();
                Sourcing sourcing = new Sourcing(problem, LOCAL_WORTH);
                Sourcing.Orders start = sourcing.search(menu, seed, ROUNDS, () -> false);
                Sourcing.Orders exact = sourcing.exact(menu, start, 0, 0);
                long proof = new ExactOrders(new FixedMenu(problem, menu)).solve(start.packs(),
                        new ExactOrders.Effort(0, 0)).mostCents().orElseThrow();
                assertThat(exact.complete()).as("tiny week %d", seed).isTrue();
                assertThat(exact.valueCents()).as("tiny week %d", seed).isEqualTo(best.get().cents());
                assertThat(proof).as("tiny week %d", seed).isGreaterThanOrEqualTo(best.get().cents());
                if (!evennessHangsOnReceiving(problem)) {
                    assertThat(proof).as("tiny week %d", seed).isLessThanOrEqualTo(best.get().cents() + ROUNDINGS);
                }
            }
        }
    }

    /** Then the proof leaves the evenness of the dock out. */
    private static boolean evennessHangsOnReceiving(WeekProblem problem) {
        int dock = problem.prices().receivingResource();
        return dock >= 0 && problem.resources().get(dock).hands()
                && problem.prices().evennessCentsPerMinute().signum() > 0;
    }

    @ParameterizedTest(name = "weeks from {0}")
    @ValueSource(longs = {301, 401})
    void search_alone_findsACompleteOrderWhereThereIsOne_andMostlyTheBest(long from) {
        int exist = 0;
        int best = 0;
        for (long seed = from; seed < from + 2 * EACH; seed++) {
            WeekProblem problem = TinyWeek.of(seed);
            for (int[] menu : TinyMenus.of(problem, 3)) {
                OptionalLong known = Enumeration.bestFor(problem, menu);
                Sourcing.Orders orders = new Sourcing(problem, LOCAL_WORTH).search(menu, seed, ROUNDS, () -> false);
                assertThat(orders.complete()).as("tiny week %d", seed).isEqualTo(known.isPresent());
                if (known.isPresent()) {
                    exist++;
                    best += orders.valueCents() == known.getAsLong() ? 1 : 0;
                    assertThat(orders.valueCents()).as("tiny week %d", seed).isLessThanOrEqualTo(known.getAsLong());
                }
            }
        }
        assertThat(exist).isGreaterThan(EACH);
        assertThat(best).isGreaterThan(exist * 9 / 10);
    }

    @ParameterizedTest(name = "weeks from {0}")
    @ValueSource(longs = {301, 401})
    void exactOrders_forAnyMenu_areTheBest_orThereIsNone(long from) {
        for (long seed = from; seed < from + 2 * EACH; seed++) {
            WeekProblem problem = TinyWeek.of(seed);
            for (int[] menu : TinyMenus.of(problem, 3)) {
                OptionalLong known = Enumeration.bestFor(problem, menu);
                ExactOrders.Answer answer = new ExactOrders(new FixedMenu(problem, menu))
                        .solve(new int[problem.offers().size()], new ExactOrders.Effort(0, 0));
                assertThat(answer.impossible()).as("tiny week %d", seed).isEqualTo(known.isEmpty());
                if (known.isPresent()) {
                    Account account = Account.of(problem, menu, answer.packs().orElseThrow());
                    assertThat(account.value()).as("tiny week %d", seed).isEqualTo(known.getAsLong());
                }
            }
        }
    }
}
