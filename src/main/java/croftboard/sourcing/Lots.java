package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is delivered and what it is used for, in grams: a row for each lot (item and delivery day) that shares its packs
 * among needs and surplus, and a row for each need (item and window of days). A lot may serve every need within whose
 * window it is usable on some day.
 */
final class Lots implements Goods {
    private static final double MG = 1000;
    private final WeekProblem problem;
    private final Program program;
    private final List<WeekProblem.ItemStock> stock;
    private final double[][] most;
    private final Map<Integer, Map<Integer, Program.Row>> lots = new TreeMap<>();
    private final Map<Window, Program.Row> needs = new TreeMap<>();
    private final Map<Integer, Program.Row> stockRows = new TreeMap<>();
    private final List<Kept> kept = new ArrayList<>();

    /** A need that any day of a window may meet. */
    record Window(int item, int from, int to) implements Comparable<Window> {
        @Override
        public int compareTo(Window o) {
            int byItem = Integer.compare(item, o.item);
            int byFrom = byItem != 0 ? byItem : Integer.compare(from, o.from);
            return byFrom != 0 ? byFrom : Integer.compare(to, o.to);
        }
    }

    /**
     * @param limit packs of each offer, at most
     * @param stock supply that costs nothing
     */
    Lots(WeekProblem problem, Program program, int[] limit, List<WeekProblem.ItemStock> stock) {
        this.problem = problem;
        this.program = program;
        this.stock = stock;
        most = new double[problem.items().size()][problem.days()];
        for (int o = 0; o < limit.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            most[offer.item()][dayOf(offer)] += limit[o] * (offer.packMg() / MG);
        }
        for (int i = 0; i < most.length; i++) {
            for (int d = 0; d < problem.days(); d++) {
                if (most[i][d] > 0) {
                    lot(i, d);
                }
            }
        }
    }

    private int dayOf(WeekProblem.Offer offer) {
        return problem.deliveries().get(offer.delivery()).day();
    }

    private void lot(int i, int day) {
        WeekProblem.Item item = problem.items().get(i);
        double worth = MG * (item.keeps(day) ? item.keptCentsPerMg().toDouble() : -item.wasteCentsPerMg().toDouble());
        int surplus = program.real(0, most[i][day], worth);
        lots.computeIfAbsent(i, k -> new TreeMap<>()).put(day, program.row(0, 0).add(surplus, -1));
        if (item.keeps(day)) {
            kept.add(new Kept(surplus, worth));
        }
    }

    @Override
    public List<Kept> kept() {
        return kept;
    }

    @Override
    public void bring(int column, WeekProblem.Offer offer) {
        Program.Row row = lots.getOrDefault(offer.item(), Map.of()).get(dayOf(offer));
        if (row != null) {
            row.add(column, offer.packMg() / MG);
        }
    }

    /** A need whose grams are columns: at least what they ask, so that what is rounded away costs nothing. */
    void need(Window window, int column, double grams) {
        needs.computeIfAbsent(window, w -> serve(w, program.atLeast(0))).add(column, -grams);
    }

    private Program.Row serve(Window w, Program.Row row) {
        int life = problem.items().get(w.item).lifeDays();
        lots.getOrDefault(w.item, Map.of()).forEach((day, lot) -> {
            if (day <= w.to && day + life >= w.from) {
                int flow = program.real(0, most[w.item][day], 0);
                row.add(flow, 1);
                lot.add(flow, -1);
            }
        });
        for (int k = 0; k < stock.size(); k++) {
            WeekProblem.ItemStock s = stock.get(k);
            if (s.item() == w.item && s.from() <= w.to && s.until() >= w.from) {
                int flow = program.real(0, s.mg() / MG, 0);
                row.add(flow, 1);
                stockRows.computeIfAbsent(k, n -> program.atMost(s.mg() / MG)).add(flow, 1);
            }
        }
        return row;
    }

    Map<Window, Program.Row> needs() {
        return needs;
    }
}
