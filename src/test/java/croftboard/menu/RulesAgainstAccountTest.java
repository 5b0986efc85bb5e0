package croftboard.menu;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.RandomBook;
import croftboard.need.Account;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import croftboard.planted.PlantedWeek;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The rules that the search keeps up to date say the same money as the account that judges every plan. With
 * {@code -Dcroftboard.moves=1000000 -Dcroftboard.moves.seed=7} so many changes, and from another seed on.
 */
class RulesAgainstAccountTest {
    private static final int CHANGES = Integer.getInteger("croftboard.moves", 2_000);
    private static final long SEED = Long.getLong("croftboard.moves.seed", 0);
    /** Every so many changes the account is asked. */
    private static final int ASK = 50;

    @ParameterizedTest(name = "random book {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void rules_afterThousandsOfChanges_equalTheAccountToTheCent(int seed) {
        WeekProblem week = ProblemBuilder.build(RandomBook.of(SEED + seed), RandomBook.WEEK, Map.of(), Given.NOTHING,
                Optional.empty()).problem();
        compare(week, seed);
    }

    @Test
    void rules_onARandomWeekOf54Slots_equalTheAccountToTheCent() {
        compare(RandomWeek.week(SEED + 1), 1);
    }

    @Test
    void rules_onAWeekPlantedWithItsBest_equalTheAccountToTheCent() {
        compare(PlantedWeek.week(SEED + 1, true).problem(), 1);
    }

    private static void compare(WeekProblem week, long seed) {
        Random g = new Random(SEED + seed);
        MenuState state = new MenuState(week, PurchasePrices.of(week, 0.1));
        for (int n = 0; n < CHANGES; n++) {
            int slot = g.nextInt(week.slots().size());
            int dishes = week.slots().get(slot).candidates().size();
            state.set(slot, g.nextInt(dishes + 1) - 1);
            state.worth();
            if (n % ASK == 0 || n == CHANGES - 1) {
                check(week, state);
            }
        }
    }

    private static void check(WeekProblem week, MenuState state) {
        int[] choice = state.choices();
        Workload work = Workload.of(week, choice);
        assertThat(state.work().need).isDeepEqualTo(work.needMg());
        assertThat(state.work().used).isDeepEqualTo(work.used());
        assertThat(state.work().missed()).isEqualTo(work.missed().size());
        Account account = Account.of(week, choice, new int[week.offers().size()], work);
        long promises = account.broken().stream().filter(b -> b.promise() != Account.Promise.LOCAL_SHARE
                && b.promise() != Account.Promise.FOOD_COST).mapToLong(Account.Broken::cents).sum();
        long expected = account.sales() + account.eventSales() + account.left() - account.staples()
                - account.overtime() - promises;
        assertThat(state.worthWithoutPurchases()).isEqualTo(expected);
    }
}
