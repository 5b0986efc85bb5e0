package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.cli.SampleAnswers;
import croftboard.cli.SamplePlan;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import croftboard.plan.change.ChangeGrammar;
import croftboard.plan.change.Consequences;
import croftboard.plan.change.Surplus;
import croftboard.plan.file.OrderLife;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** A repaired week of the small kitchen, made by hand: every part of the screen has something to say. */
final class SampleChanges {
    private static final LocalDate MON = SamplePlan.WEEK.monday();
    private static final LocalDateTime TUESDAY = MON.plusDays(1).atTime(7, 0);

    private SampleChanges() { }

    private static Shown shown(Book book, WeekPlan plan) {
        return new Shown(book, plan, Optional.empty(), false, TUESDAY, "every must holds and every figure is confirmed.");
    }

    static ChangesScreen.Repaired repaired(Book book) {
        WeekPlan before = SamplePlan.complete(book);
        WeekPlan after = without(SampleAnswers.other(book), "sat/hot-main-1");
        List<String> said = List.of("hollow-brook late mon until wed", "batch house-hummus mon lost", "closed sat");
        List<Change> changes = new ChangeGrammar(book).read(said).changes();
        Consequences read = Consequences.of(book, before, after, changes, TUESDAY);
        Consequences told = new Consequences(List.of(new Consequences.Pull("mon/standing-dip", "house-hummus",
                "batch house-hummus mon lost")), orders(), read.dishes(), read.prep(), cards(read));
        return new ChangesScreen.Repaired(shown(book, after), before, 2, said, told, Optional.of(SampleAnswers.other(book)),
                Optional.of(4_210L));
    }

    static ChangesScreen.Repaired nothing(Book book) {
        WeekPlan plan = SamplePlan.complete(book);
        return new ChangesScreen.Repaired(shown(book, plan), plan, 2, List.of("hollow-brook/carrot price $31.00"),
                Consequences.of(book, plan, plan, List.of(), TUESDAY), Optional.of(plan), Optional.empty());
    }

    private static WeekPlan without(WeekPlan p, String slot) {
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), p.menu().stream().filter(r -> !r.slot().equals(slot)).toList(),
                p.batches(), p.orders(), p.needs(), p.flows(), p.surplus(), p.account(), p.promises(), p.share(), p.proof(),
                p.missing(), new TreeMap<>(p.swaps()));
    }

    private static List<Consequences.OrderChange> orders() {
        return List.of(
                order(Consequences.Kind.ADD, "mill-run-depot", 4, new Consequences.LineChange("carrot", "50 lb sack", 0, 1), 0, 3_100),
                order(Consequences.Kind.AGAIN, "stone-creamery", 4, new Consequences.LineChange("cheddar", "5 lb block", 3, 2), 8_400,
                        5_600),
                order(Consequences.Kind.CANCEL, "stone-creamery", 5, new Consequences.LineChange("cheddar", "5 lb block", 1, 0), 2_800,
                        0),
                order(Consequences.Kind.COMES, "hollow-brook", 2, new Consequences.LineChange("carrot", "25 lb sack", 0, 2), 0,
                        6_200));
    }

    private static Consequences.OrderChange order(Consequences.Kind kind, String vendor, int day, Consequences.LineChange line,
            long before, long now) {
        return new Consequences.OrderChange(kind, vendor, MON.plusDays(day), MON.plusDays(day - 1).atTime(14, 0), List.of(line),
                before, now);
    }

    private static List<Consequences.CardChange> cards(Consequences read) {
        List<Consequences.CardChange> all = new ArrayList<>();
        all.add(new Consequences.CardChange("tue/cold-salad-1", "carrot-slaw", true, Optional.of("Contains sesame."),
                "Contains sesame, soy.", Optional.of(MON.plusDays(3))));
        all.addAll(read.cards());
        return all;
    }

    static SurplusScreen surplus(Book book) {
        WeekPlan before = SamplePlan.complete(book);
        WeekPlan after = SampleAnswers.other(book);
        List<Surplus.Step> steps = List.of(new Surplus.Step(0, 0, 0, true), new Surplus.Step(1, 1_450, 1_450, true),
                new Surplus.Step(2, 2_100, 650, true), new Surplus.Step(3, 1_880, -220, false), new Surplus.Step(4, 1_660, -220, true));
        return new SurplusScreen(shown(book, before), new Change.More("hollow-brook", "carrot", 4, new Cents(1_800),
                DayOfWeek.WEDNESDAY), new Surplus.Answer(steps, 2, after), Consequences.of(book, before, after, List.of(), TUESDAY));
    }

    static Shown doubtful(Book book) {
        WeekPlan plan = SamplePlan.complete(book);
        List<WeekPlan.Order> orders = plan.orders();
        return new Shown(book, plan, Optional.of(2), true, TUESDAY, "", new OrderLife.Doubts(orders.subList(0, 1),
                orders.subList(1, 2), orders.subList(orders.size() - 1, orders.size())));
    }
}
