package croftboard.sourcing;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPVariable;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The purchasing half of the program: packs, deliveries, minimums, fees, surplus, local share, food cost, receiving.
 * Masses are in grams. Needs are rows that the caller fills: what is delivered on a day may serve any row of its item
 * whose days it lives to see.
 */
final class BuyingRows {
    private final WeekProblem problem;
    private final Program program;
    final MPVariable[] packs;
    final MPVariable[] open;
    final MPVariable[] topUp;
    MPConstraint local;
    MPConstraint food;
    private final Map<Integer, Map<Integer, MPConstraint>> supply = new TreeMap<>();
    private final Map<String, MPConstraint> needRows = new HashMap<>();
    private final boolean whole;
    private final List<WeekProblem.ItemStock> stock;
    private final Map<Integer, MPConstraint> stockRows = new HashMap<>();

    /**
     * @param most packs of each offer that can be of use
     * @param stock free supply
     * @param whole packs and deliveries in whole numbers; false: divisible, at the lowest price that can be reached
     */
    BuyingRows(WeekProblem problem, Program program, int[] most, boolean whole, List<WeekProblem.ItemStock> stock) {
        this.stock = stock;
        this.problem = problem;
        this.program = program;
        this.whole = whole;
        packs = new MPVariable[problem.offers().size()];
        open = new MPVariable[problem.deliveries().size()];
        topUp = new MPVariable[open.length];
        double target = problem.prices().localTarget().toDouble();
        double price = problem.prices().localPrice().toDouble();
        local = program.row(0, Program.INF);
        Program.add(local, program.real(0, Program.INF, -price), 1);
        deliveries();
        for (int o = 0; o < packs.length; o++) {
            offer(o, most[o], target);
        }
        for (int v = 0; v < open.length; v++) {
            topUp(v, most, target);
        }
        foodCost(problem.prices().foodCostPrice().toDouble());
        receiving();
    }

    private void deliveries() {
        for (int v = 0; v < open.length; v++) {
            double fee = -problem.deliveries().get(v).feeCents();
            open[v] = whole ? program.integer(0, 1, fee) : program.real(0, 1, fee);
        }
    }

    private final Map<Integer, MPConstraint> minimum = new HashMap<>();

    private MPConstraint minimumRow(int delivery) {
        return minimum.computeIfAbsent(delivery, v -> {
            MPConstraint row = program.row(0, Program.INF);
            Program.add(row, open[v], -problem.deliveries().get(v).minimumCents());
            return row;
        });
    }

    private void offer(int o, int most, double target) {
        WeekProblem.Offer offer = problem.offers().get(o);
        int day = problem.deliveries().get(offer.delivery()).day();
        int limit = Math.max(most, offer.minPacks());
        packs[o] = whole ? program.integer(offer.minPacks(), limit, 0) : program.real(offer.minPacks(), limit, 0);
        MPConstraint opens = program.row(-Program.INF, 0);
        Program.add(opens, packs[o], 1);
        Program.add(opens, open[offer.delivery()], -limit);
        Program.add(supplyRow(offer.item(), day), packs[o], offer.packMg() / 1000.0);
        double localPart = (offer.locality() == WeekProblem.Locality.LOCAL ? 1 : 0) - target;
        if (whole && offer.tiers().size() > 1 && limit > 0) {
            tiers(o, offer, limit, localPart);
        } else {
            spend(packs[o], whole ? offer.tiers().get(0).priceCents() : offer.lowestPriceCents(), offer, localPart);
        }
    }

    private final List<Map.Entry<MPVariable, Double>> spending = new ArrayList<>();

    private void spend(MPVariable v, double cents, WeekProblem.Offer offer, double localPart) {
        program.solver().objective().setCoefficient(v, program.solver().objective().getCoefficient(v) - cents);
        Program.add(minimumRow(offer.delivery()), v, cents);
        Program.add(local, v, cents * localPart);
        spending.add(Map.entry(v, cents));
    }

    /** All packs cost the tier that their number reaches: one tier is chosen, its packs lie in its range. */
    private void tiers(int o, WeekProblem.Offer offer, int limit, double localPart) {
        MPConstraint sum = program.row(0, 0);
        Program.add(sum, packs[o], -1);
        MPConstraint one = program.row(-Program.INF, 1);
        for (int t = 0; t < offer.tiers().size(); t++) {
            WeekProblem.Tier tier = offer.tiers().get(t);
            int top = t + 1 < offer.tiers().size() ? Math.min(limit, offer.tiers().get(t + 1).packs() - 1) : limit;
            if (tier.packs() > top) {
                continue;
            }
            MPVariable chosen = program.integer(0, 1, 0);
            MPVariable n = program.real(0, top, 0);
            MPConstraint low = program.row(0, Program.INF);
            Program.add(low, n, 1);
            Program.add(low, chosen, -tier.packs());
            MPConstraint high = program.row(-Program.INF, 0);
            Program.add(high, n, 1);
            Program.add(high, chosen, -top);
            Program.add(sum, n, 1);
            Program.add(one, chosen, 1);
            spend(n, tier.priceCents(), offer, localPart);
        }
    }

