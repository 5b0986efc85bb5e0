package croftboard.plan.work;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.OnHand;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which batch, and which purchase, stands behind which dish. A plan says what is made and what is bought, not what goes
 * where; that follows from the rule by which the batches were placed: demands by the day they are needed, counted food
 * first, then the batch that was made for the first of them, which serves every later one that its life covers.
 */
public final class Tracing {
    private static final int DAYS_BEFORE = 7;
    private final Book book;
    private final WeekPlan plan;
    private final List<Making> makings;
    private final List<PartUse> uses = new ArrayList<>();
    private final List<ItemUse> items = new ArrayList<>();

    /**
     * An ingredient that is bought by need goes into a making.
     *
     * @param day on which it must be there: cut, thawed or cooked
     * @param mg as purchased
     */
    public record ItemUse(String item, LocalDate day, Making user, long mg) { }

    private record Demand(Making user, long mg) { }

    private static final Comparator<Demand> ORDER = Comparator.comparing((Demand d) -> d.user.day())
            .thenComparing(d -> d.user.lastServed()).thenComparingLong(Demand::mg);

    public Tracing(Book book, WeekPlan plan) {
        this(book, plan, Makings.of(book, plan));
    }

    public Tracing(Book book, WeekPlan plan, List<Making> makings) {
        this.book = book;
        this.plan = plan;
        this.makings = makings;
        traceParts();
        makings.forEach(this::traceItems);
    }

    /** By day, as {@link Makings#of}. */
    public List<Making> makings() {
        return makings;
    }

    /** Every use of a component. */
    public List<PartUse> parts() {
        return List.copyOf(uses);
    }

    /** Every use of an ingredient that is bought by need: together, to the milligram, the plan's needs. */
    public List<ItemUse> items() {
        return List.copyOf(items);
    }

    /** What goes into a making. */
    public List<PartUse> partsOf(Making user) {
        return uses.stream().filter(u -> u.user() == user).toList();
    }

    /** What a batch goes into, by the day it is needed. */
    public List<PartUse> usersOf(Making batch) {
        return uses.stream().filter(u -> u.batch().filter(b -> b == batch).isPresent()).toList();
    }

    /** The day on which a making is needed first: its service, or the making that uses it. */
    public LocalDate neededOn(Making making) {
        return making.service().map(Making.Service::first).orElseGet(() -> usersOf(making).stream()
                .map(u -> u.user().day()).min(Comparator.naturalOrder()).orElse(making.lastServed()));
    }

    /** Slots that a making serves, through every batch it goes into, with the share of what is used of it, summing to 1. */
    public Map<String, Ratio> slotsOf(Making making) {
        return shares(making, new IdentityHashMap<>());
    }

    private Map<String, Ratio> shares(Making making, Map<Making, Map<String, Ratio>> known) {
        Map<String, Ratio> done = known.get(making);
        if (done != null) {
            return done;
        }
        Map<String, Ratio> shares = new TreeMap<>();
        making.service().ifPresent(s -> shares.put(s.slot(), Ratio.ONE));
        List<PartUse> users = usersOf(making);
        long all = users.stream().mapToLong(PartUse::mg).sum();
        for (PartUse u : users) {
            shares(u.user(), known).forEach((slot, share) ->
                    shares.merge(slot, share.times(Ratio.of(u.mg(), all)), Ratio::plus));
        }
        known.put(making, shares);
        return shares;
    }

    private void traceParts() {
        Map<String, List<Demand>> open = new TreeMap<>();
        Map<String, List<Making>> batches = new TreeMap<>();
        for (Making m : makings) {
            if (m.service().isPresent()) {
                demands(m, open);
            } else {
                batches.computeIfAbsent(m.recipe().id(), k -> new ArrayList<>()).add(m);
            }
        }
        CountedFood counted = new CountedFood(book, plan.week());
        for (String component : usersFirst()) {
            List<Demand> demands = open.getOrDefault(component, List.of());
            List<Making> made = batches.getOrDefault(component, List.of());
            place(component, afterCounted(component, demands, counted), made);
            made.forEach(b -> demands(b, open));
        }
    }

