package croftboard.plan.ask;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.PlanPacks;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Failures of one week, each repaired; on all cores, in an order that does not hang on them. */
final class ExposureRun {
    private final Book book;
    private final WeekPlan plan;
    private final WeekProblem problem;
    private final int[] menu;
    private final int[] packs;
    private final Yields yields;
    private final long seed;
    private final Told told;

    /** Hears how far it is; from several threads. */
    interface Told {
        /** @param of all that is to be done, at this moment */
        void done(int done, int of);
    }

    ExposureRun(Question question, long seed, Told told) {
        this.book = question.book();
        this.plan = question.plan();
        ChangedWeek week = question.asItIs();
        this.problem = droppable(week.built().problem());
        this.menu = week.start();
        this.packs = PlanPacks.of(problem, plan);
        this.yields = new Yields(book, problem);
        this.seed = seed;
        this.told = told;
    }

    /** A dish whose food does not come cannot stand, whoever kept it. */
    private static WeekProblem droppable(WeekProblem p) {
        List<WeekProblem.Slot> slots = p.slots().stream().map(s -> new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), s.free(),
                s.emptyCents(), !s.id().equals(ChangedWeek.HOUSE), s.candidates())).toList();
        return Problems.withSlots(p, slots);
    }

    /** One week with some shares. @param shares of packs that come, by {@code vendor/item} */
    record Tried(Map<String, Double> shares, QuickRepair.Repaired repaired, Exposure.Outcome outcome) { }

    Tried tried(Map<String, Double> shares) {
        WeekProblem p = yields.with(shares);
        QuickRepair.Repaired repaired = new QuickRepair(p, packs).run(menu);
        return new Tried(shares, repaired, outcome(p, repaired));
    }

    static Exposure.Outcome outcome(WeekProblem p, QuickRepair.Repaired r) {
        Account a = Account.of(p, r.found().choice(), r.found().packs());
        return new Exposure.Outcome(a.value() + a.brokenCents(), a.localPurchases(), a.purchases(), a.brokenCents(),
                r.dropped().size());
    }

    WeekProblem problem() {
        return problem;
    }

    int[] menu() {
        return menu;
    }

    int[] packs() {
        return packs;
    }

    Yields yields() {
        return yields;
    }

    private record Case(String id, Map<String, Double> shares) { }

    Exposure run(int runs) {
        List<Case> cases = new ArrayList<>();
        cases.add(new Case("", Map.of()));
        TreeSet<String> vendors = new TreeSet<>();
        TreeSet<String> crops = new TreeSet<>();
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            if (packs[o] > 0 && book.vendors().containsKey(offer.vendor())) {
                vendors.add(offer.vendor());
                if (grower(offer)) {
                    crops.add(problem.items().get(offer.item()).id());
                }
            }
        }
        vendors.forEach(v -> cases.add(new Case(v, yields.without(o -> o.vendor().equals(v)))));
        Predicate<WeekProblem.Offer> grower = this::grower;
        crops.forEach(c -> cases.add(new Case(c, yields.without(grower.and(o -> problem.items().get(o.item()).id().equals(c))))));
        int singles = cases.size();
        for (int run = 0; run < runs; run++) {
            cases.add(new Case("", yields.draw(seed, run)));
        }
        AtomicInteger done = new AtomicInteger();
        Tried[] all = new Tried[cases.size()];
        IntStream.range(0, all.length).parallel().forEach(n -> {
            all[n] = tried(cases.get(n).shares);
            told.done(done.incrementAndGet(), all.length);
        });
        List<Tried> random = Arrays.asList(all).subList(singles, all.length);
        return new Exposure(List.of(plan.week().toString()), seed, all[0].outcome,
                singles(cases, all, 1, 1 + vendors.size()), singles(cases, all, 1 + vendors.size(), singles),
                random.stream().map(Tried::outcome).toList(), survival(random), new BackUps(this, random).worth());
    }

    private boolean grower(WeekProblem.Offer o) {
        return book.vendors().containsKey(o.vendor()) && book.vendor(o.vendor()).kind() == Vendor.Kind.GROWER;
    }

    private List<Exposure.Single> singles(List<Case> cases, Tried[] all, int from, int to) {
        return IntStream.range(from, to).mapToObj(n -> new Exposure.Single(cases.get(n).id, all[n].outcome,
                all[n].repaired.dropped().stream().map(this::dish).distinct().sorted().toList()))
                .sorted(Comparator.comparingLong((Exposure.Single s) -> s.outcome().value()).thenComparing(Exposure.Single::id)).toList();
    }

    String dish(int slot) {
        return problem.slots().get(slot).candidates().get(menu[slot]).recipe();
    }

    private List<Exposure.Survival> survival(List<Tried> random) {
        Map<String, long[]> counts = new TreeMap<>();
        for (int s = 0; s < menu.length; s++) {
            if (menu[s] >= 0 && !problem.slots().get(s).id().equals(ChangedWeek.HOUSE)) {
                long[] c = counts.computeIfAbsent(dish(s), k -> new long[2]);
                c[0] += random.size();
                c[1] += random.size();
            }
        }
        random.forEach(t -> t.repaired.dropped().forEach(s -> counts.get(dish(s))[0]--));
        return counts.entrySet().stream().map(e -> new Exposure.Survival(e.getKey(), e.getValue()[0], e.getValue()[1]))
                .filter(s -> s.made() < s.planned()).sorted(Comparator.comparingDouble((Exposure.Survival s) ->
                        (double) s.made() / s.planned()).thenComparing(Exposure.Survival::recipe)).toList();
    }
}
