package croftboard.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.TinyBook;
import croftboard.need.Account;
import croftboard.need.Enumeration;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.Given;
import croftboard.plan.PlanAnswer;
import croftboard.plan.PlanRequest;
import croftboard.plan.Planner;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.check.PlanChecker;
import croftboard.plan.check.Revised;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Tiny books: the repair is worth as much as the best of all menus with all orders, each change at its price. */
class TinyRepairTest {
    private static final int BOOKS = Integer.getInteger("croftboard.tiny", 24);
    private long best;

    private static WeekPlan plan(Book book) {
        PlanRequest request = new PlanRequest(RandomBook.WEEK, 1, Duration.ofSeconds(1), OptionalLong.of(1_000), new TreeMap<>(),
                Optional.empty(), Given.NOTHING, new PlanRequest.Progress() {
                    @Override
                    public void doing(String what) { }

                    @Override
                    public void better(WeekPlan better) { }
                }, () -> false);
        return new Planner(book, Optional.empty()).plan(request).fold(PlanAnswer.Planned::plan, r -> null);
    }

    @Test
    void repair_ofTinyBooks_equalsTheBestByEnumeration() {
        LocalDateTime now = RandomBook.WEEK.monday().minusDays(1).atTime(7, 0);
        int compared = 0;
        for (int seed = 1; seed <= BOOKS; seed++) {
            Book book = TinyBook.of(seed);
            WeekPlan plan = plan(book);
            Optional<WeekPlan.Order> order = plan.orders().stream().filter(o -> !o.delivery().isBefore(now.toLocalDate())).findFirst();
            if (!plan.complete() || order.isEmpty()) {
                continue;
            }
            WeekPlan.OrderLine line = order.get().lines().get(0);
            List<Change> changes = List.of(new Change.Got(order.get().vendor(), line.item(),
                    Optional.of(order.get().delivery().getDayOfWeek()), line.packs() / 2));
            ChangedWeek week = ChangedWeek.of(book, plan, Given.NOTHING, changes, now);
            assertThat(week.faults()).isEmpty();
            Repair repair = new Repair(book, plan, week, new WeekPlan.Revision(1, now, List.of(changes.get(0).sentence())));
            Repair.Settled settled = repair.settle(new WeekRun.Effort(1, Duration.ZERO, OptionalLong.of(500), () -> false), p -> { });
            boolean possible = everyWay(week.priced(), PlanPacks.of(week.priced(), plan),
                    ChangePrices.orderLine(book.kitchen().promises().change().value()));
            assertThat(settled.plan().complete()).as("book %d", seed).isEqualTo(possible);
            if (possible) {
                compared++;
                assertThat(settled.worth()).as("book %d", seed).isEqualTo(best);
                assertThat(PlanChecker.check(book, settled.plan(), Given.NOTHING, Optional.empty(),
                        Optional.of(new Revised(plan, now, changes))).findings()).as("book %d", seed).isEmpty();
            }
        }
        assertThat(compared).isGreaterThan(BOOKS / 4);
    }

    /** Every menu with every order, judged by the account; the best worth is kept. */
    private boolean everyWay(WeekProblem p, int[] before, long lineCents) {
        best = Long.MIN_VALUE;
        menus(p, new int[p.slots().size()], 0, before, lineCents);
        return best > Long.MIN_VALUE;
    }

    private void menus(WeekProblem p, int[] choice, int s, int[] before, long lineCents) {
        if (s < choice.length) {
            for (choice[s] = p.slots().get(s).mayBeEmpty() ? -1 : 0; choice[s] < p.slots().get(s).candidates().size(); choice[s]++) {
                menus(p, choice, s + 1, before, lineCents);
            }
            return;
        }
        Workload work = Workload.of(p, choice);
        if (Enumeration.gapsHold(p, choice) && work.missed().isEmpty() && work.unitsOver(p) == 0) {
            orders(p, choice, work, new int[before.length], 0, before, lineCents);
        }
    }

    private void orders(WeekProblem p, int[] choice, Workload work, int[] packs, int o, int[] before, long lineCents) {
        if (o < packs.length) {
            for (packs[o] = p.offers().get(o).minPacks(); packs[o] <= p.offers().get(o).maxPacks(); packs[o]++) {
                orders(p, choice, work, packs, o + 1, before, lineCents);
            }
        } else if (Enumeration.mustsHold(p, work, packs)) {
            long changed = java.util.stream.IntStream.range(0, packs.length).filter(k -> packs[k] != before[k]).count();
            best = Math.max(best, Account.of(p, choice, packs, work).value() - lineCents * changed);
        }
    }
}
