package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.need.RecipeTree;
import croftboard.plan.WeekPlan;
import croftboard.safety.DishStatement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the plan makes the kitchen do, day by day and station by station, computed from the plan and today's book. */
final class PrepWork {
    /** Where recipes stand whose steps occupy nobody. */
    private static final Kitchen.Station NOBODY = new Kitchen.Station("", "No station", 0, Cents.ZERO);
    private final Book book;
    private final WeekPlan plan;
    private final RecipeTree tree;
    private final Map<String, String> swaps = new TreeMap<>();
    private final Map<String, Integer> depths = new HashMap<>();

    PrepWork(Book book, WeekPlan plan) {
        this.book = book;
        this.plan = plan;
        this.tree = new RecipeTree(book);
        plan.swaps().values().forEach(swaps::putAll);
    }

    /** One making of a recipe. @param portions of a dish */
    record Making(Recipe recipe, LocalDate day, LocalDate useBy, Ratio batches, Optional<Integer> portions,
            List<Item> items) {
        /** Active minutes at a station, rounded up once as in the plan. */
        long minutesAt(String station) {
            return recipe.steps().stream().filter(s -> s.station().filter(station::equals).isPresent())
                    .map(s -> s.activeMinutes().times(batches).plus(s.perPortionMinutes().times(portions.orElse(0))))
                    .reduce(Ratio.ZERO, Ratio::plus).ceil();
        }

        Ratio unattended() {
            return recipe.steps().stream().map(Recipe.Step::unattendedMinutes).reduce(Ratio.ZERO, Ratio::plus);
        }

        List<String> stations() {
            List<String> named = recipe.steps().stream().flatMap(s -> s.station().stream()).distinct().toList();
            return named.isEmpty() ? List.of(NOBODY.id()) : named;
        }
    }

    /** @param ahead days before the making on which it is thawed or cut. @param insteadOf the recipe's own ingredient */
    record Item(String id, Optional<String> cut, Amount amount, Ratio ep, Ratio ap, boolean component, int ahead,
            boolean frozen, Optional<String> insteadOf, Optional<String> note) { }

    /** @param used minutes, overtime included. @param received deliveries taken in, by vendor id */
    record Bench(Kitchen.Station station, long hands, long used, List<Making> makings, List<String> received) { }

    record Ahead(Item item, Making making) { }

    record Day(LocalDate date, List<Bench> benches, List<Ahead> ahead) { }

    /** Every day on which something is made, taken in or got ready. */
    List<Day> days() {
        TreeMap<LocalDate, List<Making>> made = new TreeMap<>();
        makings().forEach(m -> made.computeIfAbsent(m.day, k -> new ArrayList<>()).add(m));
        TreeMap<LocalDate, List<Ahead>> ahead = new TreeMap<>();
        made.values().forEach(ms -> ms.forEach(m -> m.items.stream().filter(i -> i.ahead > 0).forEach(i ->
                ahead.computeIfAbsent(m.day.minusDays(i.ahead), k -> new ArrayList<>()).add(new Ahead(i, m)))));
        TreeMap<LocalDate, List<String>> received = new TreeMap<>();
        plan.orders().forEach(o -> received.computeIfAbsent(o.delivery(), k -> new ArrayList<>()).add(o.vendor()));
        TreeMap<LocalDate, Boolean> all = new TreeMap<>();
        List.of(made.keySet(), ahead.keySet(), received.keySet()).forEach(s -> s.forEach(d -> all.put(d, true)));
        return all.keySet().stream().map(d -> new Day(d, benches(d, made.getOrDefault(d, List.of()),
                received.getOrDefault(d, List.of())), ahead.getOrDefault(d, List.of()))).toList();
    }

