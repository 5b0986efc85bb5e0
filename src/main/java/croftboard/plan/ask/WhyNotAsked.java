package croftboard.plan.ask;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.change.Change;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.Disturbance;
import croftboard.plan.change.PlanPacks;
import croftboard.plan.change.Problems;
import croftboard.plan.change.StayPut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Plans the week again with a dish, a vendor or local food forced. */
public final class WhyNotAsked {
    /** A changed order line costs a quarter of a changed dish, as in a repair; common practice, no source. */
    static final int LINES_A_DISH = 4;
    private final Question question;
    private final Book book;

    public WhyNotAsked(Question question) {
        this.question = question;
        this.book = question.book();
    }

    /** @throws Unanswerable when there is no such place, or the dish stands there */
    public WhyNot dish(String slot, String dish) {
        ChangedWeek asIs = question.asItIs();
        int s = IntStream.range(0, asIs.built().problem().slots().size())
                .filter(n -> asIs.built().problem().slots().get(n).id().equals(slot)).findFirst()
                .orElseThrow(() -> new Unanswerable("this week has no place " + slot + " -> one of " + String.join(", ",
                        question.plan().menu().stream().map(WeekPlan.Served::slot).toList())));
        if (dish.equals(question.plan().choices().get(slot))) {
            throw new Unanswerable("the plan has " + dish + " on " + slot + " -> croftboard why " + question.plan().week() + " " + slot);
        }
        List<String> cannot = cannotStand(asIs, slot, dish);
        ChangedWeek week = cannot.isEmpty() ? question.under(List.of(new Change.Wanted(slot, dish))) : asIs;
        if (!cannot.isEmpty() || !week.faults().isEmpty()) {
            return new WhyNot.Cannot(cannot.isEmpty() ? List.of("something in it cannot be brought in time by anybody, or no prep "
                    + "day leaves it ready in time and good on those days") : cannot);
        }
        WeekProblem p = week.priced();
        return answer(week, p, Forced.menu(p, s, week.start()), Forced.swapped(p, s, week.start(),
                Optional.ofNullable(question.plan().choices().get(slot))));
    }

    private List<String> cannotStand(ChangedWeek asIs, String slot, String dish) {
        List<String> why = new ArrayList<>();
        Recipe recipe = book.recipe(dish);
        String line = slot.substring(slot.indexOf('/') + 1);
        if (asIs.standing().rows().containsKey(slot)) {
            why.add("what stands there is made or served");
        }
        book.kitchen().lines().stream().filter(l -> l.id().equals(line)).forEach(l -> {
            List<String> fits = List.copyOf(new java.util.TreeSet<>(recipe.sale().orElseThrow().fits()));
            if (!fits.contains(l.course()) && !fits.contains(l.id())) {
                why.add("its recipe says that it fits " + String.join(", ", fits) + ", not " + l.course());
            }
            if (l.standing().isPresent()) {
                why.add("that line always holds " + l.standing().get());
            }
        });
        if (!recipe.inSeason(question.plan().week(), book.seasons())) {
            why.add("it is out of season in " + question.plan().week());
        }
        question.given().served().stream().filter(s -> s.recipe().equals(dish)).forEach(s -> why.add("it is served from "
                + s.start() + " in another week's plan, and a dish comes back after " + book.kitchen().gapDays() + " days"));
        return why;
    }

    /** @throws Unanswerable when the plan orders from the vendor, or nothing can be ordered there */
    public WhyNot vendor(String vendor) {
        if (question.plan().orders().stream().anyMatch(o -> o.vendor().equals(vendor))) {
            throw new Unanswerable("the plan orders from " + vendor + " -> croftboard why " + question.plan().week() + " " + vendor
                    + "/ITEM");
        }
        ChangedWeek week = question.asItIs();
        int[] packs = PlanPacks.of(week.priced(), question.plan());
        Optional<WeekProblem> best = offers(week, o -> o.vendor().equals(vendor) && o.maxPacks() > 0).stream()
                .map(o -> buying(week.priced(), o, 1)).max(Comparator.comparingLong(p -> worth(p, week.start(), packs)));
        WeekProblem forced = best.orElseThrow(() -> new Unanswerable("nothing can be ordered from " + vendor + " any more this week"
                + " -> a vendor with a delivery still open"));
        return answer(week, forced, week.start());
    }

