package croftboard.plan.work;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.OnHand;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.safety.UseBy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is fetched on which day, from where, oldest first: by the plan's flows, in which counted food goes before deliveries
 * and the soonest date first. Frozen food is taken out as many days before as it thaws.
 */
public final class Pulling {
    private static final Comparator<Pull> ORDER = Comparator.comparing(Pull::day).thenComparing(Pull::from)
            .thenComparing(Pull::item).thenComparing(Pull::readyOn);
    private final Book book;
    private final WeekPlan plan;
    private final Tracing tracing;
    private final CountedFood counted;
    private final Map<OnHand, Long> left = new IdentityHashMap<>();
    private final Map<String, Packages> packages = new TreeMap<>();
    private final List<Pull> pulls = new ArrayList<>();

    /** A staple from the shelf. @param grams as purchased, for all the day's makings */
    public record Staple(LocalDate day, String item, Pull.Place from, Ratio grams) { }

    public Pulling(Book book, WeekPlan plan, Tracing tracing) {
        this.book = book;
        this.plan = plan;
        this.tracing = tracing;
        this.counted = new CountedFood(book, plan.week());
        plan.needs().stream().filter(n -> book.ingredients().containsKey(n.item()))
                .sorted(Comparator.comparing(WeekPlan.Need::item).thenComparing(WeekPlan.Need::day)).forEach(this::need);
        components();
        pulls.sort(ORDER);
    }

    /** By day, place, item, and within an item the oldest first. Together the plan's needs, and what was made earlier. */
    public List<Pull> pulls() {
        return List.copyOf(pulls);
    }

    private void need(WeekPlan.Need need) {
        Ingredient item = book.ingredient(need.item());
        List<Making> users = tracing.items().stream().filter(u -> u.item().equals(need.item()) && u.day().equals(need.day()))
                .map(Tracing.ItemUse::user).toList();
        LocalDate ready = users.stream().map(Making::day).min(Comparator.naturalOrder()).orElse(need.day());
        Pull.Place place = place(item.storage());
        long covered = 0;
        for (WeekPlan.Flow f : plan.flows()) {
            if (f.item().equals(need.item()) && f.day().equals(need.day())) {
                covered += f.mg();
                if (f.delivery().isPresent()) {
                    delivered(item, f, ready, place, users);
                } else {
                    fromCount(item, f, ready, place, users);
                }
            }
        }
        if (covered < need.mg()) {
            pulls.add(new Pull(need.day(), item.id(), place, ready, need.mg() - covered, new Pull.Missing(),
                    Optional.empty(), users));
        }
    }

    private void delivered(Ingredient item, WeekPlan.Flow flow, LocalDate ready, Pull.Place place, List<Making> users) {
        LocalDate on = flow.delivery().orElseThrow();
        Pull.Delivered source = packages.computeIfAbsent(item.id() + " " + on, k -> new Packages(plan, item.id(), on))
                .take(on, flow.day(), flow.mg());
        LocalDate keeps = on.plusDays(item.keepsDays());
        boolean seven = item.storage() == Ingredient.Storage.WALK_IN
                && (item.tcs() == Ingredient.Tcs.BY_NATURE || item.tcs() == Ingredient.Tcs.UNKNOWN);
        LocalDate opened = source.openedOn().orElse(flow.day());
        pulls.add(new Pull(flow.day(), item.id(), place, ready, flow.mg(), source,
                Optional.of(seven ? UseBy.opened(opened, keeps) : keeps), users));
    }

