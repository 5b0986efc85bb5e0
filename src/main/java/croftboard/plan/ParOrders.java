package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.measure.Ratio;
import croftboard.need.RecipeTree;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Staples: a staple that was counted below its par is ordered back to it, whole packs, from its cheapest offer;
 * no other staple is bought. What is ordered goes to the shelf at cost.
 */
final class ParOrders {
    private final Book book;
    private final List<WeekProblem.Offer> offers = new ArrayList<>();
    private final Map<String, Ratio> centsPerMg = new TreeMap<>();

    ParOrders(Book book, Market market, Stock stock, WeekIndex index) {
        this.book = book;
        List<String> names = List.copyOf(index.item.keySet());
        for (WeekProblem.Offer o : market.offers) {
            if (!book.ingredient(names.get(o.item())).isStaple()) {
                offers.add(o);
            }
        }
        stock.countedStaples.forEach((item, counted) -> refill(item, counted, index.item.get(item), market));
    }

    private void refill(String id, Ratio counted, int item, Market market) {
        Ingredient staple = book.ingredient(id);
        Ratio grams = new RecipeTree(book).purchasedGrams(staple, staple.par().orElseThrow()).minus(counted);
        if (grams.signum() <= 0) {
            return;
        }
        Optional<WeekProblem.Offer> best = market.offers.stream().filter(o -> o.item() == item)
                .filter(o -> packs(o, grams) <= o.maxPacks())
                .min(Comparator.comparing((WeekProblem.Offer o) -> Ratio.of(o.costCents(packs(o, grams))))
                        .thenComparing(o -> market.deliveries.get(o.delivery()).day())
                        .thenComparing(WeekProblem.Offer::vendor));
        best.ifPresent(o -> {
            int packs = packs(o, grams);
            centsPerMg.put(id, Ratio.of(o.costCents(packs), packs * o.packMg()));
            offers.add(new WeekProblem.Offer(o.vendor(), o.item(), o.delivery(), o.pack(), o.packMg(), o.tiers(), packs,
                    packs, o.locality(), o.whyLocal(), o.onList()));
        });
    }

    private static int packs(WeekProblem.Offer offer, Ratio grams) {
        return Math.toIntExact(grams.times(1000).over(offer.packMg()).ceil());
    }

    /** Offers to decide on: all of what is bought by need, and the fixed ones that bring staples to par. */
    List<WeekProblem.Offer> offers() {
        return List.copyOf(offers);
    }

    /** What the ordered packs of a staple cost; zero when none is ordered. */
    Ratio centsPerMg(String item) {
        return centsPerMg.getOrDefault(item, Ratio.ZERO);
    }
}
