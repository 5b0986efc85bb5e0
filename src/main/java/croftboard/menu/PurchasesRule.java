package croftboard.menu;

import croftboard.need.PackFill;
import croftboard.need.WeekProblem;
import java.util.Arrays;

/**
 * What the menu needs is bought in whole packs, item by item, each time the cheapest pack for the grams it serves, at
 * prices that carry the worth of local money; surplus that keeps is worth its share, the rest costs hauling. Food above
 * its promised share of sales costs its price. An estimate: minimums, fees and open deliveries are left to the orders.
 */
final class PurchasesRule implements MenuRule {
    private final WeekProblem problem;
    private final KitchenWork work;
    private final SalesRule sales;
    private final PackFill fill;
    private final double[] packCents;
    private final int[] packs;
    private final KnownFills[] known;
    private final long[] itemCents;
    private final double foodAtMost;
    private final double foodPrice;
    private long cents;

    PurchasesRule(WeekProblem problem, KitchenWork work, SalesRule sales, PurchasePrices prices) {
        this.problem = problem;
        this.work = work;
        this.sales = sales;
        fill = new PackFill(problem);
        packCents = prices.packCents();
        packs = new int[packCents.length];
        itemCents = new long[problem.items().size()];
        known = new KnownFills[itemCents.length];
        Arrays.setAll(known, i -> new KnownFills());
        foodAtMost = problem.prices().foodCostAtMost().toDouble();
        foodPrice = problem.prices().foodCostPrice().toDouble();
        for (int i = 0; i < itemCents.length; i++) {
            refill(i);
        }
    }

    private void refill(int item) {
        cents -= itemCents[item];
        long[] need = work.need[item];
        if (!known[item].knows(need)) {
            known[item].learn(need, fill.fill(item, need, packCents, packs));
        }
        itemCents[item] = known[item].cents();
        cents += itemCents[item];
    }

    @Override
    public void put(int slot, WeekProblem.Candidate dish) { }

    @Override
    public void take(int slot, WeekProblem.Candidate dish) { }

    @Override
    public long cents() {
        work.drainDirty(this::refill);
        double over = cents - foodAtMost * (sales.salesCents() + problem.constantCents());
        return -cents - (over > 0 ? Math.round(over * foodPrice) : 0);
    }

    @Override
    public String sentence() {
        for (int i = 0; i < itemCents.length; i++) {
            if (itemCents[i] >= PackFill.SHORT_CENTS) {
                return "not enough " + problem.items().get(i).name() + " can be had";
            }
        }
        return "";
    }
}
