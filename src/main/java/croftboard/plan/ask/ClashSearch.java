package croftboard.plan.ask;

import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.WeekRun;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.Problems;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Clashes of a week as a problem, in names, each with what would mend it. */
final class ClashSearch {
    private static final long TRIES = 6_000;
    private static final int MOST = 3;
    private final WeekProblem problem;
    private final Map<Integer, WeekProblem.Slot> opened;
    private final List<Promised> promises;
    private final int[] start;

    /** A promise to be kept as if it were a must. */
    record Promised(Fact.Kept fact, String say) { }

    /**
     * @param opened slots without what is kept there
     * @param promises that are looked at, broken in the plan
     * @param start a menu near which mended weeks are looked for, -1 where there is none
     */
    ClashSearch(WeekProblem problem, Map<Integer, WeekProblem.Slot> opened, List<Promised> promises, int[] start) {
        this.problem = problem;
        this.opened = opened;
        this.promises = promises;
        this.start = start;
    }

    /** Those that make the week impossible, one after the other given up; then, of a possible week, those of its promises. */
    List<Clash> all() {
        List<Clash> found = new ArrayList<>();
        WeekProblem left = problem;
        for (int n = 0; n < MOST; n++) {
            Optional<Clashing.Core> core = new Clashing(left, Optional.empty()).find();
            if (core.isEmpty()) {
                break;
            }
            found.add(clash(left, core.get(), Optional.empty()));
            left = Facts.without(left, core.get().facts());
        }
        for (Promised p : found.isEmpty() ? promises : List.<Promised>of()) {
            new Clashing(problem, Optional.of(p.fact)).find().ifPresent(core -> found.add(clash(problem, core, Optional.of(p))));
        }
        return List.copyOf(found);
    }

    private Clash clash(WeekProblem p, Clashing.Core core, Optional<Promised> promise) {
        Relaxed relaxed = new Relaxed(p, opened);
        Optional<Clash.Told> of = promise.map(x -> new Clash.Promise(x.say, date(x.fact.day())));
        List<Clash.Told> facts = core.facts().stream().map(f -> told(p, f, relaxed)).toList();
        return new Clash(of, facts, core.proved(), mends(p, core, promise, relaxed));
    }

    /** Facts of the week itself, in names. */
    List<Clash.Told> told(Clashing.Core core) {
        Relaxed relaxed = new Relaxed(problem, opened);
        return core.facts().stream().map(f -> told(problem, f, relaxed)).toList();
    }

    private record Best(Optional<Long> worth, boolean exact) { }

    private List<Clash.Mend> mends(WeekProblem p, Clashing.Core core, Optional<Promised> promise, Relaxed relaxed) {
        WeekProblem free = p;
        for (Fact f : core.facts()) {
            free = f instanceof Fact.Gap || f instanceof Fact.Pin x && opened.containsKey(x.slot()) ? new Relaxed(free, opened).of(f).problem()
                    : Facts.without(free, List.of(f));
        }
        Best unasked = best(free, Optional.empty());
        List<Clash.Mend> all = new ArrayList<>();
        for (Fact f : core.facts()) {
            Relaxed.Eased eased = relaxed.of(f);
            Best best = best(eased.problem(), promise);
            Optional<Long> worth = best.worth.map(w -> w - eased.cents());
            all.add(new Clash.Mend(told(p, f, relaxed), eased.least(), worth,
                    Math.max(0, unasked.worth.orElse(0L) - worth.orElse(0L)), eased.priced(), best.exact));
        }
        all.sort(Comparator.comparing((Clash.Mend m) -> m.worth().isEmpty()).thenComparing(m -> !m.priced())
                .thenComparingLong(Clash.Mend::price));
        return all;
    }

