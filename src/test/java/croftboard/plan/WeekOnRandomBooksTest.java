package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.RandomBook;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What must hold for any menu and any packs of several hundred random weeks: mass, money, and batches that
 * cover.
 */
class WeekOnRandomBooksTest {
    private static final int BOOKS = 300;
    private static final List<Any> WEEKS = new ArrayList<>();

    /** A random week with random dishes and packs, good or bad. */
    private record Any(WeekProblem week, int[] choice, int[] packs, Workload work) { }

    private interface Check {
        void of(Any any);
    }

    @BeforeAll
    static void build() {
        for (int seed = 1; seed <= BOOKS; seed++) {
            Random g = new Random(seed);
            WeekProblem week = ProblemBuilder.build(RandomBook.of(seed), RandomBook.WEEK, Map.of(), Given.NOTHING,
                    Optional.empty()).problem();
            int[] choice = week.slots().stream().mapToInt(s -> g.nextInt(s.candidates().size() + 1) - 1).toArray();
            int[] packs = week.offers().stream()
                    .mapToInt(o -> g.nextBoolean() ? 0 : g.nextInt(1 + Math.min(6, o.maxPacks())))
                    .toArray();
            WEEKS.add(new Any(week, choice, packs, Workload.of(week, choice)));
        }
    }

    private static void eachWeek(Check check) {
        assertThat(WEEKS).hasSize(BOOKS);
        WEEKS.forEach(check::of);
    }

    @Test
    void everyMilligramBought_isUsedKeptOrWasted() {
        eachWeek(any -> {
            Buying buying = Buying.of(any.week, any.work.needMg(), any.packs);
            long[] bought = new long[any.week.items().size()];
            for (int o = 0; o < any.packs.length; o++) {
                bought[any.week.offers().get(o).item()] += any.week.offers().get(o).packMg() * any.packs[o];
            }
            for (int i = 0; i < bought.length; i++) {
                int item = i;
                long used = buying.flows().stream().filter(f -> f.item() == item && f.delivery() >= 0)
                        .mapToLong(Buying.Flow::mg).sum();
                assertThat(used + buying.keptMg()[i] + buying.wastedMg()[i]).isEqualTo(bought[i]);
            }
        });
    }

    @Test
    void everyMilligramNeeded_comesFromStockOrDelivery_orIsSaidToBeMissing() {
        eachWeek(any -> {
            Buying buying = Buying.of(any.week, any.work.needMg(), any.packs);
            long[][] met = new long[any.week.items().size()][any.week.days()];
            buying.flows().forEach(f -> met[f.item()][f.day()] += f.mg());
            for (int i = 0; i < met.length; i++) {
                for (int d = 0; d < any.week.days(); d++) {
                    assertThat(met[i][d] + buying.missingMg()[i][d]).isEqualTo(any.work.needMg()[i][d]);
                }
            }
        });
    }

    @Test
    void everyFlow_fallsInTheLifeOfWhatItUses() {
        eachWeek(any -> {
            long[] lots = any.week.stock().stream().mapToLong(WeekProblem.ItemStock::mg).toArray();
            for (Buying.Flow f : Buying.of(any.week, any.work.needMg(), any.packs).flows()) {
                assertThat(f.mg()).isPositive();
                if (f.delivery() >= 0) {
                    int life = any.week.items().get(f.item()).lifeDays();
                    assertThat(f.day()).isBetween(f.delivery(), f.delivery() + life);
                } else {
                    WeekProblem.ItemStock lot = any.week.stock().get(f.stockLot());
                    assertThat(f.item()).isEqualTo(lot.item());
                    assertThat(f.day()).isBetween(lot.from(), lot.until());
                    lots[f.stockLot()] -= f.mg();
                }
            }
            for (long left : lots) {
                assertThat(left).isNotNegative();
            }
        });
    }

    @Test
    void value_isTheSumOfItsLines_eachCountedAgainFromTheChoice() {
        eachWeek(any -> {
            Account a = Account.of(any.week, any.choice, any.packs);
            long dishes = 0;
            long staples = any.work.stapleCents();
            for (int s = 0; s < any.choice.length; s++) {
                if (any.choice[s] >= 0) {
                    WeekProblem.Candidate dish = any.week.slots().get(s).candidates().get(any.choice[s]);
                    dishes += dish.salesCents() + dish.leftCents();
                    staples += dish.stapleCents();
                }
            }
            long orders = 0;
            boolean[] comes = new boolean[any.week.deliveries().size()];
            for (int o = 0; o < any.packs.length; o++) {
                orders += any.week.offers().get(o).costCents(any.packs[o]);
                comes[any.week.offers().get(o).delivery()] |= any.packs[o] > 0;
            }
            long fees = 0;
            for (int v = 0; v < comes.length; v++) {
                fees += comes[v] ? any.week.deliveries().get(v).feeCents() : 0;
            }
            assertThat(a.sales() + a.left()).isEqualTo(dishes);
            assertThat(a.staples()).isEqualTo(staples);
            assertThat(a.purchases()).isEqualTo(orders);
            assertThat(a.fees()).isEqualTo(fees);
            assertThat(a.eventSales()).isEqualTo(any.week.constantCents());
            long broken = a.broken().stream().mapToLong(Account.Broken::cents).sum();
            long income = dishes + any.week.constantCents() + a.kept();
            assertThat(a.value()).isEqualTo(income - staples - orders - a.waste() - fees - a.overtime() - broken);
        });
    }