    /** As much of the item from the vendor as the plan orders elsewhere, as far as it is offered. */
    public WhyNot order(String vendor, String item) {
        ChangedWeek week = question.asItIs();
        WeekProblem p = week.priced();
        int[] packs = PlanPacks.of(p, question.plan());
        long elsewhere = IntStream.range(0, packs.length).filter(o -> named(p, o, item)
                && !p.offers().get(o).vendor().equals(vendor)).mapToLong(o -> packs[o] * p.offers().get(o).packMg()).sum();
        List<Integer> there = offers(week, x -> x.vendor().equals(vendor) && x.maxPacks() > 0).stream()
                .filter(o -> named(p, o, item)).toList();
        if (elsewhere == 0 && there.stream().anyMatch(o -> packs[o] > 0)) {
            throw new Unanswerable("the plan orders all its " + item + " from " + vendor + " -> croftboard why "
                    + question.plan().week() + " " + vendor + "/" + item);
        }
        WeekProblem forced = p;
        long left = Math.max(1, elsewhere);
        boolean any = false;
        for (int o : there) {
            WeekProblem.Offer offer = p.offers().get(o);
            int more = (int) Math.min(offer.maxPacks() - packs[o], (left + offer.packMg() - 1) / offer.packMg());
            if (more > 0 && left > 0) {
                any = true;
                left -= more * offer.packMg();
                forced = buying(forced, o, packs[o] + more);
            }
        }
        if (!any) {
            String offered = p.offers().stream().filter(o -> o.vendor().equals(vendor) && o.maxPacks() > 0)
                    .map(o -> p.items().get(o.item()).id()).distinct().sorted().collect(Collectors.joining(", "));
            throw new Unanswerable(there.isEmpty() ? vendor + " offers no " + item + " on deliveries still open this week -> "
                    + (offered.isEmpty() ? "another vendor" : "it offers " + offered)
                    : "the plan already orders all the " + item + " that " + vendor + " offers -> another vendor");
        }
        return answer(week, forced, week.start());
    }

    /** All of the item that is still to be ordered from local offers. */
    public WhyNot local(String item) {
        ChangedWeek week = question.asItIs();
        WeekProblem p = week.priced();
        int[] packs = PlanPacks.of(p, question.plan());
        boolean ordered = IntStream.range(0, packs.length).anyMatch(o -> named(p, o, item) && packs[o] > 0
                && p.offers().get(o).locality() != WeekProblem.Locality.LOCAL);
        if (!ordered) {
            throw new Unanswerable("the plan orders no " + item + " that is not local -> an item that it does, such as in croftboard "
                    + "show " + question.plan().week() + " share");
        }
        if (IntStream.range(0, packs.length).noneMatch(o -> named(p, o, item)
                && p.offers().get(o).locality() == WeekProblem.Locality.LOCAL && p.offers().get(o).maxPacks() > 0)) {
            return new WhyNot.Cannot(List.of("nobody offers local " + book.ingredient(item).name() + " this week"));
        }
        List<WeekProblem.Offer> offers = p.offers().stream().map(o -> p.items().get(o.item()).id().equals(item)
                && o.locality() != WeekProblem.Locality.LOCAL && o.minPacks() == 0 ? Problems.packs(o, 0, 0) : o).toList();
        WeekProblem forced = Problems.withSupply(p, offers, p.deliveries());
        return answer(week, forced, week.start());
    }

    private static boolean named(WeekProblem p, int o, String item) {
        return p.items().get(p.offers().get(o).item()).id().equals(item);
    }

    private static List<Integer> offers(ChangedWeek week, Predicate<WeekProblem.Offer> wanted) {
        List<WeekProblem.Offer> all = week.priced().offers();
        return IntStream.range(0, all.size()).filter(o -> wanted.test(all.get(o))).boxed().toList();
    }