    /** Rounded as the plan rounds it: a dish once for all its batches, a component for each batch step. */
    private void demands(Making making, Map<String, List<Demand>> open) {
        Map<String, Ratio> parts = new TreeMap<>();
        making.items().stream().filter(Making.Item::component).forEach(i -> parts.merge(i.id(), i.ep(), Ratio::plus));
        parts.forEach((part, grams) -> open.computeIfAbsent(part, k -> new ArrayList<>())
                .add(new Demand(making, milligrams(making, grams))));
    }

    private static long milligrams(Making making, Ratio grams) {
        Ratio steps = making.service().isPresent() ? Ratio.ONE : making.batches().over(making.recipe().batchStep());
        return steps.signum() == 0 ? 0 : Ratio.of(grams.over(steps).times(1000).ceil()).times(steps).ceil();
    }

    private List<Demand> afterCounted(String component, List<Demand> demands, CountedFood counted) {
        List<Demand> left = new ArrayList<>(demands);
        left.sort(ORDER);
        for (CountedFood.Lot lot : counted.of(component)) {
            long mg = lot.mg();
            for (int i = 0; i < left.size() && mg > 0; i++) {
                Demand d = left.get(i);
                if (d.mg > 0 && !lot.from().isAfter(d.user.day()) && !lot.until().isBefore(d.user.lastServed())) {
                    long take = Math.min(mg, d.mg);
                    mg -= take;
                    left.set(i, new Demand(d.user, d.mg - take));
                    uses.add(new PartUse(component, d.user, Optional.empty(), Optional.of(lot.row()), take));
                }
            }
        }
        left.removeIf(d -> d.mg == 0);
        return left;
    }

    private void place(String component, List<Demand> demands, List<Making> made) {
        List<Demand> left = new ArrayList<>(demands);
        List<Making> free = new ArrayList<>(made);
        while (!left.isEmpty()) {
            Demand first = left.get(0);
            Optional<Making> batch = free.stream().filter(b -> serves(b, first.user)).findFirst();
            if (batch.isEmpty()) {
                left.remove(0);
                uses.add(new PartUse(component, first.user, Optional.empty(), Optional.empty(), first.mg));
                continue;
            }
            free.remove(batch.get());
            left.stream().filter(d -> serves(batch.get(), d.user)).forEach(d ->
                    uses.add(new PartUse(component, d.user, batch, Optional.<OnHand>empty(), d.mg)));
            left.removeIf(d -> serves(batch.get(), d.user));
        }
    }

    private static boolean serves(Making batch, Making user) {
        return !batch.day().plusDays(batch.recipe().leadDays()).isAfter(user.day())
                && !batch.lastServed().isBefore(user.lastServed());
    }

    /** Recipes that others use, so that none uses an earlier one. */
    private List<String> usersFirst() {
        List<String> order = new ArrayList<>();
        Map<String, Boolean> seen = new HashMap<>();
        book.recipes().keySet().forEach(r -> visit(r, seen, order));
        java.util.Collections.reverse(order);
        return order;
    }

    private void visit(String recipe, Map<String, Boolean> seen, List<String> order) {
        if (seen.putIfAbsent(recipe, true) == null) {
            book.recipe(recipe).ingredients().stream().map(Recipe.Line::item).filter(book.recipes()::containsKey)
                    .forEach(part -> visit(part, seen, order));
            order.add(recipe);
        }
    }

    private void traceItems(Making making) {
        record Key(String item, int ahead) { }
        Map<Key, Ratio> grams = new TreeMap<>(Comparator.comparing(Key::item).thenComparingInt(Key::ahead));
        for (Making.Item i : making.items()) {
            if (!i.component() && byNeed(book.ingredient(i.id()))) {
                grams.merge(new Key(i.id(), i.ahead()), i.ap(), Ratio::plus);
            }
        }
        LocalDate earliest = plan.week().monday().minusDays(DAYS_BEFORE);
        grams.forEach((key, g) -> {
            LocalDate day = making.day().minusDays(key.ahead);
            items.add(new ItemUse(key.item, day.isBefore(earliest) ? earliest : day, making, milligrams(making, g)));
        });
    }

    /** Bought by need; staples are kept at par and water is free. */
    static boolean byNeed(Ingredient ingredient) {
        return !ingredient.isStaple() && !ingredient.free();
    }
}