    @Test
    void keptAndWasted_areWorthWhatTheirMilligramsSay() {
        eachWeek(any -> {
            Account a = Account.of(any.week, any.choice, any.packs);
            Buying buying = Buying.of(any.week, any.work.needMg(), any.packs);
            long kept = 0;
            long waste = 0;
            for (int i = 0; i < any.week.items().size(); i++) {
                kept += any.week.items().get(i).keptCentsPerMg().times(buying.keptMg()[i]).floor();
                waste += any.week.items().get(i).wasteCentsPerMg().times(buying.wastedMg()[i]).round();
            }
            assertThat(a.kept()).isEqualTo(kept);
            assertThat(a.waste()).isEqualTo(waste);
        });
    }

    @Test
    void localMoney_neverPassesAllMoney_andAShortfallIsExact() {
        eachWeek(any -> {
            Account a = Account.of(any.week, any.choice, any.packs);
            assertThat(a.localPurchases() + a.unclassified()).isLessThanOrEqualTo(a.purchases());
            Ratio shortBy = any.week.prices().localTarget().times(a.purchases()).minus(Ratio.of(a.localPurchases()))
                    .max(Ratio.ZERO);
            long cents = any.week.prices().localPrice().times(shortBy).round();
            List<Account.Broken> said = a.broken().stream()
                    .filter(b -> b.promise() == Account.Promise.LOCAL_SHARE).toList();
            assertThat(said).isEqualTo(cents == 0 ? List.of()
                    : List.of(new Account.Broken(Account.Promise.LOCAL_SHARE, 0, -1, shortBy.ceil(), cents)));
        });
    }

    @Test
    void batches_coverEveryDemandThatIsNotSaidToBeMissed() {
        int[] some = new int[1];
        eachWeek(any -> {
            for (int c = 0; c < any.week.components().size(); c++) {
                some[0] += covered(any, c);
            }
        });
        assertThat(some[0]).as("demands looked at").isGreaterThan(BOOKS);
    }

    /**
     * Demands of dishes and of the batches that use the component, less stock and missed ones, against its
     * batches.
     */
    private static int covered(Any any, int c) {
        List<WeekProblem.Demand> demands = demands(any, c);
        long wanted = demands.stream().mapToLong(WeekProblem.Demand::mg).sum();
        long missed = any.work.missed().stream().filter(d -> d.component() == c)
                .mapToLong(WeekProblem.Demand::mg).sum();
        WeekProblem.Component made = any.week.components().get(c);
        long[] left = demands.stream().mapToLong(WeekProblem.Demand::mg).toArray();
        for (WeekProblem.ComponentStock lot : any.week.componentStock()) {
            serve(demands, left, lot.component() == c ? lot.mg() : 0, lot.from(), lot.until());
        }
        for (Workload.Batch b : any.work.batchesOf(c)) {
            assertThat(any.week.prepDays()[b.day()]).isTrue();
            serve(demands, left, made.stepMg() * b.steps(), b.day() + made.leadDays(), b.day() + made.lifeDays() - 1);
        }
        assertThat(java.util.Arrays.stream(left).sum()).as("of %d", wanted).isLessThanOrEqualTo(missed);
        return demands.size();
    }

    private static List<WeekProblem.Demand> demands(Any any, int c) {
        List<WeekProblem.Demand> demands = new ArrayList<>();
        for (int s = 0; s < any.choice.length; s++) {
            if (any.choice[s] >= 0) {
                any.week.slots().get(s).candidates().get(any.choice[s]).demands().stream()
                        .filter(d -> d.component() == c)
                        .forEach(demands::add);
            }
        }
        for (Workload.Batch b : any.work.batches()) {
            any.week.components().get(b.component()).parts().stream().filter(p -> p.component() == c)
                    .forEach(p -> demands.add(new WeekProblem.Demand(c, b.day(), b.lastDay(), p.mg() * b.steps())));
        }
        demands.sort(Comparator.comparingInt(WeekProblem.Demand::useDay).thenComparingInt(WeekProblem.Demand::lastDay)
                .thenComparingLong(WeekProblem.Demand::mg));
        return demands;
    }

    /** Earliest use first: later batches can serve later uses, never earlier ones. */
    private static void serve(List<WeekProblem.Demand> demands, long[] left, long mg, int from, int until) {
        long rest = mg;
        for (int i = 0; i < left.length && rest > 0; i++) {
            WeekProblem.Demand d = demands.get(i);
            if (d.useDay() >= from && d.lastDay() <= until) {
                long take = Math.min(rest, left[i]);
                left[i] -= take;
                rest -= take;
            }
        }
    }
}
