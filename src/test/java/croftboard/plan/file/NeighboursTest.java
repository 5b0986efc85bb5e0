package croftboard.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NeighboursTest {
    private static final IsoWeek WEEK = RandomBook.WEEK;
    private static final long SEEDS = 20;

    private static WeekPlan made(Book book, int away) {
        return MadePlan.of(book, WEEK.plusWeeks(away), Given.NOTHING, Optional.empty(), Map.of(), 1 + away * away);
    }

    private static Given given(Book book, Map<Integer, WeekPlan> plans) {
        return Neighbours.given(WEEK, book, w -> plans.values().stream().filter(p -> p.week().equals(w)).findFirst());
    }

    @Test
    void noNeighbours_nothingIsGiven() {
        assertThat(given(RandomBook.of(1), Map.of())).isEqualTo(Given.NOTHING);
    }

    @Test
    void orders_areThoseOfDeliveriesThatTheWeekMayShare() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Book book = RandomBook.of(seed);
            Map<Integer, WeekPlan> plans = new TreeMap<>(Map.of(-2, made(book, -2), -1, made(book, -1), 1, made(book, 1)));
            LocalDate monday = WEEK.monday();
            long expected = 0;
            for (int away : new int[] {-1, 1}) {
                for (WeekPlan.Order order : plans.get(away).orders()) {
                    boolean shared = !order.delivery().isBefore(monday.minusDays(7))
                            && order.delivery().isBefore(monday.plusDays(7));
                    expected += shared ? order.total() : 0;
                }
            }
            Given given = given(book, plans);
            assertThat(given.orders().stream().mapToLong(Given.Ordered::cents).sum()).as("seed " + seed).isEqualTo(expected);
        }
    }

    @Test
    void lots_areWhatWasBoughtAndNotUsedAndStillGood() {
        int seen = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Book book = RandomBook.of(seed);
            WeekPlan before = made(book, -1);
            Given given = given(book, Map.of(-1, before));
            for (Given.Lot lot : given.lots()) {
                long bought = before.orders().stream().filter(o -> o.delivery().equals(lot.from()))
                        .flatMap(o -> o.lines().stream()).filter(l -> l.item().equals(lot.item()))
                        .mapToLong(l -> l.packs() * l.packMg()).sum();
                long used = before.flows().stream().filter(f -> f.item().equals(lot.item())
                        && f.delivery().equals(Optional.of(lot.from()))).mapToLong(WeekPlan.Flow::mg).sum();
                assertThat(lot.mg()).as("seed " + seed).isEqualTo(bought - used).isPositive();
                assertThat(lot.until()).isEqualTo(lot.from().plusDays(book.ingredient(lot.item()).keepsDays()))
                        .isAfterOrEqualTo(WEEK.monday().minusDays(1));
                assertThat(book.ingredient(lot.item()).isStaple()).isFalse();
                seen++;
            }
            long keptMg = before.surplus().stream().filter(s -> !book.ingredient(s.item()).isStaple())
                    .filter(s -> given.lots().stream().noneMatch(l -> l.item().equals(s.item())))
                    .filter(s -> book.ingredient(s.item()).keepsDays() >= 14).mapToLong(WeekPlan.Surplus::keptMg).sum();
            assertThat(keptMg).as("no lasting surplus is forgotten, seed " + seed).isZero();
        }
        assertThat(seen).isGreaterThan(10);
    }

    @Test
    void served_areDishesOfLinesOverTwoWeeksBeforeAndOneAfter() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Book book = RandomBook.of(seed);
            Map<Integer, WeekPlan> plans = new TreeMap<>(Map.of(-3, made(book, -3), -2, made(book, -2), -1, made(book, -1),
                    1, made(book, 1)));
            long expected = List.of(-2, -1, 1).stream().flatMap(a -> plans.get(a).menu().stream())
                    .filter(s -> s.recipe().isPresent() && !s.slot().startsWith("supper/")).count();
            assertThat(given(book, plans).served()).as("seed " + seed).hasSize(Math.toIntExact(expected));
        }
    }

    @Test
    void planMadeWithThem_repeatsNoDishWithinTheGap() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Book book = RandomBook.of(seed);
            Given given = given(book, Map.of(-1, made(book, -1)));
            WeekPlan plan = MadePlan.of(book, WEEK, given, Optional.empty(), Map.of(), 0);
            for (WeekPlan.Served row : plan.menu()) {
                assertThat(given.served()).noneMatch(s -> row.recipe().equals(Optional.of(s.recipe()))
                        && !row.slot().startsWith("supper/")
                        && Math.abs(s.start().toEpochDay() - row.days().get(0).toEpochDay()) < book.kitchen().gapDays());
            }
        }
    }

    @Test
    void store_givesPostedPlansOnly(@TempDir Path folder) {
        PlanStore store = new PlanStore(folder);
        int posted = 0;
        for (long seed = 0; seed < SEEDS && posted < 3; seed++) {
            Book book = RandomBook.of(seed);
            WeekPlan before = made(book, -1);
            if (before.complete() && posted == 0) {
                int version = store.writeDraft(before);
                assertThat(store.given(WEEK, book)).isEqualTo(Given.NOTHING);
                store.post(before.week(), version);
                assertThat(store.given(WEEK, book)).isEqualTo(given(book, Map.of(-1, before)));
                posted++;
            }
        }
        assertThat(posted).isPositive();
    }
}
