package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Needs as covers, without flows: for every run of delivery days, what they bring must cover all needs that nothing but
 * they can serve. As a need can be served by consecutive delivery days, these runs together are exactly the condition
 * that all needs can be met (Hall's theorem for intervals; where dated stock helps too, a weaker one). Integer solvers
 * tighten such rows far better than rows of flows. Grams.
 */
final class Covers implements Goods, DishNeeds {
    private static final double MG = 1000;
    private final WeekProblem problem;
    private final Program program;
    private final List<WeekProblem.ItemStock> stock;
    private final boolean known;
    private final TreeMap<Integer, List<Cover>> covers = new TreeMap<>();
    private final int[][] keptColumn;
    private final Program.Row[][] keptRow;
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

    /** Deliveries from {@code first} to {@code last}. */
    private static final class Cover {
        final int first;
        final int last;
        final Program.Row net;
        /** For known needs: pack by pack, what is kept not taken off. */
        final Program.Row packs;
        long mg;

        Cover(int first, int last, Program.Row net, Program.Row packs) {
            this.first = first;
            this.last = last;
            this.net = net;
            this.packs = packs;
        }
    }

    /**
     * @param windows of all needs that will be entered
     * @param stock supply that costs nothing
     * @param known needs are milligrams and met exactly, so that waste can be charged; false: they are columns, and more
     *     than they ask may be brought for nothing
     */
    Covers(WeekProblem problem, Program program, SortedSet<Window> windows, List<WeekProblem.ItemStock> stock,
            boolean known) {
        this.problem = problem;
        this.program = program;
        this.stock = stock;
        this.known = known;
        keptColumn = new int[problem.items().size()][problem.days()];
        keptRow = new Program.Row[keptColumn.length][problem.days()];
        for (int i = 0; i < keptColumn.length; i++) {
            keep(i);
            List<Cover> own = new ArrayList<>();
            covers.put(i, own);
            SortedSet<Window> mine = windows.subSet(new Window(i, -1, -1), new Window(i + 1, -1, -1));
            runs(mine).forEach(run -> own.add(cover(run, mine)));
        }
    }

    /** A column for what is left over of each delivery day that keeps. */
    private void keep(int i) {
        WeekProblem.Item item = problem.items().get(i);
        double worth = MG * item.keptCentsPerMg().toDouble();
        double saved = known ? MG * item.wasteCentsPerMg().toDouble() : 0;
        for (int day = 0; day < problem.days(); day++) {
            keptColumn[i][day] = -1;
            long most = mostOn(i, day);
            if (item.keeps(day) && most > 0 && worth + saved > 0) {
                keptColumn[i][day] = program.real(0, most / MG, worth + saved);
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

    private int first(Window w) {
        return Math.max(0, w.from - problem.items().get(w.item).lifeDays());
    }

    /** Runs of delivery days that begin and end with a need that only they can serve; others say less. */
    private SortedSet<Window> runs(SortedSet<Window> needs) {
        SortedSet<Window> runs = new TreeSet<>();
        for (Window a : needs) {
            for (Window b : needs) {
                if (first(a) <= first(b) && a.to <= b.to) {
                    runs.add(new Window(a.item, first(a), b.to));
                }
            }
        }
        return runs;
    }

    private Cover cover(Window run, SortedSet<Window> needs) {
        double free = 0;
        for (WeekProblem.ItemStock lot : stock) {
            boolean helps = lot.item() == run.item && needs.stream().anyMatch(n -> first(n) >= run.from && n.to <= run.to
                    && lot.from() <= n.to && lot.until() >= n.from);
            free += helps ? lot.mg() / MG : 0;
        }
        Program.Row net = program.atLeast(-free);
        for (int day = run.from; day <= run.to; day++) {
            if (keptColumn[run.item][day] >= 0) {
                net.add(keptColumn[run.item][day], -1);
            }
        }
        return new Cover(run.from, run.to, net, known ? program.atLeast(0) : net);
    }

    /** One unit of the column needs so many grams. */
    @Override
    public void need(Window window, int column, double grams) {
        for (Cover c : covers.get(window.item)) {
            if (c.first <= first(window) && window.to <= c.last) {
                c.net.add(column, -grams);
            }
        }
    }

    /** Known needs; before anything is brought. */
    void need(Window window, long mg) {
        for (Cover c : covers.get(window.item)) {
            if (c.first <= first(window) && window.to <= c.last) {
                c.mg += mg;
                c.net.least += mg / MG;
                c.packs.least += mg / MG;
            }
        }
        program.constant += problem.items().get(window.item).wasteCentsPerMg().toDouble() * mg;
    }

    @Override
    public void bring(int column, WeekProblem.Offer offer) {
        int day = dayOf(offer);
        double grams = offer.packMg() / MG;
        for (Cover c : covers.get(offer.item())) {
            if (c.first <= day && day <= c.last) {
                c.net.add(column, grams);
                if (known) {
                    // One pack that brings more than the whole need covers it as well as one that brings just that.
                    c.packs.add(column, Math.min(c.mg / MG, grams));
                }
            }
        }
        if (keptRow[offer.item()][day] != null) {
            keptRow[offer.item()][day].add(column, grams);
        }
        if (known) {
            program.worth(column, -problem.items().get(offer.item()).wasteCentsPerMg().toDouble() * offer.packMg());
        }
    }

    @Override
    public List<Kept> kept() {
        return kept;
    }

    /** Cents that a gram more of an item on a day is worth. @param prices of the rows */
    double worth(int item, int day, double[] prices) {
        Window need = new Window(item, day, day);
        return covers.get(item).stream().filter(c -> c.first <= first(need) && day <= c.last)
                .mapToDouble(c -> Math.max(0, -prices[c.net.number])).sum();
    }
}
