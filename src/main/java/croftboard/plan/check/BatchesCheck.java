package croftboard.plan.check;

import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** Batches of components: whole steps, on prep days, enough for everything that takes them, and no step too many. */
final class BatchesCheck {
    /** @param useDay it must be ready then. @param lastDay it must still be good then */
    record Demand(LocalDate useDay, LocalDate lastDay, long mg) { }

    private final Subject of;
    private final Counted counted;
    private final Report report;

    BatchesCheck(Subject of, Counted counted, Report report) {
        this.of = of;
        this.counted = counted;
        this.report = report;
    }

    void run() {
        TreeSet<String> components = new TreeSet<>();
        for (WeekPlan.Batch b : of.plan().batches()) {
            of.recipe(b.recipe()).ifPresentOrElse(r -> one(b, r),
                    () -> report.find("batches: the book has no recipe " + b.recipe()));
            of.recipe(b.recipe()).ifPresent(r -> components.add(r.id()));
        }
        makings((recipe, batches, made, last) -> components.addAll(of.making().components(recipe).keySet()));
        components.forEach(this::component);
        report.count(of.plan().batches().size(), "batches");
    }

    private interface Each {
        void take(Recipe recipe, Ratio batches, LocalDate made, LocalDate last);
    }

    /** Everything that is made: dishes and batches. */
    private void makings(Each each) {
        for (WeekPlan.Served row : of.plan().menu()) {
            of.dish(row).ifPresent(d -> row.productions()
                    .forEach(p -> each.take(d, p.batches(), p.made(), p.lastServed())));
        }
        LostMakings.of(of).forEach(l -> each.take(l.dish(), l.production().batches(), l.production().made(),
                l.production().lastServed()));
        for (WeekPlan.Batch b : of.plan().batches()) {
            of.recipe(b.recipe()).ifPresent(r -> each.take(r, b.batches(), b.made(), b.lastServed()));
        }
    }

    private static String name(WeekPlan.Batch b) {
        return "batches: " + b.recipe() + " of " + Say.day(b.made());
    }

    private void one(WeekPlan.Batch b, Recipe recipe) {
        Ratio steps = b.batches().over(recipe.batchStep());
        report.findIf(!steps.isWhole() || steps.signum() <= 0, name(b) + ": " + b.batches()
                + " is no whole number of steps of " + recipe.batchStep());
        report.findIf(!of.days().prep(b.made()), name(b) + ": that is no prep day");
        if (steps.isWhole()) {
            long step = Weights.mgDown(recipe.makes().base().times(recipe.batchStep()));
            report.sameMass(name(b) + ": yield", b.mg(), Math.multiplyExact(step, steps.floor()));
            report.sameCents(name(b) + ": staples", b.staples(), of.making().stapleCents(recipe).times(b.batches()).round());
        }
    }

    private List<Demand> demands(String component) {
        List<Demand> demands = new ArrayList<>();
        makings((recipe, batches, made, last) -> {
            Ratio grams = of.making().components(recipe).get(component);
            if (grams != null) {
                demands.add(new Demand(made, last, Weights.mgUp(grams.times(batches))));
            }
        });
        demands.sort(Comparator.comparing(Demand::useDay).thenComparing(Demand::lastDay).thenComparing(Demand::mg));
        return demands;
    }

    private void component(String id) {
        Recipe recipe = of.book().recipe(id);
        List<Demand> demands = demands(id);
        List<WeekPlan.Batch> batches = of.plan().batches().stream().filter(b -> b.recipe().equals(id)).toList();
        long wanted = demands.stream().mapToLong(Demand::mg).sum();
        long met = met(recipe, demands, batches);
        if (met < wanted) {
            report.componentMissing(recipe.name() + ": " + Say.mass(wanted - met) + " of " + Say.mass(wanted)
                    + " is not ready in time, not good long enough or not made at all", recipe.name());
        }
        for (WeekPlan.Batch b : batches) {
            boolean serves = demands.stream().anyMatch(d -> d.lastDay().equals(b.lastServed())
                    && !d.useDay().isBefore(b.made().plusDays(recipe.leadDays())));
            report.findIf(!serves && !over(b), name(b) + ": nothing that takes it is served until " + Say.day(b.lastServed()));
        }
        if (batches.stream().noneMatch(this::over)) {
            notTooMuch(recipe, demands, batches);
        }
    }

    /** Made when the plan was changed: it is there, and serves as long as it is good, whatever it was made for. */
    private boolean over(WeekPlan.Batch b) {
        return of.revised().map(r -> r.over(b.made())).orElse(false);
    }

    private boolean reaches(WeekPlan.Batch b, Demand demand) {
        return !demand.lastDay().isAfter(over(b) ? b.useBy() : b.lastServed());
    }

    private boolean spoiled(WeekPlan.Batch b) {
        return of.revised().map(r -> r.lost(b.recipe(), b.made())).orElse(false);
    }

    private long met(Recipe recipe, List<Demand> demands, List<WeekPlan.Batch> batches) {
        Transport ways = new Transport();
        demands.forEach(d -> ways.demand(d.mg()));
        for (WeekPlan.Batch b : batches) {
            int source = ways.source(b.mg());
            for (int d = 0; d < demands.size(); d++) {
                if (serves(b, recipe, demands.get(d)) && reaches(b, demands.get(d)) && !spoiled(b)) {
                    ways.way(source, d);
                }
            }
        }
        for (Counted.Lot lot : counted.components(recipe.id())) {
            int source = ways.source(lot.mg());
            for (int d = 0; d < demands.size(); d++) {
                if (serves(lot, demands.get(d))) {
                    ways.way(source, d);
                }
            }
        }
        return ways.met();
    }

    static boolean serves(WeekPlan.Batch b, Recipe recipe, Demand d) {
        return !b.made().plusDays(recipe.leadDays()).isAfter(d.useDay()) && !b.useBy().isBefore(d.lastDay());
    }

    static boolean serves(Counted.Lot lot, Demand d) {
        return !lot.from().isAfter(d.useDay()) && !lot.until().isBefore(d.lastDay());
    }

    /** Stock is used first; what is then made is above what is still wanted by less than a step a batch. */
    private void notTooMuch(Recipe recipe, List<Demand> demands, List<WeekPlan.Batch> batches) {
        long wanted = demands.stream().mapToLong(Demand::mg).sum() - fromStock(recipe, demands);
        long made = batches.stream().mapToLong(WeekPlan.Batch::mg).sum();
        long step = Weights.mgDown(recipe.makes().base().times(recipe.batchStep()));
        long rounding = of.plan().batches().stream().mapToLong(b -> of.recipe(b.recipe())
                .map(r -> b.batches().over(r.batchStep()).ceil()).orElse(0L)).sum();
        report.findIf(made - wanted >= Math.multiplyExact(step, batches.size()) + rounding && !batches.isEmpty(), "batches: "
                + batches.size() + " of " + recipe.id() + " make " + Say.mass(made) + " where " + Say.mass(wanted)
                + " is wanted: a step or more too many");
    }

    private long fromStock(Recipe recipe, List<Demand> demands) {
        long[] open = demands.stream().mapToLong(Demand::mg).toArray();
        long used = 0;
        for (Counted.Lot lot : counted.components(recipe.id())) {
            long left = lot.mg();
            for (int d = 0; d < open.length; d++) {
                long take = serves(lot, demands.get(d)) ? Math.min(left, open[d]) : 0;
                left -= take;
                open[d] -= take;
                used += take;
            }
        }
        return used;
    }
}
