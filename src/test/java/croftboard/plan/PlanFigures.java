package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.book.file.BookReading;
import croftboard.measure.IsoWeek;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/** Plans a week of a book and prints how it came about: {@code PlanFigures FOLDER WEEK SECONDS|STEPSs SEED}. */
public final class PlanFigures {
    private PlanFigures() { }

    public static void main(String[] args) {
        long t0 = System.nanoTime();
        Book book = ((BookReading.Read) BookReader.read(Path.of(args[0]))).book();
        System.out.printf("%6.2f s read%n", (System.nanoTime() - t0) / 1e9);
        boolean steps = args[2].endsWith("s");
        long n = Long.parseLong(args[2].replace("s", ""));
        PlanRequest.Progress progress = new PlanRequest.Progress() {
            @Override
            public void doing(String what) {
                System.out.printf("%6.2f s %s%n", (System.nanoTime() - t0) / 1e9, what);
            }

            @Override
            public void better(WeekPlan plan) {
                System.out.printf("%6.2f s worth $%.2f complete %b%n", (System.nanoTime() - t0) / 1e9,
                        plan.value() / 100.0, plan.complete());
            }
        };
        WeekPlan plan = new Planner(book, Optional.empty()).plan(new PlanRequest(IsoWeek.parse(args[1]).orElseThrow(),
                Long.parseLong(args[3]), Duration.ofSeconds(steps ? 20 : n), steps ? OptionalLong.of(n) : OptionalLong.empty(),
                new TreeMap<>(), Optional.empty(), Given.NOTHING, progress, () -> false)).fold(PlanAnswer.Planned::plan, r -> {
                    throw new IllegalArgumentException(r.faults().toString());
                });
        System.out.println(plan.account());
        System.out.println(plan.proof());
        System.out.printf("share %s..%s of target %s; gap to any menu %.2f %%, to this menu's orders %.2f %%%n",
                plan.share().low().times(100).toDecimal(1), plan.share().high().times(100).toDecimal(1),
                plan.share().target(), (plan.proof().bestAtAll().orElse(0L) / (double) plan.value() - 1) * 100,
                (plan.proof().bestForMenu().orElse(0L) / (double) plan.value() - 1) * 100);
        plan.missing().forEach(System.out::println);
        plan.menu().forEach(s -> System.out.println(s.slot() + " " + s.recipe().orElse("-") + " " + s.portions() + " " + s.marks()));
        plan.orders().forEach(o -> System.out.println(o.vendor() + " " + o.delivery() + " $" + o.total() / 100.0 + " lines "
                + o.lines().size()));
        plan.promises().stream().filter(p -> !p.kept()).forEach(System.out::println);
    }
}
