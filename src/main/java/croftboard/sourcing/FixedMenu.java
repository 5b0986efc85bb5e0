package croftboard.sourcing;

import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;

/** One menu of a week: what it needs, what it brings before anything is bought, and whether packs keep its musts. */
final class FixedMenu {
    final WeekProblem problem;
    final Workload work;
    /** Milligrams by item and day that dated stock does not cover. */
    final long[][] toBuy;
    /** Expected sales, events included. */
    final long salesCents;
    final long stapleCents;
    /** The part of the account that no order changes, or at least no order betters. */
    final long cents;
    private final int[] choice;

    FixedMenu(WeekProblem problem, int[] choice) {
        this.problem = problem;
        this.choice = choice.clone();
        work = Workload.of(problem, choice);
        toBuy = Buying.afterStock(problem, work.needMg());
        Account none = account(new int[problem.offers().size()]);
        salesCents = none.sales() + none.eventSales();
        stapleCents = none.staples();
        long promises = none.broken().stream().filter(b -> !hangsOnOrders(b)).mapToLong(Account.Broken::cents).sum();
        cents = salesCents + none.left() - stapleCents - none.overtime() - promises;
    }

    /** Receiving can make the days of the dock more even: its unevenness is left out rather than guessed. */
    private boolean hangsOnOrders(Account.Broken b) {
        return switch (b.promise()) {
            case LOCAL_SHARE, FOOD_COST -> true;
            case EVENNESS -> b.rule() == problem.prices().receivingResource();
            case EMPTY_SLOT, COVERAGE, VARIETY -> false;
        };
    }

    Account account(int[] packs) {
        return Account.of(problem, choice, packs, work);
    }

    /** Every need is met, every minimum reached, the dock has hands, and packs are within what can be had. */
    boolean complete(int[] packs) {
        return withinLimits(packs) && problem.minimumsMet(packs) && dockHasHands(packs)
                && Buying.of(problem, work.needMg(), packs).complete();
    }

    private boolean withinLimits(int[] packs) {
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            if (packs[o] < offer.minPacks() || packs[o] > offer.maxPacks()) {
                return false;
            }
        }
        return true;
    }

    private boolean dockHasHands(int[] packs) {
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
