package croftboard.plan.ask;

import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.PlanPacks;
import croftboard.plan.change.Problems;
import croftboard.plan.change.StayPut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Why an item is ordered from a vendor: who takes it, what else is offered, and the best orders without it. */
public final class WhyOrder {
    private static final int ROUNDS = 1_500;
    private static final int NODES = 30;
    private final Question question;
    private final ChangedWeek week;
    private final WeekProblem problem;
    private final int[] packs;

    public WhyOrder(Question question) {
        this.question = question;
        this.week = question.asItIs();
        this.problem = week.built().problem();
        this.packs = PlanPacks.of(problem, question.plan());
    }

    /** @throws Unanswerable when the plan orders nothing of it there */
    public Why.Order of(String vendor, String item) {
        WeekPlan plan = question.plan();
        List<WeekPlan.OrderLine> lines = plan.orders().stream().filter(o -> o.vendor().equals(vendor))
                .flatMap(o -> o.lines().stream()).filter(l -> l.item().equals(item)).toList();
        if (lines.isEmpty()) {
            throw new Unanswerable("this plan orders no " + item + " from " + vendor + " -> croftboard why-not " + plan.week()
                    + " " + vendor + "/" + item);
        }
        List<WeekProblem.Offer> offers = problem.offers().stream().map(o -> o.vendor().equals(vendor) && named(o, item)
                ? Problems.packs(o, 0, 0) : o).toList();
        WeekProblem without = Problems.withSupply(problem, offers, problem.deliveries());
        WeekRun.Found found = Nearby.better(WeekRun.near(without, week.start(), packs),
                WeekRun.orders(without, week.start(), 1, ROUNDS));
        WeekRun.Found best = Nearby.better(found, WeekRun.exact(without, found, NODES));
        int[] close = close(without, best);
        Optional<Account> then = best.complete() ? Optional.of(Account.of(problem, week.start(), close)) : Optional.empty();
        List<String> missing = WeekRun.missing(question.book(), without, week.start(), best.packs()).stream()
                .map(WeekPlan.Missing::what).toList();
        return new Why.Order(vendor, item, lines, uses(item), then, Account.of(problem, week.start(), packs),
                best.complete() ? instead(close, vendor, item) : List.of(), missing, choices(item));
    }

    /** Of complete orders, those worth most with each changed order line at its price; lines that gain less are as they were. */
    private int[] close(WeekProblem without, WeekRun.Found best) {
        long line = question.book().kitchen().promises().change().value() / WhyNotAsked.LINES_A_DISH;
        int[] before = packs.clone();
        for (int o = 0; o < before.length; o++) {
            before[o] = Math.min(before[o], without.offers().get(o).maxPacks());
        }
        List<WeekRun.Found> all = new ArrayList<>(new MendedPacks(without, week.start(), before).all());
        all.add(best);
        return all.stream().filter(WeekRun.Found::complete)
                .map(f -> new StayPut(without, week.start(), before, line).calm(f.packs()))
                .max(Comparator.comparingLong(p -> Account.of(without, week.start(), p).value()
                        - line * IntStream.range(0, p.length).filter(o -> p[o] != before[o]).count()))
                .orElse(before);
    }

    private boolean named(WeekProblem.Offer o, String item) {
        return problem.items().get(o.item()).id().equals(item);
    }

    /** Through the whole recipe, batches not rounded. */
    private List<Why.Use> uses(String item) {
        List<Why.Use> all = new ArrayList<>();
        for (int s = 0; s < week.start().length; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            if (week.start()[s] >= 0 && !slot.id().equals(ChangedWeek.HOUSE)) {
                WeekProblem.Candidate dish = slot.candidates().get(week.start()[s]);
                long mg = dish.loose().stream().filter(n -> problem.items().get(n.item()).id().equals(item))
                        .mapToLong(WeekProblem.LooseNeed::mg).sum();
                if (mg > 0) {
                    all.add(new Why.Use(dish.recipe(), slot.id(), mg));
                }
            }
        }
        all.sort(Comparator.comparingLong((Why.Use u) -> -u.mg()).thenComparing(Why.Use::slot));
        return all;
    }

    private List<Why.Instead> instead(int[] now, String vendor, String item) {
        List<Why.Instead> all = new ArrayList<>();
        for (int o = 0; o < now.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            boolean asked = offer.vendor().equals(vendor) && named(offer, item);
            if (now[o] != packs[o] && !asked) {
                all.add(new Why.Instead(offer.vendor(), problem.firstDay().plusDays(problem.deliveries().get(offer.delivery())
                        .day()), problem.items().get(offer.item()).id(), offer.pack(), packs[o], now[o]));
            }
        }
        all.sort(Comparator.comparing((Why.Instead i) -> !i.item().equals(item)).thenComparing(Why.Instead::delivery)
                .thenComparing(Why.Instead::vendor).thenComparing(Why.Instead::item).thenComparing(Why.Instead::pack));
        return all;
    }

    private List<Why.Choice> choices(String item) {
        List<Why.Choice> all = new ArrayList<>();
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            if (named(offer, item)) {
                all.add(new Why.Choice(offer.vendor(), problem.firstDay().plusDays(problem.deliveries().get(offer.delivery())
                        .day()), offer.pack(), offer.priceCents(Math.max(1, packs[o])), offer.packMg(), offer.maxPacks(), packs[o],
                        offer.locality() == WeekProblem.Locality.LOCAL));
            }
        }
        all.sort(Comparator.comparingDouble((Why.Choice c) -> (double) c.priceCents() / c.packMg())
                .thenComparing(Why.Choice::delivery).thenComparing(Why.Choice::vendor).thenComparing(Why.Choice::pack));
        return all;
    }
}