    /**
     * Packs are limited to what can be of use, which forbids buying more only to reach a minimum; so money may be added
     * to a delivery at the smallest loss that any of its packs could have. With it the program is still a relaxation.
     */
    private void topUp(int v, int[] most, double target) {
        double room = 0;
        double best = 0;
        double localPart = -1;
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            int limit = Math.max(most[o], offer.minPacks());
            if (offer.delivery() == v && limit < offer.maxPacks()) {
                room += (offer.maxPacks() - limit) * (double) offer.priceCents(1);
                WeekProblem.Item item = problem.items().get(offer.item());
                int day = problem.deliveries().get(v).day();
                double kept = item.keeps(day)
                        ? item.keptCentsPerMg().toDouble() * offer.packMg() / offer.lowestPriceCents() : 0;
                best = Math.max(best, kept);
                localPart = Math.max(localPart, offer.locality() == WeekProblem.Locality.LOCAL ? 1 : 0);
            }
        }
        double needed = Math.min(room, problem.deliveries().get(v).minimumCents());
        if (whole && needed > 0) {
            topUp[v] = program.real(0, needed, -Math.max(0, 1 - best));
            Program.add(minimumRow(v), topUp[v], 1);
            Program.add(local, topUp[v], localPart - target);
        }
    }

    private MPConstraint supplyRow(int item, int day) {
        return supply.computeIfAbsent(item, i -> new TreeMap<>()).computeIfAbsent(day, d -> {
            MPConstraint row = program.row(0, 0);
            WeekProblem.Item facts = problem.items().get(item);
            double worth = facts.keeps(d) ? facts.keptCentsPerMg().toDouble() * 1000
                    : -facts.wasteCentsPerMg().toDouble() * 1000;
            MPVariable surplus = program.real(0, Program.INF, worth);
            Program.add(row, surplus, -1);
            if (facts.keeps(d)) {
                keptVariables.add(Map.entry(surplus, worth));
            }
            return row;
        });
    }

    private final List<Map.Entry<MPVariable, Double>> keptVariables = new ArrayList<>();
    private MPConstraint foodRow;

    /** Food = purchases - kept + staples; above its share of sales each cent costs. Sales and staples are added by the caller. */
    private void foodCost(double price) {
        if (price > 0) {
            foodRow = program.row(-Program.INF, 0);
            Program.add(foodRow, program.real(0, Program.INF, -price), -1);
            food = foodRow;
        }
    }

    /** Once all supply rows exist: purchases and kept surplus enter the food cost row. */
    void closeFoodCost() {
        if (food == null) {
            return;
        }
        spending.forEach(e -> Program.add(food, e.getKey(), e.getValue()));
        keptVariables.forEach(e -> Program.add(food, e.getKey(), -e.getValue()));
    }

    private void receiving() {
        int dock = problem.prices().receivingResource();
        if (dock < 0 || problem.prices().receivingMinutes() == 0) {
            return;
        }
        WeekProblem.Resource r = problem.resources().get(dock);
        Map<Integer, MPConstraint> byPeriod = new TreeMap<>();
        for (int v = 0; v < open.length; v++) {
            int period = r.period()[problem.deliveries().get(v).day()];
            MPConstraint row = byPeriod.computeIfAbsent(period, t -> {
                MPConstraint hands = program.row(-Program.INF, r.regular()[t]);
                Program.add(hands, program.real(0, r.overtime()[t], -r.overtimeCentsPerHour() / 60.0), -1);
                return hands;
            });
            Program.add(row, open[v], problem.prices().receivingMinutes());
        }
    }

    /** The row of a need of grams on some day from {@code from} to {@code to}; supply is added when the row is made. */
    MPConstraint needRow(int item, int from, int to) {
        return needRows.computeIfAbsent(item + " " + from + " " + to, k -> {
            MPConstraint row = program.row(0, Program.INF);
            int life = problem.items().get(item).lifeDays();
            supply.getOrDefault(item, Map.of()).forEach((day, lot) -> {
                if (day <= to && day + life >= from) {
                    MPVariable flow = program.real(0, Program.INF, 0);
                    Program.add(row, flow, 1);
                    Program.add(lot, flow, -1);
                }
            });
            fromStock(item, from, to, row);
            return row;
        });
    }

    private void fromStock(int item, int from, int to, MPConstraint row) {
        for (int k = 0; k < stock.size(); k++) {
            WeekProblem.ItemStock lot = stock.get(k);
            if (lot.item() == item && lot.from() <= to && lot.until() >= from) {
                MPVariable flow = program.real(0, Program.INF, 0);
                Program.add(row, flow, 1);
                Program.add(stockRows.computeIfAbsent(k, n -> program.row(-Program.INF, lot.mg() / 1000.0)), flow, 1);
            }
        }
    }

    java.util.Collection<MPConstraint> needRows() {
        return needRows.values();
    }

    int[] packsFound() {
        int[] found = new int[packs.length];
        for (int o = 0; o < found.length; o++) {
            found[o] = (int) Math.round(packs[o].solutionValue());
        }
        return found;
    }

    boolean toppedUp() {
        for (MPVariable v : topUp) {
            if (v != null && v.solutionValue() > 0.5) {
                return true;
            }
        }
        return false;
    }
}
