package croftboard.cli;

import croftboard.book.Book;
import croftboard.measure.WeekSpan;
import croftboard.plan.Given;
import croftboard.plan.Rotation;
import croftboard.plan.RotationVariety;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A rotation of the small kitchen made by hand: the sample week, and again a week later. Figures are invented. */
public final class SampleRotation {
    public static final WeekSpan SPAN = WeekSpan.of(SamplePlan.WEEK, 2);

    private SampleRotation() { }

    public static Rotation of(Book book) {
        WeekPlan first = withNeeds(SamplePlan.complete(book));
        WeekPlan second = later(first);
        return new Rotation(SPAN, book.fingerprint(), new Rotation.Inputs(7, 200, Optional.empty(), Optional.empty()),
                List.of(new Rotation.Week(first, Given.NOTHING), new Rotation.Week(second, Given.NOTHING)), first.account(), first.share(),
                first.proof(), new RotationVariety(0, 0, List.of(), List.of(), List.of()), List.of(), List.of());
    }

    private static WeekPlan withNeeds(WeekPlan p) {
        List<WeekPlan.Need> needs = Map.of("carrot", 30_000_000L, "onion-yellow", 9_000_000L, "cheddar", 6_000_000L).entrySet().stream()
                .map(e -> new WeekPlan.Need(e.getKey(), p.week().monday(), e.getValue()))
                .sorted(java.util.Comparator.comparing(WeekPlan.Need::item)).toList();
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), p.menu(), p.batches(), p.orders(), needs, p.flows(), p.surplus(), p.account(),
                p.promises(), p.share(), p.proof(), p.missing(), p.swaps());
    }

    private static LocalDate later(LocalDate day) {
        return day.plusDays(7);
    }

    private static WeekPlan later(WeekPlan p) {
        List<WeekPlan.Served> menu = p.menu().stream().filter(s -> !s.slot().startsWith("harvest-meal")).map(s -> new WeekPlan.Served(s.slot(),
                s.line(), s.days().stream().map(SampleRotation::later).toList(), s.recipe(), s.portions(), s.sales(), s.left(), s.staples(),
                s.productions().stream().map(x -> new WeekPlan.Production(later(x.made()), later(x.lastServed()), later(x.useBy()), x.batches(),
                        x.portions())).toList(), s.marks(), s.kept())).toList();
        List<WeekPlan.Order> orders = p.orders().stream().map(o -> new WeekPlan.Order(o.vendor(), later(o.delivery()), o.cutOff().plusDays(7),
                o.lines(), o.total(), o.minimum(), o.toMinimum(), o.fee())).toList();
        return new WeekPlan(p.week().plusWeeks(1), p.fingerprint(), p.inputs(), menu, List.of(), orders,
                p.needs().stream().map(n -> new WeekPlan.Need(n.item(), later(n.day()), n.mg() / 2)).toList(), List.of(), p.surplus(), p.account(),
                p.promises().stream().map(x -> new WeekPlan.Promise(x.id(), x.say(), x.day().map(SampleRotation::later), x.kept(), x.amount(),
                        x.cents())).toList(), p.share(), p.proof(), p.missing(), p.swaps());
    }
}
