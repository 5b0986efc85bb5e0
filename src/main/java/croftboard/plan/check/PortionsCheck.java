package croftboard.plan.check;

import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Productions of every dish, how much is made, and what it is expected to bring. */
final class PortionsCheck {
    private static final double SLACK = 1e-9;
    private static final List<Ratio> SHARES = List.of(Ratio.of(3, 4), Ratio.of(1, 2));
    private static final double CENT_SLACK = 1e-5;
    private final Subject of;
    private final Report report;
    private int productions;

    PortionsCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        for (WeekPlan.Served row : of.plan().menu()) {
            Optional<Recipe> dish = of.dish(row);
            Optional<Slot> slot = of.slot(row);
            if (dish.isEmpty() || slot.isEmpty()) {
                continue;
            }
            if (dish.get().worthOnly().isPresent()) {
                worthOnly(row, dish.get().worthOnly().get());
            } else {
                made(row, dish.get(), slot.get());
            }
        }
        report.count(productions, "productions");
    }

    private void worthOnly(WeekPlan.Served row, Recipe.WorthOnly worth) {
        report.sameCents("menu: worth of " + row.slot(), row.sales(), worth.worth().value());
        report.findIf(row.portions() != 0 || row.left() != 0 || row.staples() != 0 || !row.productions().isEmpty(),
                "menu: " + row.slot() + " holds a dish of stated worth, but there are portions or cents of another kind");
    }

    private void made(WeekPlan.Served row, Recipe dish, Slot slot) {
        String where = "menu: " + dish.id() + " on " + row.slot();
        int portions = 0;
        long stapleCents = 0;
        Range sales = new Range();
        Range left = new Range();
        LocalDate next = slot.days().get(0);
        for (WeekPlan.Production p : row.productions()) {
            productions++;
            LocalDate from = next;
            List<LocalDate> covered = slot.days().stream()
                    .filter(d -> !d.isBefore(from) && !d.isAfter(p.lastServed())).toList();
            if (covered.isEmpty()) {
                report.find(where + ": the production of " + Say.day(p.made()) + " serves no day");
                continue;
            }
            if (of.revised().flatMap(r -> r.made(row.slot(), p.made())).isEmpty()) {
                days(p, dish, covered, slot, where);
            }
            amounts(p, dish, covered, slot, where, sales, left, of.revised().flatMap(r -> r.made(row.slot(), p.made())));
            portions += p.portions();
            stapleCents += of.making().stapleCents(dish).times(p.batches()).round();
            next = slot.days().stream().filter(d -> d.isAfter(p.lastServed())).findFirst().orElse(LocalDate.MAX);
        }
        report.findIf(!next.equals(LocalDate.MAX), where + ": no production serves " + (next.equals(LocalDate.MAX) ? ""
                : Say.day(next)));
        report.same(where + ": portions", row.portions(), portions);
        report.findIf(!sales.holds(row.sales()), where + ": expected sales " + Say.money(row.sales())
                + ", derived again " + sales);
        report.findIf(!left.holds(row.left()), where + ": worth of left portions " + Say.money(row.left())
                + ", derived again " + left);
        report.sameCents(where + ": staples", row.staples(), stapleCents);
    }

    /** As late as lead and prep days allow, and as many days as its life lasts. */
    private void days(WeekPlan.Production p, Recipe dish, List<LocalDate> covered, Slot slot, String where) {
        LocalDate first = covered.get(0);
        Optional<LocalDate> made = of.days().lastPrepDay(first.minusDays(dish.leadDays()));
        report.findIf(made.isEmpty() || !made.get().equals(p.made()), where + ": made on " + Say.day(p.made())
                + ", where the last prep day for " + Say.day(first) + " is " + made.map(Say::day).orElse("none"));
        LocalDate good = p.made().plusDays(of.making().lasts(dish) - 1L);
        report.findIf(p.lastServed().isAfter(good), where + ": made " + Say.day(p.made()) + " and served until "
                + Say.day(p.lastServed()) + ", but good only until " + Say.day(good));
        LocalDate last = covered.get(covered.size() - 1);
        report.findIf(!last.equals(p.lastServed()), where + ": " + Say.day(p.lastServed()) + " is no day of the run");
        boolean more = slot.days().stream().anyMatch(d -> d.isAfter(last) && !d.isAfter(good));
        report.findIf(more, where + ": the production of " + Say.day(p.made()) + " would last beyond "
                + Say.day(last) + ", so the next comes too early");
    }

    private void amounts(WeekPlan.Production p, Recipe dish, List<LocalDate> covered, Slot slot, String where, Range sales,
            Range left, Optional<WeekPlan.Production> done) {
        String made = where + ", made " + Say.day(p.made());
        report.same(made + ": portions of " + p.batches() + " batches", p.portions(),
                Math.toIntExact(p.batches().times(dish.portionsPerBatch()).floor()));
        if (slot instanceof Slot.Meal meal) {
            report.same(made + ": batches", p.batches(), batches(dish, meal.portions()));
        } else if (slot instanceof Slot.Run run) {
            sold(p, dish, covered, run, made, sales, left, done);
        }
    }

    private static Ratio batches(Recipe dish, int portions) {
        return Ratio.of(portions).over(dish.portionsPerBatch()).ceilTo(dish.batchStep());
    }

    private void sold(WeekPlan.Production p, Recipe dish, List<LocalDate> covered, Slot.Run run, String made, Range sales,
            Range left, Optional<WeekPlan.Production> done) {
        AskedFor asked = new AskedFor(asked(dish, covered, run));
        double price = dish.sale().orElseThrow().price().value();
        double food = of.making().listCents(dish).over(dish.portionsPerBatch()).toDouble();
        double brings = of.book().kitchen().leftWorth().toDouble() * price;
        double tooFew = Math.max(1, price - food + of.book().kitchen().goodwill().toDouble() * price);
        double tooMany = Math.max(1, food - brings);
        double chance = tooFew / (tooFew + tooMany);
        Ratio low = batches(dish, Math.max(1, asked.enough(chance - SLACK)));
        Ratio high = batches(dish, Math.max(1, asked.enough(chance + SLACK)));
        Optional<Ratio> share = of.revised().flatMap(r -> of.plan().inputs().revision())
                .map(r -> r.fewer().get(run.id()));
        boolean fewer = share.isPresent() && SHARES.contains(share.get()) && stoodThere(run, dish)
                && List.of(low, high).stream().anyMatch(b -> b.times(share.get()).ceilTo(dish.batchStep()).equals(p.batches()));
        report.findIf(done.isEmpty() && !fewer && !p.batches().equals(low) && !p.batches().equals(high), made + ": " + p.batches()
                + " batches, derived again " + low);
        double sold = asked.sold(p.portions());
        sales.add(price * sold);
        left.add(brings * (p.portions() - sold));
    }

    /** Fewer portions are made only of what people already expect there. */
    private boolean stoodThere(Slot.Run run, Recipe dish) {
        return of.revised().flatMap(r -> r.row(run.id())).flatMap(WeekPlan.Served::recipe).equals(Optional.of(dish.id()));
    }

    private List<double[]> asked(Recipe dish, List<LocalDate> covered, Slot.Run run) {
        Seasons.LineDemand demand = of.book().seasons().demand().get(run.of().id());
        Ratio factor = of.book().seasons().demandFactorFor(of.plan().week()).times(dish.sale().orElseThrow().draw());
        List<double[]> asked = new ArrayList<>();
        for (LocalDate day : covered) {
            Ratio mean = demand.mean().getOrDefault(day.getDayOfWeek(), Ratio.ZERO).times(factor);
            asked.add(new double[] {mean.toDouble(), demand.cv().toDouble()});
        }
        return asked;
    }

    /** A sum of cents, each rounded once; where a half cent hangs on the last digits both neighbours are right. */
    private static final class Range {
        private long least;
        private long most;

        void add(double cents) {
            least += Math.round(cents - CENT_SLACK);
            most += Math.round(cents + CENT_SLACK);
        }

        boolean holds(long cents) {
            return cents >= least && cents <= most;
        }

        @Override
        public String toString() {
            return Say.money(least);
        }
    }
}
