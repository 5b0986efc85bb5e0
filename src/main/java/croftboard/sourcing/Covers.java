package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;

/**
 * Known needs as covers, without flows: on every run of days, the deliveries usable on any of them must bring what the
 * days need. As a delivery is usable on consecutive days, and all deliveries of an item equally long, these runs together
 * are exactly the condition that the needs can be met (Hall's theorem for intervals). Integer solvers tighten such rows
 * far better than rows of flows. Grams.
 */
final class Covers implements Goods {
    private static final double MG = 1000;
    private final WeekProblem problem;
    private final Program program;
    private final long[][] need;
    private final List<List<Cover>> covers = new ArrayList<>();
    private final int[][] keptColumn;
    private final Program.Row[][] keptRow;
    private final List<Kept> kept = new ArrayList<>();

    /** @param row packs delivered from {@code first} to {@code last} bring at least so much; tight: pack by pack */
    private record Cover(int first, int last, long mg, Program.Row row, boolean tight) { }

    /** @param need milligrams by item and day that must be bought */
    Covers(WeekProblem problem, Program program, long[][] need) {
        this.problem = problem;
        this.program = program;
        this.need = need;
        keptColumn = new int[need.length][problem.days()];
        keptRow = new Program.Row[need.length][problem.days()];
        for (int i = 0; i < need.length; i++) {
            keep(i);
            covers.add(new ArrayList<>());
            runs(i);
        }
    }

    /** A column for what is left over of each delivery day that keeps. */
    private void keep(int i) {
        WeekProblem.Item item = problem.items().get(i);
        double worth = MG * item.keptCentsPerMg().toDouble();
        double waste = MG * item.wasteCentsPerMg().toDouble();
        program.constant += waste * java.util.Arrays.stream(need[i]).sum() / MG;
        for (int day = 0; day < problem.days(); day++) {
            keptColumn[i][day] = -1;
            long most = mostOn(i, day);
            if (item.keeps(day) && most > 0 && worth + waste > 0) {
                keptColumn[i][day] = program.real(0, most / MG, worth + waste);
                keptRow[i][day] = program.atLeast(0).add(keptColumn[i][day], -1);
                kept.add(new Kept(keptColumn[i][day], worth));
            }
        }
    }

    private long mostOn(int item, int day) {
        return problem.offers().stream().filter(o -> o.item() == item && dayOf(o) == day)
                .mapToLong(o -> o.maxPacks() * o.packMg()).sum();
    }

    private int dayOf(WeekProblem.Offer offer) {
        return problem.deliveries().get(offer.delivery()).day();
    }

    private void runs(int i) {
        int life = problem.items().get(i).lifeDays();
        for (int from = 0; from < problem.days(); from++) {
            long mg = 0;
            for (int to = from; to < problem.days(); to++) {
                mg += need[i][to];
                // Where a longer run of days is served by the same deliveries, it says more.
                boolean longest = from == 0 || from - life > 0 || need[i][from - 1] == 0;
                if (need[i][from] > 0 && need[i][to] > 0 && longest) {
                    cover(i, Math.max(0, from - life), to, mg);
                }
            }
        }
    }

    private void cover(int i, int first, int last, long mg) {
        boolean keeps = false;
        for (int day = first; day <= last; day++) {
            keeps |= keptColumn[i][day] >= 0;
        }
        covers.get(i).add(new Cover(first, last, mg, program.atLeast(mg / MG), true));
        if (keeps) {
            Program.Row row = program.atLeast(mg / MG);
            for (int day = first; day <= last; day++) {
                if (keptColumn[i][day] >= 0) {
                    row.add(keptColumn[i][day], -1);
                }
            }
            covers.get(i).add(new Cover(first, last, mg, row, false));
        }
    }

    @Override
    public void bring(int column, WeekProblem.Offer offer) {
        int day = dayOf(offer);
        for (Cover c : covers.get(offer.item())) {
            if (c.first <= day && day <= c.last) {
                // One pack that brings more than all of the need covers it as well as one that brings just that.
                c.row.add(column, (c.tight ? Math.min(c.mg, offer.packMg()) : offer.packMg()) / MG);
            }
        }
        if (keptRow[offer.item()][day] != null) {
            keptRow[offer.item()][day].add(column, offer.packMg() / MG);
        }
        program.worth(column, -problem.items().get(offer.item()).wasteCentsPerMg().toDouble() * offer.packMg());
    }

    @Override
    public List<Kept> kept() {
        return kept;
    }
}
