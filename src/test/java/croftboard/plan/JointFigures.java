package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.book.file.BookReading;
import croftboard.measure.IsoWeek;
import croftboard.menu.MenuSearch;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.JointRelaxation;
import croftboard.sourcing.Relaxation;
import croftboard.sourcing.Sourcing;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Prints what the search of menu and orders together gains, by tries and by seconds of its own thread:
 * {@code JointFigures MENU_TRIES JOINT_TRIES[,..] SEED WEEK...}; a week is the number of a random week, or a week of the
 * book in the folder at hand.
 */
public final class JointFigures {
    private static final int ROUNDS = 6_000;

    private JointFigures() { }

    public static void main(String[] args) {
        long seed = Long.parseLong(args[2]);
        for (int a = 3; a < args.length; a++) {
            WeekProblem week = week(args[a]);
            Relaxation r = JointRelaxation.of(week).orElseThrow();
            double start = seconds();
            long tries = Long.parseLong(args[0]);
            MenuSearch search = new MenuSearch(week, r.localWorth());
            MenuSearch.Found menu = search.search(search.greedy().choice(), seed,
                    new MenuSearch.Effort(tries, 0, (int) Math.max(4, Math.min(500, tries / 4_000))), () -> false);
            Sourcing sourcing = new Sourcing(week, r.localWorth());
            tell(args[a] + " menu", r, sourcing.search(menu.choice(), seed, ROUNDS, () -> false), start, tries);
            for (String joint : args[1].split(",")) {
                Sourcing.Orders orders = sourcing.search(menu.choice(), seed, ROUNDS, () -> false);
                start = seconds();
                JointSearch.Found found = new JointSearch(week, r.localWorth(), menu.choice(), orders.packs(), seed)
                        .run(Long.parseLong(joint), 0, () -> false);
                tell(args[a] + " together", r, sourcing.better(found.choice(), found.packs(), seed, ROUNDS), start, found.tries());
            }
        }
    }

    private static WeekProblem week(String name) {
        if (!name.contains("W")) {
            return RandomWeek.week(Long.parseLong(name));
        }
        Book book = ((BookReading.Read) BookReader.read(Path.of("."))).book();
        return ProblemBuilder.build(book, IsoWeek.parse(name).orElseThrow(), Map.of(), Given.NOTHING, Optional.empty())
                .problem();
    }

    private static double seconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    private static void tell(String what, Relaxation r, Sourcing.Orders orders, double start, long tries) {
        System.out.printf("%s: %d tries, %.1f s: $%.2f complete %b, %.2f %% below the relaxation%n", what, tries,
                seconds() - start, orders.valueCents() / 100.0, orders.complete(),
                100.0 * r.boundCents() / orders.valueCents() - 100);
    }
}