    private void fromCount(Ingredient item, WeekPlan.Flow flow, LocalDate ready, Pull.Place place, List<Making> users) {
        long rest = flow.mg();
        List<CountedFood.Lot> lots = counted.of(item.id()).stream()
                .sorted(Comparator.comparing(CountedFood.Lot::until)).toList();
        for (CountedFood.Lot lot : lots) {
            boolean good = !lot.from().isAfter(flow.day()) && !lot.until().isBefore(flow.day());
            long take = good ? Math.min(rest, left.getOrDefault(lot.row(), lot.mg())) : 0;
            if (take > 0) {
                left.put(lot.row(), left.getOrDefault(lot.row(), lot.mg()) - take);
                rest -= take;
                boolean ice = lot.frozen() && item.thawDays() == 0;
                pulls.add(new Pull(ice ? flow.day().minusDays(thawDays()) : flow.day(), item.id(),
                        lot.frozen() ? Pull.Place.FREEZER : place, ice ? flow.day() : ready, take,
                        new Pull.Counted(lot.row()), Optional.of(lot.until()), users));
            }
        }
        if (rest > 0) {
            pulls.add(new Pull(flow.day(), item.id(), place, ready, rest, new Pull.EarlierOrders(), Optional.empty(), users));
        }
    }

    private int thawDays() {
        return book.kitchen().paperwork().thawDays();
    }

    private static Pull.Place place(Ingredient.Storage storage) {
        return switch (storage) {
            case FREEZER -> Pull.Place.FREEZER;
            case WALK_IN -> Pull.Place.WALK_IN;
            case DRY -> Pull.Place.DRY_STORE;
        };
    }

    /** What was made on an earlier day or counted, gathered by batch and day. */
    private void components() {
        record Key(LocalDate day, Object source) { }
        Map<Key, List<PartUse>> gathered = new LinkedHashMap<>();
        for (PartUse u : tracing.parts()) {
            boolean today = u.batch().filter(b -> b.day().equals(u.user().day())).isPresent();
            if (!today && !u.uncovered()) {
                Object source = u.batch().<Object>map(System::identityHashCode).orElseGet(() ->
                        "count " + book.onHand().indexOf(u.counted().orElseThrow()));
                gathered.computeIfAbsent(new Key(u.user().day(), source), k -> new ArrayList<>()).add(u);
            }
        }
        gathered.forEach((key, uses) -> component(key.day, uses));
    }

    private void component(LocalDate wanted, List<PartUse> uses) {
        PartUse first = uses.get(0);
        long mg = uses.stream().mapToLong(PartUse::mg).sum();
        List<Making> users = uses.stream().map(PartUse::user).toList();
        Recipe recipe = book.recipe(first.component());
        Pull.Place place = recipe.hold() == Recipe.Hold.AMBIENT ? Pull.Place.DRY_STORE : Pull.Place.WALK_IN;
        if (first.batch().isPresent()) {
            pulls.add(new Pull(wanted, recipe.id(), place, wanted, mg, new Pull.Made(first.batch().get()),
                    Optional.of(first.batch().get().useBy()), users));
            return;
        }
        OnHand row = first.counted().orElseThrow();
        CountedFood.Lot lot = counted.of(recipe.id()).stream().filter(l -> l.row() == row).findFirst().orElseThrow();
        pulls.add(new Pull(lot.frozen() ? wanted.minusDays(thawDays()) : wanted, recipe.id(),
                lot.frozen() ? Pull.Place.FREEZER : place, wanted, mg, new Pull.Counted(row), Optional.of(lot.until()), users));
    }

    /** Staples by day of making, in the order of their ids. */
    public List<Staple> staples() {
        record Key(LocalDate day, String item) { }
        Map<Key, Ratio> grams = new TreeMap<>(Comparator.comparing(Key::day).thenComparing(Key::item));
        for (Making m : tracing.makings()) {
            m.items().stream().filter(i -> !i.component() && book.ingredient(i.id()).isStaple())
                    .forEach(i -> grams.merge(new Key(m.day(), i.id()), i.ap(), Ratio::plus));
        }
        return grams.entrySet().stream().map(e -> new Staple(e.getKey().day, e.getKey().item,
                place(book.ingredient(e.getKey().item).storage()), e.getValue())).toList();
    }
}