    /** @param promise kept whatever it costs */
    private Best best(WeekProblem p, Optional<Promised> promise) {
        WeekProblem dear = promise.map(x -> dear(p, x.fact)).orElse(p);
        int[] menu = new int[p.slots().size()];
        for (int s = 0; s < menu.length; s++) {
            WeekProblem.Slot slot = p.slots().get(s);
            menu[s] = !slot.mayBeEmpty() && slot.candidates().size() == 1 ? 0 : start[s] < slot.candidates().size()
                    && slot.candidates().size() == problem.slots().get(s).candidates().size() ? start[s] : -1;
        }
        WeekRun.Found found = new Nearby(dear, new int[p.offers().size()], 1).best(menu, TRIES);
        return new Best(found.complete() ? Optional.of(croftboard.need.Account.of(p, found.choice(), found.packs()).value())
                : Optional.empty(), WeekRun.isTiny(dear));
    }

    private static WeekProblem dear(WeekProblem p, Fact.Kept f) {
        List<WeekProblem.CoverageRule> rules = new ArrayList<>(p.prices().coverage());
        WeekProblem.CoverageRule r = rules.get(f.rule());
        rules.set(f.rule(), new WeekProblem.CoverageRule(r.id(), r.atLeast(), r.centsEach() * 20 + 100_000));
        WeekProblem.Prices x = p.prices();
        return Problems.withPrices(p, new WeekProblem.Prices(x.gapDays(), rules, x.variety(), x.localTarget(), x.localPrice(),
                x.foodCostAtMost(), x.foodCostPrice(), x.evennessCentsPerMinute(), x.receivingResource(), x.receivingMinutes()));
    }

    private LocalDate date(int day) {
        return problem.firstDay().plusDays(day);
    }

    private Clash.Told told(WeekProblem p, Fact f, Relaxed relaxed) {
        if (f instanceof Fact.Pin x) {
            WeekProblem.Slot slot = p.slots().get(x.slot());
            return new Clash.Pinned(slot.id(), slot.id().equals(ChangedWeek.HOUSE) || slot.candidates().isEmpty() ? ""
                    : slot.candidates().get(0).recipe(), !opened.containsKey(x.slot()));
        }
        if (f instanceof Fact.Hands x) {
            WeekProblem.Resource r = p.resources().get(x.resource());
            return new Clash.Hands(r.name(), r.periods() == 1 ? Optional.empty() : Optional.of(date(x.period())),
                    r.hands() || x.resource() == p.prices().receivingResource(), r.regular()[x.period()] + r.overtime()[x.period()],
                    relaxed.needed(x));
        }
        if (f instanceof Fact.Supply x) {
            return supply(p, x.item(), relaxed);
        }
        if (f instanceof Fact.Minimum x) {
            WeekProblem.Delivery d = p.deliveries().get(x.delivery());
            return new Clash.Minimum(d.vendor(), date(d.day()), d.minimumCents());
        }
        if (f instanceof Fact.Promised x) {
            WeekProblem.Offer o = p.offers().get(x.offer());
            return new Clash.Promised(o.vendor(), date(p.deliveries().get(o.delivery()).day()), p.items().get(o.item()).id(),
                    o.minPacks());
        }
        return f instanceof Fact.Life x ? new Clash.Life(p.components().get(x.component()).recipe(),
                p.components().get(x.component()).lifeDays()) : new Clash.Comeback(p.prices().gapDays());
    }

    private Clash.Told supply(WeekProblem p, int item, Relaxed relaxed) {
        int[] musts = new int[p.slots().size()];
        for (int s = 0; s < musts.length; s++) {
            musts[s] = p.slots().get(s).mayBeEmpty() ? -1 : 0;
        }
        long needed = Arrays.stream(Workload.of(p, musts).needMg()[item]).sum();
        List<Clash.Offered> offers = p.offers().stream().filter(o -> o.item() == item && o.maxPacks() > 0)
                .map(o -> new Clash.Offered(o.vendor(), date(p.deliveries().get(o.delivery()).day()), o.maxPacks(), o.pack())).toList();
        return new Clash.Supply(p.items().get(item).id(), needed, Arrays.stream(relaxed.missing(item)).sum(), offers);
    }
}
