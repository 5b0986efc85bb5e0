package croftboard.sourcing;

import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Orders for a menu: a search that always answers, then, where the exact solver is there, the exact program with its proof. */
public final class Sourcing {
    private final WeekProblem problem;
    private final double localWorth;

    /** @param localWorth dollars that one more dollar spent locally is worth; {@link Relaxation#localWorth()} */
    public Sourcing(WeekProblem problem, double localWorth) {
        this.problem = problem;
        this.localWorth = localWorth;
    }

    /**
     * @param packs of each offer
     * @param complete every need is met, every minimum reached, the dock has hands
     * @param valueCents of the whole plan, by the account
     * @param bestForMenu no order for this menu makes the plan worth more; empty when nothing was proved
     * @param rounds of the search
     */
    public record Orders(int[] packs, boolean complete, long valueCents, Optional<Long> bestForMenu, int rounds) { }

    /** @param rounds of the search: repeatable; 0: until {@code stop} */
    public Orders search(int[] choice, long seed, int rounds, BooleanSupplier stop) {
        Workload work = Workload.of(problem, choice);
        OrderSearch.Found found = new OrderSearch(problem, work.needMg(), localWorth).run(seed, rounds, stop);
        int[] packs = trimmed(choice, work, found.packs());
        return judged(choice, work, packs, Optional.empty(), found.rounds());
    }

    /**
     * The exact program, started from known orders; the better of both is kept.
     *
     * @param millis clock limit; 0: none
     * @param nodes limit of the tree, repeatable; 0: none
     */
    public Orders exact(int[] choice, Orders start, long millis, long nodes) {
        Workload work = Workload.of(problem, choice);
        Account account = Account.of(problem, choice, start.packs(), work);
        long[][] need = Buying.afterStock(problem, work.needMg());
        ExactOrders.MenuMoney menu = new ExactOrders.MenuMoney(account.sales() + account.eventSales(), account.staples());
        Optional<ExactOrders.Found> found = new ExactOrders(problem, need).solve(start.packs(), menu, millis, nodes);
        if (found.isEmpty()) {
            return start;
        }
        long bound = SafeSide.up(problem, found.get().boundCents() + menuOnly(choice, work));
        Orders better = found.get().packs().map(p -> judged(choice, work, trimmed(choice, work, p), Optional.empty(),
                start.rounds())).filter(o -> o.complete() && (!start.complete() || o.valueCents() > start.valueCents()))
                .orElse(start);
        Optional<Long> proof = better.complete() ? Optional.of(Math.max(bound, better.valueCents())) : Optional.empty();
        return new Orders(better.packs(), better.complete(), better.valueCents(), proof, better.rounds());
    }

    /** Cents: what the menu would be worth if its food cost nothing; no order makes it worth more. */
    public long valueWithFreeFood(int[] choice) {
        return (long) Math.ceil(menuOnly(choice, Workload.of(problem, choice)));
    }

    /** The part of the account that no order changes. */
    private double menuOnly(int[] choice, Workload work) {
        Account none = Account.of(problem, choice, new int[problem.offers().size()], work);
        long promises = none.broken().stream().filter(b -> b.promise() != Account.Promise.FOOD_COST
                && b.promise() != Account.Promise.LOCAL_SHARE).mapToLong(Account.Broken::cents).sum();
        return none.sales() + none.eventSales() + none.left() - none.staples() - none.overtime() - promises;
    }

    /** Takes away packs that nothing needs while the plan gets no worse. */
    private int[] trimmed(int[] choice, Workload work, int[] packs) {
        int[] now = packs.clone();
        Orders best = judged(choice, work, now, Optional.empty(), 0);
        for (int o = 0; o < now.length && best.complete(); o++) {
            while (now[o] > problem.offers().get(o).minPacks()) {
                now[o]--;
                Orders less = judged(choice, work, now, Optional.empty(), 0);
                if (!less.complete() || less.valueCents() < best.valueCents()) {
                    now[o]++;
                    break;
                }
                best = less;
            }
        }
        return now;
    }

    private Orders judged(int[] choice, Workload work, int[] packs, Optional<Long> proof, int rounds) {
        Account account = Account.of(problem, choice, packs, work);
        boolean complete = Buying.of(problem, work.needMg(), packs).complete() && minimumsMet(packs) && dockHasHands(packs, work);
        return new Orders(packs.clone(), complete, account.value(), proof, rounds);
    }

    private boolean minimumsMet(int[] packs) {
        long[] money = new long[problem.deliveries().size()];
        for (int o = 0; o < packs.length; o++) {
            money[problem.offers().get(o).delivery()] += problem.offers().get(o).costCents(packs[o]);
        }
        for (int v = 0; v < money.length; v++) {
            if (money[v] > 0 && money[v] < problem.deliveries().get(v).minimumCents()) {
                return false;
            }
        }
        return true;
    }

    private boolean dockHasHands(int[] packs, Workload work) {
        int dock = problem.prices().receivingResource();
        if (dock < 0) {
            return true;
        }
        WeekProblem.Resource r = problem.resources().get(dock);
        long[] used = Account.withReceiving(problem, packs, work.used())[dock];
        for (int t = 0; t < used.length; t++) {
            if (used[t] > r.regular()[t] + r.overtime()[t]) {
                return false;
            }
        }
        return true;
    }
}
