package croftboard.sourcing;

import croftboard.menu.MenuSearch;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;

/** Prints bound, menu, orders of random weeks: {@code SourcingFigures MENU_MILLIS MEMORY ROUNDS EXACT_MILLIS SEED...}. */
public final class SourcingFigures {
    private SourcingFigures() { }

    public static void main(String[] args) {
        Natives.available();
        for (int a = 4; a < args.length; a++) {
            WeekProblem week = RandomWeek.week(Long.parseLong(args[a]));
            long t0 = System.nanoTime();
            Relaxation r = JointRelaxation.of(week).orElseThrow();
            long t1 = System.nanoTime();
            MenuSearch menu = new MenuSearch(week, r.localWorth());
            MenuSearch.Found found = menu.search(menu.greedy().choice(), 1,
                    new MenuSearch.Effort(0, Long.parseLong(args[0]), Integer.parseInt(args[1])), () -> false);
            long t2 = System.nanoTime();
            Sourcing sourcing = new Sourcing(week, r.localWorth());
            Sourcing.Orders orders = sourcing.search(found.choice(), 1, Integer.parseInt(args[2]), () -> false);
            long t3 = System.nanoTime();
            Sourcing.Orders exact = sourcing.exact(found.choice(), orders, Long.parseLong(args[3]), 0);
            long t4 = System.nanoTime();
            System.out.printf("seed %s bound %.0f (%d ms) menu %.0f in %d ms %d tries; orders %.0f %b in %d ms; exact %.0f"
                    + " of at most %.0f in %d ms; gap %.2f%%%n", args[a], r.boundCents() / 100.0, (t1 - t0) / 1000000,
                    found.worthCents() / 100.0, (t2 - t1) / 1000000, found.tries(), orders.valueCents() / 100.0,
                    orders.complete(), (t3 - t2) / 1000000, exact.valueCents() / 100.0,
                    exact.bestForMenu().orElse(-1L) / 100.0, (t4 - t3) / 1000000,
                    (r.boundCents() / (double) exact.valueCents() - 1) * 100);
        }
    }
}
