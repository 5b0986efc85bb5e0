package croftboard.plan.ask;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekRun;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.PlanPacks;
import croftboard.plan.change.Problems;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** What one more of each scarce thing of a plan's week would be worth. */
public final class WorthAsked {
    private static final int TOP = 10;
    private static final int DISHES = 12;
    private final Question question;
    private final ChangedWeek week;
    private final WeekProblem problem;
    private final double[] cheapest;

    public WorthAsked(Question question) {
        this.question = question;
        this.week = question.asItIs();
        this.problem = week.built().problem();
        this.cheapest = cheapest(problem);
    }

    public Worth of() {
        int[] packs = PlanPacks.of(problem, question.plan());
        List<More> things = new ArrayList<>(More.scarce(problem, week.start(), packs));
        List<Worth.Scarce> called = new ArrayList<>();
        things.forEach(t -> called.add(called(t)));
        dishes(things, called);
        WorthSearch.All all = new WorthSearch(problem, week.start(), packs).of(things, TOP);
        return new Worth(question.plan().value(), Math.max(0, all.anyway()), all.found().stream().limit(TOP)
                .map(f -> new Worth.Thing(called.get(f.number()), f.cents(), f.upTo(), f.minutes(), f.otherMenu())).toList(), things.size(),
                WeekRun.isTiny(problem));
    }

    private Worth.Scarce called(More thing) {
        if (thing instanceof More.Pack p) {
            WeekProblem.Offer o = problem.offers().get(p.offer());
            return new Worth.Pack(o.vendor(), date(problem.deliveries().get(o.delivery()).day()), problem.items().get(o.item()).id(),
                    o.pack(), o.maxPacks());
        }
        More.Units u = (More.Units) thing;
        WeekProblem.Resource r = problem.resources().get(u.resource());
        return r.hands() || u.resource() == problem.prices().receivingResource() ? new Worth.Hour(r.name(), date(u.period()))
                : new Worth.Unit(r.name(), r.periods() == 1 ? Optional.empty() : Optional.of(date(u.period())));
    }

    private LocalDate date(int day) {
        return problem.firstDay().plusDays(day);
    }

    private record Idea(String recipe, String line, long guess) { }

    /** Dishes on lines where they do not stand yet, at a price like that line's; the most promising by sales less cheapest food. */
    private void dishes(List<More> things, List<Worth.Scarce> called) {
        Book book = question.book();
        WeekProblem wide = new Question(everywhere(book), question.plan(), question.given(), question.now()).asItIs().built().problem();
        Map<String, Idea> best = new TreeMap<>();
        for (int s = 0; s < problem.slots().size(); s++) {
            ideas(s, wide.slots().get(s)).forEach(i -> best.merge(i.recipe + " " + i.line, i, (a, b) -> a.guess >= b.guess ? a : b));
        }
        best.values().stream().sorted(Comparator.comparingLong((Idea i) -> -i.guess).thenComparing(Idea::recipe)).limit(DISHES)
                .forEach(i -> {
                    things.add(new More.Dish(with(i, wide)));
                    called.add(new Worth.Line(i.recipe, i.line));
                });
    }

    /** How much better than the slot's own dish a new one might be. */
    private List<Idea> ideas(int s, WeekProblem.Slot wide) {
        WeekProblem.Slot slot = problem.slots().get(s);
        int own = week.start()[s];
        if (!slot.free() || slot.candidates().size() < 2 || own < 0 || week.standing().rows().containsKey(slot.id())) {
            return List.of();
        }
        long ownGuess = guess(slot.candidates().get(own));
        String line = slot.id().substring(slot.id().indexOf('/') + 1);
        return wide.candidates().stream().filter(c -> slot.candidates().stream().noneMatch(o -> o.dish() == c.dish()))
                .map(c -> new Idea(c.recipe(), line, guess(c) - ownGuess)).toList();
    }

    private long guess(WeekProblem.Candidate c) {
        double food = c.loose().stream().mapToDouble(n -> n.mg() * cheapest[n.item()]).sum();
        return c.salesCents() + c.leftCents() - c.looseStapleCents() - Math.round(food);
    }

    /** Cents a milligram by item; 0 where nobody offers it. */
    private static double[] cheapest(WeekProblem p) {
        double[] cents = new double[p.items().size()];
        p.offers().stream().filter(o -> o.maxPacks() > 0).forEach(o -> {
            double each = o.lowestPriceCents() / (double) o.packMg();
            cents[o.item()] = cents[o.item()] == 0 ? each : Math.min(cents[o.item()], each);
        });
        return cents;
    }

    private WeekProblem with(Idea idea, WeekProblem wide) {
        List<WeekProblem.Slot> slots = new ArrayList<>();
        for (int s = 0; s < problem.slots().size(); s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            List<WeekProblem.Candidate> all = new ArrayList<>(slot.candidates());
            if (slot.id().endsWith("/" + idea.line) && slot.free() && all.size() > 1
                    && !week.standing().rows().containsKey(slot.id())) {
                wide.slots().get(s).candidates().stream().filter(c -> c.recipe().equals(idea.recipe)).forEach(all::add);
            }
            slots.add(new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(), slot.emptyCents(),
                    slot.mayBeEmpty(), all));
        }
        return Problems.withSlots(problem, slots);
    }

    /** Every dish fits every line whose dishes cost about as much, from two thirds to three halves of their middle price. */
    private static Book everywhere(Book book) {
        Map<String, Recipe> recipes = new TreeMap<>();
        book.recipes().forEach((id, r) -> recipes.put(id, r.sale().map(s -> fitting(book, r, s)).orElse(r)));
        return new Book(book.kitchen(), book.ingredients(), recipes, book.vendors(), book.seasons(), book.lists(), book.onHand(),
                book.fingerprint());
    }

    private static Recipe fitting(Book book, Recipe r, Recipe.Sale s) {
        TreeSet<String> fits = new TreeSet<>(s.fits());
        for (Kitchen.ServiceLine line : book.kitchen().lines()) {
            long[] prices = book.recipes().values().stream().flatMap(o -> o.sale().stream()).filter(o -> o.fits()
                    .contains(line.course()) || o.fits().contains(line.id())).mapToLong(o -> o.price().value()).sorted().toArray();
            long middle = prices.length == 0 ? 0 : prices[prices.length / 2];
            if (line.standing().isEmpty() && s.price().value() * 3 >= middle * 2 && s.price().value() * 2 <= middle * 3) {
                fits.add(line.id());
            }
        }
        Recipe.Sale sale = new Recipe.Sale(fits, s.seasons(), s.weeks(), s.portion(), s.price(), s.draw(), s.main(), s.method(),
                s.cuisine());
        return new Recipe(r.id(), r.name(), Optional.of(sale), r.makes(), r.cup(), r.batchStep(), r.lifeDays(), r.hold(),
                r.leadDays(), r.loss(), r.ingredients(), r.steps(), r.scaling(), r.doneness(), r.holding(), r.caution(),
                r.worthOnly());
    }
}
