package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.safety.DishStatement;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a changed plan means for those who work from it. Nothing that is equal.
 *
 * @param pullNow food on sale that may not be sold any longer, by slot: it comes before everything else
 */
public record Consequences(List<Pull> pullNow, List<OrderChange> orders, List<DishChange> dishes, List<PrepChange> prep,
        List<CardChange> cards) {

    /** ADD: a new order. AGAIN: another than was sent. CANCEL: nothing any more. COMES: past its cut-off, nothing to send. */
    public enum Kind { ADD, AGAIN, CANCEL, COMES }

    /** @param why in words */
    public record Pull(String slot, String recipe, String why) { }

    public record OrderChange(Kind kind, String vendor, LocalDate delivery, LocalDateTime cutOff, List<LineChange> lines,
            long before, long now) { }

    public record LineChange(String item, String pack, int before, int now) { }

    /** A slot in which another dish, another number of portions, or nothing stands. */
    public record DishChange(String slot, List<LocalDate> days, Optional<String> before, Optional<String> now,
            int portionsBefore, int portionsNow) { }

    /** Batches of a recipe made on a day. */
    public record PrepChange(LocalDate day, String recipe, Ratio before, Ratio now) { }

    /**
     * A card or label to be printed anew.
     *
     * @param statementBefore of the same dish; equal to {@code statement} when only a date or the list of ingredients
     *     differs, empty for another dish
     */
    public record CardChange(String slot, String recipe, boolean onSale, Optional<String> statementBefore, String statement,
            Optional<LocalDate> useBy) {
        public boolean statementChanges() {
            return statementBefore.isPresent() && !statementBefore.get().equals(statement);
        }
    }

    /** @param now what is on sale then is named first */
    public static Consequences of(Book book, WeekPlan before, WeekPlan after, List<Change> changes, LocalDateTime now) {
        Reader reader = new Reader(book, before, after, now);
        return new Consequences(reader.pull(changes), reader.orders(changes), reader.dishes(), reader.prep(), reader.cards());
    }

    public boolean nothing() {
        return pullNow.isEmpty() && orders.isEmpty() && dishes.isEmpty() && prep.isEmpty() && cards.isEmpty();
    }

    private record Reader(Book book, WeekPlan before, WeekPlan after, LocalDateTime now) {
        private static <K, V> Set<K> keys(SortedMap<K, V> a, SortedMap<K, V> b) {
            Set<K> all = new TreeSet<>(a.comparator());
            all.addAll(a.keySet());
            all.addAll(b.keySet());
            return all;
        }

        List<Pull> pull(List<Change> changes) {
            List<Pull> all = new ArrayList<>();
            for (WeekPlan.Served row : before.menu()) {
                for (Change c : changes) {
                    if (c instanceof Change.BatchLost lost && row.recipe().isPresent() && onSale(row)
                            && row.productions().stream().anyMatch(p -> holds(row.recipe().get(), p, lost))) {
                        all.add(new Pull(row.slot(), row.recipe().get(), lost.sentence()));
                    }
                }
            }
            return all;
        }

        /** The lost batch itself, or a dish made since that may hold it. */
        private boolean holds(String recipe, WeekPlan.Production made, Change.BatchLost lost) {
            boolean itself = recipe.equals(lost.recipe()) && made.made().getDayOfWeek() == lost.day();
            boolean since = before.batches().stream().anyMatch(b -> b.recipe().equals(lost.recipe())
                    && b.made().getDayOfWeek() == lost.day() && !made.made().isBefore(b.made()));
            return !made.made().isAfter(now.toLocalDate()) && (itself || since && within(recipe, lost.recipe()));
        }

        private boolean within(String recipe, String part) {
            Recipe of = book.recipes().get(recipe);
            return of != null && of.ingredients().stream().anyMatch(l -> l.item().equals(part)
                    || book.recipes().containsKey(l.item()) && within(l.item(), part));
        }

        private boolean onSale(WeekPlan.Served row) {
            LocalDate today = now.toLocalDate();
            return row.recipe().isPresent() && !row.days().get(0).isAfter(today)
                    && !row.days().get(row.days().size() - 1).isBefore(today);
        }

        List<OrderChange> orders(List<Change> changes) {
            SortedMap<String, WeekPlan.Order> was = byKey(before);
            SortedMap<String, WeekPlan.Order> is = byKey(after);
            List<OrderChange> all = new ArrayList<>();
            for (String key : keys(was, is)) {
                Optional<WeekPlan.Order> a = Optional.ofNullable(was.get(key));
                Optional<WeekPlan.Order> b = Optional.ofNullable(is.get(key));
                List<LineChange> lines = lines(a, b);
                if (!lines.isEmpty()) {
                    WeekPlan.Order any = b.or(() -> a).orElseThrow();
                    Kind kind = any.cutOff().isBefore(now) || late(any, changes) ? Kind.COMES : a.isEmpty() ? Kind.ADD
                            : b.isEmpty() ? Kind.CANCEL : Kind.AGAIN;
                    all.add(new OrderChange(kind, any.vendor(), any.delivery(), any.cutOff(), lines,
                            a.map(WeekPlan.Order::total).orElse(0L), b.map(WeekPlan.Order::total).orElse(0L)));
                }
            }
            all.sort(Comparator.comparing(OrderChange::cutOff).thenComparing(OrderChange::vendor)
                    .thenComparing(OrderChange::delivery));
            return all;
        }

        /** What comes late comes as it was ordered: nobody is to be told. */
        private static boolean late(WeekPlan.Order order, List<Change> changes) {
            return changes.stream().anyMatch(c -> c instanceof Change.Late l && l.vendor().equals(order.vendor())
                    && (l.day() == order.delivery().getDayOfWeek() || l.until() == order.delivery().getDayOfWeek()));
        }

        private static SortedMap<String, WeekPlan.Order> byKey(WeekPlan plan) {
            SortedMap<String, WeekPlan.Order> all = new TreeMap<>();
            plan.orders().forEach(o -> all.put(o.vendor() + " " + o.delivery(), o));
            return all;
        }

        private static List<LineChange> lines(Optional<WeekPlan.Order> a, Optional<WeekPlan.Order> b) {
            SortedMap<List<String>, Integer> was = packs(a);
            SortedMap<List<String>, Integer> is = packs(b);
            return keys(was, is).stream().filter(k -> !was.getOrDefault(k, 0).equals(is.getOrDefault(k, 0)))
                    .map(k -> new LineChange(k.get(0), k.get(1), was.getOrDefault(k, 0), is.getOrDefault(k, 0))).toList();
        }

        private static SortedMap<List<String>, Integer> packs(Optional<WeekPlan.Order> order) {
            SortedMap<List<String>, Integer> all = new TreeMap<>(Comparator.comparing((List<String> k) -> k.get(0))
                    .thenComparing(k -> k.get(1)));
            order.ifPresent(o -> o.lines().forEach(l -> all.merge(List.of(l.item(), l.pack()), l.packs(), Integer::sum)));
            return all;
        }

        private static Map<String, WeekPlan.Served> rows(WeekPlan plan) {
            Map<String, WeekPlan.Served> all = new TreeMap<>();
            plan.menu().forEach(r -> all.put(r.slot(), r));
            return all;
        }

        List<DishChange> dishes() {
            Map<String, WeekPlan.Served> was = rows(before);
            Map<String, WeekPlan.Served> is = rows(after);
            List<DishChange> all = new ArrayList<>();
            before.menu().stream().filter(r -> !is.containsKey(r.slot())).forEach(r -> all.add(new DishChange(r.slot(),
                    r.days(), r.recipe(), Optional.empty(), r.portions(), 0)));
            for (WeekPlan.Served r : after.menu()) {
                Optional<WeekPlan.Served> old = Optional.ofNullable(was.get(r.slot()));
                Optional<String> dish = old.flatMap(WeekPlan.Served::recipe);
                int portions = old.map(WeekPlan.Served::portions).orElse(0);
                if (!dish.equals(r.recipe()) || portions != r.portions()) {
                    all.add(new DishChange(r.slot(), r.days(), dish, r.recipe(), portions, r.portions()));
                }
            }
            all.sort(Comparator.comparing((DishChange d) -> d.days().get(0)).thenComparing(DishChange::slot));
            return all;
        }

        List<PrepChange> prep() {
            SortedMap<List<String>, Ratio> was = makings(before);
            SortedMap<List<String>, Ratio> is = makings(after);
            return keys(was, is).stream().filter(k -> !was.getOrDefault(k, Ratio.ZERO).equals(is.getOrDefault(k, Ratio.ZERO)))
                    .map(k -> new PrepChange(LocalDate.parse(k.get(0)), k.get(1), was.getOrDefault(k, Ratio.ZERO),
                            is.getOrDefault(k, Ratio.ZERO))).toList();
        }

        private static SortedMap<List<String>, Ratio> makings(WeekPlan plan) {
            SortedMap<List<String>, Ratio> all = new TreeMap<>(Comparator.comparing((List<String> k) -> k.get(0))
                    .thenComparing(k -> k.get(1)));
            plan.batches().forEach(b -> all.merge(List.of(b.made().toString(), b.recipe()), b.batches(), Ratio::plus));
            plan.menu().forEach(r -> r.productions().forEach(p -> all.merge(List.of(p.made().toString(),
                    r.recipe().orElseThrow()), p.batches(), Ratio::plus)));
            return all;
        }

        List<CardChange> cards() {
            Map<String, WeekPlan.Served> was = rows(before);
            List<CardChange> all = new ArrayList<>();
            for (WeekPlan.Served r : after.menu()) {
                if (r.recipe().isEmpty() || !book.recipes().containsKey(r.recipe().get())) {
                    continue;
                }
                Optional<WeekPlan.Served> same = Optional.ofNullable(was.get(r.slot()))
                        .filter(o -> o.recipe().equals(r.recipe()));
                Optional<String> old = same.map(o -> statement(before, o.recipe().orElseThrow()));
                String statement = statement(after, r.recipe().get());
                if (same.isEmpty() || !old.get().equals(statement) || !dates(same.get()).containsAll(dates(r))
                        || !ingredients(before, r.recipe().get()).equals(ingredients(after, r.recipe().get()))) {
                    all.add(new CardChange(r.slot(), r.recipe().get(), onSale(r), old, statement, dates(r).stream()
                            .reduce((a, b) -> b)));
                }
            }
            all.sort(Comparator.comparing((CardChange c) -> !c.onSale()).thenComparing(c -> !c.statementChanges()));
            return all;
        }

        private static List<LocalDate> dates(WeekPlan.Served row) {
            return row.productions().stream().map(WeekPlan.Production::useBy).toList();
        }

        /** A label lists them, also where the statement of allergens stays. */
        private List<Ingredient> ingredients(WeekPlan plan, String recipe) {
            return DishStatement.plannedIngredients(book, recipe, plan.swaps().getOrDefault(recipe, new TreeMap<>()));
        }

        private String statement(WeekPlan plan, String recipe) {
            return DishStatement.planned(book, recipe, plan.swaps().getOrDefault(recipe, new TreeMap<>())).sentence();
        }
    }
}
