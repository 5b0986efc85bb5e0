package croftboard.paper.served;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.book.Vendor;
import croftboard.book.Vendor.Whence;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.plan.WeekPlan;
import croftboard.safety.DishStatement;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which farms deliver for a dish: from this plan's orders and what is used of each delivery, through every component, and
 * from nothing else. Orders that were not sent bring nothing. Stock has no farm. Where two vendors bring the same food on
 * the same day, both stand behind every use of it.
 */
final class Origins {
    private final PaperContext context;
    private final Book book;

    Origins(PaperContext context) {
        this.context = context;
        this.book = context.book();
    }

    /**
     * @param growers foods by farm name, where the farm itself grew them
     * @param makers foods by the name of who made them
     * @param orders that bring them
     */
    record Behind(SortedMap<String, SortedSet<String>> growers, SortedMap<String, SortedSet<String>> makers,
            Set<OrderKey> orders) {

        /** {@code Grown by A (carrots), B (kale). Made by C (yogurt).} Empty when nobody is known. */
        Optional<String> sentence() {
            String grown = growers.isEmpty() ? "" : "Grown by " + list(growers) + ".";
            String made = makers.isEmpty() ? "" : "Made by " + list(makers) + ".";
            String both = (grown + " " + made).strip();
            return both.isEmpty() ? Optional.empty() : Optional.of(both);
        }

        private static String list(SortedMap<String, SortedSet<String>> sources) {
            return String.join(", ", sources.entrySet().stream().map(e -> e.getKey() + " (" + String.join(", ", e.getValue())
                    + ")").toList());
        }
    }

    /** Behind what is served of the slot on that day. */
    Behind of(WeekPlan.Served served, LocalDate day) {
        Behind behind = new Behind(new TreeMap<>(), new TreeMap<>(), new TreeSet<>());
        Optional<WeekPlan.Production> made = OnOffer.production(served, day);
        Recipe dish = served.recipe().map(book.recipes()::get).orElse(null);
        if (made.isPresent() && dish != null) {
            Map<String, String> swaps = context.plan().swaps().getOrDefault(dish.id(), new TreeMap<>());
            trace(dish, true, made.get().made(), made.get().lastServed(), swaps, behind);
        }
        return behind;
    }

    private void trace(Recipe recipe, boolean dish, LocalDate made, LocalDate last, Map<String, String> swaps,
            Behind behind) {
        for (Recipe.Line line : recipe.ingredients()) {
            Recipe part = book.recipes().get(line.item());
            if (part != null) {
                batch(part, made, last).ifPresent(b -> trace(part, false, b.made(), b.lastServed(), swaps, behind));
                continue;
            }
            String used = DishStatement.used(line, dish, swaps);
            Ingredient ingredient = book.ingredients().get(used);
            if (ingredient != null) {
                int ahead = Math.max(line.aheadDays(), ingredient.thawDays());
                deliveries(ingredient, made.minusDays(ahead), behind);
            }
        }
    }

    /** By the rule that placed the batches: the first that is ready and lasts. */
    private Optional<WeekPlan.Batch> batch(Recipe part, LocalDate use, LocalDate last) {
        return context.plan().batches().stream().filter(b -> b.recipe().equals(part.id()))
                .filter(b -> !b.made().plusDays(part.leadDays()).isAfter(use) && !b.lastServed().isBefore(last))
                .min(Comparator.comparing(WeekPlan.Batch::made));
    }

    private void deliveries(Ingredient ingredient, LocalDate day, Behind behind) {
        for (WeekPlan.Flow flow : context.plan().flows()) {
            if (flow.mg() > 0 && flow.item().equals(ingredient.id()) && flow.day().equals(day) && flow.delivery().isPresent()) {
                context.plan().orders().stream().filter(o -> o.delivery().equals(flow.delivery().get()))
                        .forEach(o -> order(o, ingredient, behind));
            }
        }
    }

    private void order(WeekPlan.Order order, Ingredient ingredient, Behind behind) {
        for (WeekPlan.OrderLine line : order.lines()) {
            if (line.item().equals(ingredient.id()) && line.packs() > 0) {
                behind.orders().add(OrderKey.of(order));
                Vendor vendor = book.vendors().get(order.vendor());
                if (vendor != null && !context.notSent().contains(OrderKey.of(order))) {
                    vendor.offers().stream().filter(o -> o.item().equals(line.item()) && o.pack().equals(line.pack()))
                            .findFirst().ifPresent(o -> name(vendor, o, ingredient, behind));
                }
            }
        }
    }

    private void name(Vendor vendor, Vendor.Offer offer, Ingredient ingredient, Behind behind) {
        at(vendor, offer.grownAt()).filter(v -> v.kind() == Vendor.Kind.GROWER).ifPresent(v -> behind.growers().computeIfAbsent(v.name(), k -> new TreeSet<>())
                .add(ingredient.label()));
        at(vendor, offer.processedAt()).ifPresent(v -> behind.makers().computeIfAbsent(v.name(), k -> new TreeSet<>())
                .add(ingredient.label()));
    }

    /** A vendor of the book; a bare place or an unknown one has no name. */
    private Optional<Vendor> at(Vendor vendor, Whence whence) {
        if (whence instanceof Whence.Here) {
            return Optional.of(vendor);
        }
        return whence instanceof Whence.AtVendor other ? Optional.ofNullable(book.vendors().get(other.vendor()))
                : Optional.empty();
    }
}
