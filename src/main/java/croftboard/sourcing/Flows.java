package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * Needs met by flows from deliveries and stock: as tight as {@link Covers} while packs are divisible, and on several weeks
 * far smaller, as its rows grow with the days and not with the pairs of days. Needs may be more than met for nothing. Grams.
 */
final class Flows implements Goods, DishNeeds {
    private static final double MG = 1000;
    private final WeekProblem problem;
    private final Program program;
    private final Program.Row[][] supply;
    private final Map<Covers.Window, Program.Row> needs = new TreeMap<>();
    private final List<Kept> kept = new ArrayList<>();

    /**
     * @param windows of all needs that will be entered
     * @param stock supply that costs nothing
     */
    Flows(WeekProblem problem, Program program, SortedSet<Covers.Window> windows, List<WeekProblem.ItemStock> stock) {
        this.problem = problem;
        this.program = program;
        double[][] most = most();
        supply = new Program.Row[most.length][problem.days()];
        for (int i = 0; i < most.length; i++) {
            WeekProblem.Item item = problem.items().get(i);
            double worth = MG * item.keptCentsPerMg().toDouble();
            for (int day = 0; day < problem.days(); day++) {
                if (most[i][day] > 0) {
                    supply[i][day] = program.atMost(0);
                    if (item.keeps(day) && worth > 0) {
                        int left = program.real(0, most[i][day], worth);
                        supply[i][day].add(left, 1);
                        kept.add(new Kept(left, worth));
                    }
                }
            }
        }
        windows.forEach(w -> needs.put(w, need(w, most[w.item()])));
        stock.forEach(this::lot);
    }

    private double[][] most() {
        double[][] most = new double[problem.items().size()][problem.days()];
        problem.offers().forEach(o -> most[o.item()][dayOf(o)] += o.maxPacks() * (double) o.packMg() / MG);
        return most;
    }

    private int dayOf(WeekProblem.Offer offer) {
        return problem.deliveries().get(offer.delivery()).day();
    }

    private Program.Row need(Covers.Window w, double[] most) {
        Program.Row row = program.atLeast(0);
        int life = problem.items().get(w.item()).lifeDays();
        for (int t = Math.max(0, w.from() - life); t <= Math.min(w.to(), most.length - 1); t++) {
            if (supply[w.item()][t] != null) {
                int flow = program.real(0, most[t], 0);
                row.add(flow, 1);
                supply[w.item()][t].add(flow, 1);
            }
        }
        return row;
    }

    private void lot(WeekProblem.ItemStock lot) {
        Program.Row from = program.atMost(lot.mg() / MG);
        needs.forEach((w, row) -> {
            if (w.item() == lot.item() && lot.from() <= w.to() && lot.until() >= w.from()) {
                int flow = program.real(0, lot.mg() / MG, 0);
                row.add(flow, 1);
                from.add(flow, 1);
            }
        });
    }

    @Override
    public void need(Covers.Window window, int column, double grams) {
        needs.get(window).add(column, -grams);
    }

    @Override
    public void bring(int column, WeekProblem.Offer offer) {
        supply[offer.item()][dayOf(offer)].add(column, -offer.packMg() / MG);
    }

    @Override
    public List<Kept> kept() {
        return kept;
    }
}