    private List<Bench> benches(LocalDate day, List<Making> makings, List<String> received) {
        List<Bench> benches = new ArrayList<>();
        List<Kitchen.Station> stations = new ArrayList<>(book.kitchen().stations());
        stations.add(NOBODY);
        for (Kitchen.Station station : stations) {
            List<Making> here = makings.stream().filter(m -> m.stations().contains(station.id())).toList();
            Optional<Kitchen.Receiving> dock = book.kitchen().receiving().filter(r -> r.station().equals(station.id()));
            List<String> taken = dock.isPresent() ? received : List.of();
            if (!here.isEmpty() || !taken.isEmpty()) {
                long used = here.stream().mapToLong(m -> m.minutesAt(station.id())).sum()
                        + (long) taken.size() * dock.map(Kitchen.Receiving::minutesPerDelivery).orElse(0);
                benches.add(new Bench(station, book.kitchen().handsMinutes(station.id(), day.getDayOfWeek()), used, here,
                        taken));
            }
        }
        return benches;
    }

    private List<Making> makings() {
        List<Making> all = new ArrayList<>();
        for (WeekPlan.Batch b : plan.batches()) {
            recipe(b.recipe()).ifPresent(r -> all.add(new Making(r, b.made(), b.useBy(), b.batches(), Optional.empty(),
                    items(r, b.batches()))));
        }
        for (WeekPlan.Served s : plan.menu()) {
            s.recipe().flatMap(this::recipe).ifPresent(r -> s.productions().forEach(p -> all.add(new Making(r, p.made(),
                    p.useBy(), p.batches(), Optional.of(p.portions()), items(r, p.batches())))));
        }
        all.sort(Comparator.comparing(Making::day).thenComparingInt(m -> depth(m.recipe.id()))
                .thenComparing(Making::unattended, Comparator.reverseOrder()).thenComparing(m -> m.recipe.name()));
        return all;
    }

    private Optional<Recipe> recipe(String id) {
        return Optional.ofNullable(book.recipes().get(id));
    }

    /** 0 for a recipe of ingredients only; else one more than the deepest of its parts: parts are made first. */
    private int depth(String recipe) {
        Integer known = depths.get(recipe);
        if (known != null) {
            return known;
        }
        int depth = 0;
        for (Recipe.Line line : book.recipe(recipe).ingredients()) {
            if (book.recipes().containsKey(line.item())) {
                depth = Math.max(depth, 1 + depth(line.item()));
            }
        }
        depths.put(recipe, depth);
        return depth;
    }

    private List<Item> items(Recipe recipe, Ratio batches) {
        return tree.lines(recipe).stream().map(w -> item(recipe.id(), w, batches)).toList();
    }

    /** What the plan uses on a line in place of its ingredient: of this dish on every line, or where the recipe lets it. */
    private Optional<Ingredient.Substitute> instead(String recipe, Recipe.Line line, Ingredient own) {
        Optional<String> every = Optional.ofNullable(plan.swaps().getOrDefault(recipe, new TreeMap<>())
                .get(own.id() + DishStatement.EVERY_LINE));
        if (every.isPresent()) {
            return own.substitutes().stream().filter(s -> s.use().equals(every.get())).findFirst();
        }
        return line.planSubstitute() && swaps.containsKey(own.id()) ? own.substitutes().stream().findFirst() : Optional.empty();
    }

    private Item item(String recipe, RecipeTree.Weighed w, Ratio batches) {
        Recipe.Line line = w.line();
        Amount amount = line.amount().times(batches);
        Ingredient own = book.ingredients().get(line.item());
        if (own == null) {
            return new Item(line.item(), Optional.empty(), amount, w.ep().times(batches), w.ap().times(batches), true, 0,
                    false, Optional.empty(), line.note());
        }
        Optional<Ingredient.Substitute> instead = instead(recipe, line, own);
        if (instead.isPresent()) {
            Ingredient.Substitute other = instead.get();
            Ingredient used = book.ingredient(other.use());
            Ratio ep = w.ep().times(batches).times(other.ratio());
            return new Item(used.id(), other.cut(), new Amount(ep, Unit.GRAM).in(Unit.OUNCE), ep, ep.over(used.yieldOf(other.cut())), false,
                    Math.max(line.aheadDays(), used.thawDays()), used.thawDays() > 0, Optional.of(own.name()), line.note());
        }
        return new Item(own.id(), line.cut(), amount, w.ep().times(batches), w.ap().times(batches), false,
                Math.max(line.aheadDays(), own.thawDays()), own.thawDays() > 0, Optional.empty(), line.note());
    }
}
