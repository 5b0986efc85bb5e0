package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.PlanRequest;
import croftboard.plan.Planner;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/** Repairs of the demo week, for looking at: {@code RepairFigures NOW SENTENCE...}. */
final class RepairFigures {
    public static void main(String[] args) {
        Book book = BookReader.read(Path.of("").toAbsolutePath()).orElseThrow();
        PlanRequest request = new PlanRequest(IsoWeek.parse("2027-W33").orElseThrow(), 1, Duration.ofSeconds(10),
                OptionalLong.empty(), new TreeMap<>(), Optional.empty(), Given.NOTHING, new PlanRequest.Progress() {
                    @Override
                    public void doing(String what) { }

                    @Override
                    public void better(WeekPlan better) { }
                }, () -> false);
        WeekPlan plan = new Planner(book, Optional.empty()).plan(request).fold(p -> p.plan(), r -> null);
        say("plan", plan, plan, 0);
        var read = new ChangeGrammar(book).read(List.of(args).subList(1, args.length));
        read.faults().forEach(System.out::println);
        long t = System.nanoTime();
        ChangedWeek week = ChangedWeek.of(book, plan, Given.NOTHING, read.changes(), LocalDateTime.parse(args[0]));
        week.faults().forEach(System.out::println);
        System.out.println("problem ms " + (System.nanoTime() - t) / 1_000_000);
        Repair repair = new Repair(book, plan, week, new WeekPlan.Revision(1, LocalDateTime.parse(args[0]),
                List.of(args).subList(1, args.length)));
        t = System.nanoTime();
        WeekPlan quick = repair.atOnce(1);
        say("at once", quick, plan, t);
        for (int i = 0; i < 3; i++) {
            t = System.nanoTime();
            ChangedWeek.of(book, plan, Given.NOTHING, read.changes(), LocalDateTime.parse(args[0]));
            System.out.println("problem again ms " + (System.nanoTime() - t) / 1_000_000);
            t = System.nanoTime();
            repair.atOnce(1);
            System.out.println("at once again ms " + (System.nanoTime() - t) / 1_000_000);
        }
        t = System.nanoTime();
        WeekPlan settled = repair.settled(new WeekRun.Effort(1, Duration.ofSeconds(12), OptionalLong.empty(), () -> false),
                p -> { });
        say("settled", settled, plan, t);
        System.out.println(settled.inputs().revision() + " " + settled.swaps());
        settled.menu().stream().filter(r -> !r.recipe().equals(java.util.Optional.ofNullable(plan.choices().get(r.slot()))))
                .forEach(r -> System.out.println("   " + r.slot() + " " + plan.choices().get(r.slot()) + " -> " + r.recipe()));
        int[] nothing = week.start().clone();
        java.util.Arrays.fill(nothing, -1);
        t = System.nanoTime();
        say("anew", repair.anew(nothing, new WeekRun.Effort(1, Duration.ofSeconds(8), OptionalLong.empty(), () -> false)), plan, t);
    }

    private static void say(String what, WeekPlan now, WeekPlan before, long since) {
        Map<String, String> a = before.choices();
        long dishes = now.choices().entrySet().stream().filter(e -> !e.getValue().equals(a.get(e.getKey()))).count();
        java.util.Set<String> la = lines(before);
        java.util.Set<String> lb = lines(now);
        long changed = lb.stream().filter(l -> !la.contains(l)).count() + la.stream().filter(l -> !lb.contains(l)).count();
        System.out.println(what + " " + new Cents(now.value()) + " complete " + now.complete() + " dishes changed " + dishes
                + " order lines " + changed + " of " + la.size() + " ms " + (System.nanoTime() - since) / 1_000_000);
        now.missing().forEach(m -> System.out.println("   " + m.what()));
    }

    private static java.util.Set<String> lines(WeekPlan p) {
        java.util.Set<String> all = new java.util.TreeSet<>();
        p.orders().forEach(o -> o.lines().forEach(l -> all.add(o.vendor() + " " + o.delivery() + " " + l.item() + " " + l.pack()
                + " " + l.packs())));
        return all;
    }
}