    private static WeekProblem buying(WeekProblem p, int o, int least) {
        List<WeekProblem.Offer> offers = new ArrayList<>(p.offers());
        WeekProblem.Offer offer = offers.get(o);
        offers.set(o, Problems.packs(offer, Math.max(least, offer.minPacks()), offer.maxPacks()));
        return Problems.withSupply(p, offers, p.deliveries());
    }

    private static long worth(WeekProblem p, int[] menu, int[] packs) {
        WeekRun.Found found = WeekRun.near(p, menu, packs);
        return found.complete() ? found.valueCents() : Long.MIN_VALUE / 2 + found.valueCents();
    }

    /** @param forced what is searched: its packs are within what is forced, so that none of it is taken back */
    private WhyNot answer(ChangedWeek week, WeekProblem forced, int[] menu, int[]... others) {
        int[] packs = PlanPacks.of(forced, question.plan());
        Nearby near = new Nearby(forced, packs, 1);
        List<WeekRun.Found> all = new ArrayList<>(near.all(menu, Forced.TRIES));
        for (int[] other : others) {
            all.add(WeekRun.near(forced, other, packs));
            all.add(near.orders(other));
        }
        List.copyOf(all).forEach(f -> all.addAll(new MendedPacks(forced, f.choice(), packs).all()));
        Optional<WeekPlan> best = all.stream().filter(WeekRun.Found::complete).map(f -> calm(week, f, packs))
                .max(Comparator.comparingLong(this::calmWorth));
        if (best.isEmpty()) {
            WeekRun.Found least = all.get(0);
            return new WhyNot.Cannot(WeekRun.missing(book, week.built().problem(), least.choice(), least.packs()).stream()
                    .map(WeekPlan.Missing::what).toList());
        }
        WeekPlan before = question.plan();
        WeekPlan after = best.get();
        Disturbance moved = Disturbance.between(before, after);
        return new WhyNot.Can(before, after, Comparison.of(before, after), moved, price(moved), minutes(week, after),
                waste(after) - waste(before));
    }

    /** Order lines that gain less than their price are as they were. */
    private WeekPlan calm(ChangedWeek week, WeekRun.Found found, int[] before) {
        int[] packs = new StayPut(week.built().problem(), found.choice(), before, lineCents()).calm(found.packs());
        return WeekRun.plan(book, question.plan().week(), week.built(), found.choice(), packs, week.standing(),
                question.plan().inputs(), new WeekPlan.Proof(Optional.empty(), Optional.empty(), ""));
    }

    private long lineCents() {
        return book.kitchen().promises().change().value() / LINES_A_DISH;
    }

    private long calmWorth(WeekPlan now) {
        return now.value() - price(Disturbance.between(question.plan(), now));
    }

    private long price(Disturbance moved) {
        return book.kitchen().promises().change().value() * moved.dishes() + lineCents() * moved.orderLines();
    }

    private static long waste(WeekPlan plan) {
        return plan.surplus().stream().mapToLong(WeekPlan.Surplus::wastedMg).sum();
    }

    private static List<Why.Minutes> minutes(ChangedWeek week, WeekPlan after) {
        WeekProblem p = week.built().problem();
        int[] choice = week.start().clone();
        for (int s = 0; s < choice.length; s++) {
            Optional<String> dish = Optional.ofNullable(after.choices().get(p.slots().get(s).id()));
            List<WeekProblem.Candidate> may = p.slots().get(s).candidates();
            choice[s] = p.slots().get(s).id().equals(ChangedWeek.HOUSE) ? choice[s] : IntStream.range(0, may.size())
                    .filter(k -> dish.equals(Optional.of(may.get(k).recipe()))).findFirst().orElse(-1);
        }
        int[] before = week.start().clone();
        long[][] was = Workload.of(p, before).used();
        long[][] is = Workload.of(p, choice).used();
        List<Why.Minutes> all = new ArrayList<>();
        for (int r = 0; r < is.length; r++) {
            long more = java.util.Arrays.stream(is[r]).sum() - java.util.Arrays.stream(was[r]).sum();
            if (p.resources().get(r).hands() && more != 0) {
                all.add(new Why.Minutes(p.resources().get(r).name(), more));
            }
        }
        return all;
    }
}
