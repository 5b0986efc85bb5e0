package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.List;

/** Packs and deliveries: prices and price breaks, minimums, fees, local share, food cost, receiving. */
final class Purchases {
    private final WeekProblem problem;
    private final Program program;
    private final Goods goods;
    private final int[] limit;
    private final double target;
    /** Columns: packs of each offer. */
    final int[] packs;
    /** Columns: whether a delivery brings anything. */
    final int[] open;
    /** Local money less its promised share of all money, and what is missing: not below 0. */
    final Program.Row local;
    /** Each delivery's money less its minimum when open. */
    final Program.Row[] minimum;
    private final FoodCost food;

    Purchases(WeekProblem problem, Program program, Goods goods, FoodCost food) {
        this.problem = problem;
        this.program = program;
        this.goods = goods;
        limit = PackLimits.all(problem);
        this.food = food;
        target = problem.prices().localTarget().toDouble();
        packs = new int[limit.length];
        open = new int[problem.deliveries().size()];
        minimum = new Program.Row[open.length];
        double money = 0;
        for (WeekProblem.Offer o : problem.offers()) {
            money += o.maxPacks() * (double) FoodCost.dearest(o);
        }
        local = program.atLeast(0)
                .add(program.real(0, target * money, -problem.prices().localPrice().toDouble()), 1);
        for (int v = 0; v < open.length; v++) {
            WeekProblem.Delivery d = problem.deliveries().get(v);
            open[v] = program.whole(0, 1, -d.feeCents());
            minimum[v] = program.atLeast(0).add(open[v], -d.minimumCents());
        }
        for (int o = 0; o < packs.length; o++) {
            offer(o, problem.offers().get(o));
        }
        goods.kept().forEach(food::kept);
    }

    private void offer(int o, WeekProblem.Offer offer) {
        int most = limit[o];
        packs[o] = program.whole(offer.minPacks(), most, 0);
        goods.bring(packs[o], offer);
        // Free packs open no order that would have to reach a minimum: their money is nothing.
        boolean opens = FoodCost.dearest(offer) > 0 || problem.deliveries().get(offer.delivery()).minimumCents() == 0;
        if (opens && most > 0) {
            program.atMost(0).add(packs[o], 1).add(open[offer.delivery()], -most);
            if (offer.minPacks() > 0) {
                program.atLeast(1).add(open[offer.delivery()], 1);
            }
        }
        if (offer.tiers().size() > 1 && most > 0) {
            tiers(o, offer, most, opens);
        } else {
            spend(packs[o], offer.tiers().get(0).priceCents(), offer);
        }
    }

    /** All packs cost the tier that their number reaches: one tier is chosen, and its packs lie in its range. */
    private void tiers(int o, WeekProblem.Offer offer, int most, boolean opens) {
        Program.Row sum = program.row(0, 0).add(packs[o], -1);
        Program.Row one = opens ? program.atMost(0).add(open[offer.delivery()], -1) : program.atMost(1);
        List<WeekProblem.Tier> tiers = offer.tiers();
        for (int t = 0; t < tiers.size(); t++) {
            int from = tiers.get(t).packs();
            int top = t + 1 < tiers.size() ? Math.min(most, tiers.get(t + 1).packs() - 1) : most;
            if (from <= top) {
                int chosen = program.whole(0, 1, 0);
                int n = program.real(0, top, 0);
                program.atLeast(0).add(n, 1).add(chosen, -from);
                program.atMost(0).add(n, 1).add(chosen, -top);
                sum.add(n, 1);
                one.add(chosen, 1);
                spend(n, tiers.get(t).priceCents(), offer);
            }
        }
    }

    private void spend(int column, double cents, WeekProblem.Offer offer) {
        program.worth(column, -cents);
        minimum[offer.delivery()].add(column, cents);
        local.add(column, cents * (localPart(offer) - target));
        food.purchase(column, cents);
    }

    private static double localPart(WeekProblem.Offer offer) {
        return offer.locality() == WeekProblem.Locality.LOCAL ? 1 : 0;
    }

    /** Each open delivery takes minutes at the dock. */
    void receiveWith(HandsRows hands) {
        int dock = problem.prices().receivingResource();
        for (int v = 0; v < open.length && dock >= 0; v++) {
            hands.use(open[v], dock, problem.deliveries().get(v).day(), problem.prices().receivingMinutes());
        }
    }
}
