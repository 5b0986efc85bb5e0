package croftboard.sourcing;

import croftboard.menu.MenuSearch;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Prints bounds and orders of random weeks, in dollars, for comparison over time:
 * {@code SourcingFigures FOLDER ROUNDS EXACT_MILLIS,... SEED...}. The menu of a seed is the file {@code menu-SEED.txt} of the
 * folder (numbers of candidates, one a slot), or greedy where there is none.
 */
public final class SourcingFigures {
    private SourcingFigures() { }

    public static void main(String[] args) throws IOException {
        Natives.available();
        int rounds = Integer.parseInt(args[1]);
        for (int a = 3; a < args.length; a++) {
            WeekProblem week = RandomWeek.week(Long.parseLong(args[a]));
            long t0 = System.nanoTime();
            Relaxation relaxed = JointRelaxation.of(week).orElseThrow();
            System.out.printf("seed %s: bound %.2f, local worth %.3f (%d ms)%n", args[a], relaxed.boundCents() / 100.0,
                    relaxed.localWorth(), since(t0));
            int[] menu = menu(week, Path.of(args[0], "menu-" + args[a] + ".txt"), relaxed);
            Sourcing sourcing = new Sourcing(week, relaxed.localWorth());
            long t1 = System.nanoTime();
            Sourcing.Orders orders = sourcing.search(menu, 1, rounds, () -> false);
            System.out.printf("  %d rounds: %.2f %s (%d ms)%n", rounds, orders.valueCents() / 100.0,
                    orders.complete() ? "complete" : "INCOMPLETE", since(t1));
            for (String millis : args[2].split(",")) {
                long t2 = System.nanoTime();
                Sourcing.Orders exact = sourcing.exact(menu, orders, Long.parseLong(millis), 0);
                System.out.printf("  exact: %.2f of at most %.2f (%d ms)%n", exact.valueCents() / 100.0,
                        exact.bestForMenu().orElse(0L) / 100.0, since(t2));
                long t3 = System.nanoTime();
                long root = JointRoot.bound(week, menu, exact.packs(), Long.parseLong(millis), 0).orElse(0);
                System.out.printf("  any menu: at most %.2f (%d ms)%n", root / 100.0, since(t3));
            }
        }
    }

    private static int[] menu(WeekProblem week, Path file, Relaxation relaxed) throws IOException {
        return Files.exists(file)
                ? Arrays.stream(Files.readString(file).trim().split("\\s+")).mapToInt(Integer::parseInt).toArray()
                : new MenuSearch(week, relaxed.localWorth()).greedy().choice();
    }

    private static long since(long nanos) {
        return (System.nanoTime() - nanos) / 1_000_000;
    }
}
