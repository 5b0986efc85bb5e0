package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.Optional;

/** Food (purchases less kept surplus, plus staples) above its promised share of sales: each cent costs. */
final class FoodCost {
    private final double share;
    /** Empty when nothing is promised. */
    private final Optional<Program.Row> row;

    /** @param staples at most so many cents of staples */
    FoodCost(WeekProblem problem, Program program, double staples) {
        share = problem.prices().foodCostAtMost().toDouble();
        double price = problem.prices().foodCostPrice().toDouble();
        double money = staples + problem.offers().stream().mapToDouble(o -> o.maxPacks() * (double) dearest(o)).sum();
        row = price > 0 ? Optional.of(program.atMost(0).add(program.real(0, money, -price), -1)) : Optional.empty();
    }

    /** The highest price that a pack can have. */
    static long dearest(WeekProblem.Offer offer) {
        return offer.tiers().stream().mapToLong(WeekProblem.Tier::priceCents).max().orElseThrow();
    }

    /** Sales and staples that no decision changes. */
    void fixed(double sales, double staples) {
        row.ifPresent(r -> r.most += share * sales - staples);
    }

    /** One unit of the column is a dish with these sales and staples. */
    void dish(int column, double sales, double staples) {
        row.ifPresent(r -> r.add(column, staples - share * sales));
    }

    void purchase(int column, double cents) {
        row.ifPresent(r -> r.add(column, cents));
    }

    void kept(Goods.Kept surplus) {
        row.ifPresent(r -> r.add(surplus.column(), -surplus.cents()));
    }
}
