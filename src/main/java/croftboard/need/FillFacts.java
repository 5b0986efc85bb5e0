package croftboard.need;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What fills of whole packs look up, item by item, its offers in the order of their deliveries; worked out once. */
final class FillFacts {
    final int days;
    /** By item and place: number of the offer, contents, day, packs beyond the promised ones, promised ones. */
    final int[][] offer;
    final long[][] packMg;
    final int[][] day;
    /** Last day that it can serve. */
    final int[][] lastDay;
    final int[][] more;
    final int[][] least;
    /** By item and place: cents that a milligram of surplus costs; less than nothing when it keeps. */
    final double[][] surplusPerMg;
    final int[] life;
    /** By item and day: places of the offers that can serve the day are from the first to before the second. */
    final int[][] from;
    final int[][] until;
    private final long[][] stock;
    private final int[][] stockFrom;
    private final int[][] stockUntil;

    FillFacts(WeekProblem problem) {
        int items = problem.items().size();
        days = problem.days();
        offer = new int[items][];
        packMg = new long[items][];
        day = new int[items][];
        lastDay = new int[items][];
        more = new int[items][];
        least = new int[items][];
        surplusPerMg = new double[items][];
        life = problem.items().stream().mapToInt(WeekProblem.Item::lifeDays).toArray();
        from = new int[items][days];
        until = new int[items][days];
        stock = new long[items][];
        stockFrom = new int[items][];
        stockUntil = new int[items][];
        List<List<Integer>> offers = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            offers.add(new ArrayList<>());
        }
        for (int o = 0; o < problem.offers().size(); o++) {
            offers.get(problem.offers().get(o).item()).add(o);
        }
        boolean[] reachable = Minimums.reachable(problem);
        for (int i = 0; i < items; i++) {
            offers.get(i).sort(Comparator.comparingInt(o -> dayOf(problem, o)));
            load(problem, i, offers.get(i), reachable);
            reach(i);
            stock(problem, i);
        }
    }

    private static int dayOf(WeekProblem problem, int o) {
        return problem.deliveries().get(problem.offers().get(o).delivery()).day();
    }

    private void load(WeekProblem problem, int i, List<Integer> offers, boolean[] reachable) {
        WeekProblem.Item item = problem.items().get(i);
        int n = offers.size();
        offer[i] = offers.stream().mapToInt(o -> o).toArray();
        packMg[i] = new long[n];
        day[i] = new int[n];
        lastDay[i] = new int[n];
        more[i] = new int[n];
        least[i] = new int[n];
        surplusPerMg[i] = new double[n];
        for (int q = 0; q < n; q++) {
            WeekProblem.Offer o = problem.offers().get(offer[i][q]);
            packMg[i][q] = o.packMg();
            day[i][q] = dayOf(problem, offer[i][q]);
            lastDay[i][q] = Math.min(days - 1, day[i][q] + life[i]);
            more[i][q] = reachable[o.delivery()] ? o.maxPacks() - o.minPacks() : 0;
            least[i][q] = o.minPacks();
            surplusPerMg[i][q] = item.keeps(day[i][q]) ? -item.keptCentsPerMg().toDouble()
                    : item.wasteCentsPerMg().toDouble();
        }
    }

    private void reach(int i) {
        int n = day[i].length;
        for (int d = 0; d < days; d++) {
            int first = d == 0 ? 0 : from[i][d - 1];
            int end = d == 0 ? 0 : until[i][d - 1];
            while (first < n && day[i][first] < d - life[i]) {
                first++;
            }
            while (end < n && day[i][end] <= d) {
                end++;
            }
            from[i][d] = first;
            until[i][d] = Math.max(first, end);
        }
    }

    private void stock(WeekProblem problem, int i) {
        List<WeekProblem.ItemStock> lots = problem.stock().stream().filter(s -> s.item() == i)
                .sorted(Comparator.comparingInt(WeekProblem.ItemStock::until)).toList();
        stock[i] = lots.stream().mapToLong(WeekProblem.ItemStock::mg).toArray();
        stockFrom[i] = lots.stream().mapToInt(s -> Math.max(0, s.from())).toArray();
        stockUntil[i] = lots.stream().mapToInt(s -> Math.min(days - 1, s.until())).toArray();
    }

    /** Takes dated stock off the needs. */
    void takeStock(int item, long[] left) {
        for (int k = 0; k < stock[item].length; k++) {
            long mg = stock[item][k];
            for (int d = stockFrom[item][k]; d <= stockUntil[item][k] && mg > 0; d++) {
                long take = Math.min(mg, left[d]);
                mg -= take;
                left[d] -= take;
            }
        }
    }

    /** Takes one pack off the needs of its days from the first on. @return milligrams of it left over */
    long serve(int item, int place, int first, long[] left) {
        long pack = packMg[item][place];
        int end = lastDay[item][place];
        for (int d = first; d <= end && pack > 0; d++) {
            long take = Math.min(pack, left[d]);
            pack -= take;
            left[d] -= take;
        }
        return pack;
    }

    int widest() {
        int widest = 1;
        for (int[] own : offer) {
            widest = Math.max(widest, own.length);
        }
        return widest;
    }
}
