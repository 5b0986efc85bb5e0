package croftboard.demo;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.LocalCheck;
import croftboard.book.Recipe;
import croftboard.book.Vendor;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Prices of the demo book against the real offers of farms/. The base is the median over all offers of
 * the year of an
 * ingredient, one pack at list price: what a manager who does not hunt for the cheapest grower pays. At
 * the cheapest offer
 * of the year a dish may fall a little below the floor.
 */
class DemoMoneyTest {
    private static double median(String item) {
        double[] sorted = DemoBook.offers(item).mapToDouble(DemoBook::centsPerGram).sorted().toArray();
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    private static double cheapest(String item) {
        return DemoBook.offers(item).mapToDouble(DemoBook::centsPerGram).min().orElseThrow();
    }

    private static double share(Recipe dish, ToDoubleFunction<String> price) {
        double cents = DemoBook.TREE.purchased(dish).entrySet().stream()
                .filter(e -> !DemoBook.ingredient(e.getKey()).free())
                .mapToDouble(e -> price.applyAsDouble(e.getKey()) * e.getValue().toDouble()).sum();
        return cents / dish.portionsPerBatch().toDouble() / dish.sale().orElseThrow().price().value();
    }

    @Test
    void foodCost_isTwentyTwoToFortyPerCentOfPrice() {
        assertThat(DemoBook.dishes())
                .allSatisfy(d -> assertThat(share(d, DemoMoneyTest::median)).as(d.id()).isBetween(0.22,
                        0.40));
    }

    @Test
    void foodCost_atTheCheapestOfferOfTheYear_isNeverBelowEighteenPerCent() {
        assertThat(DemoBook.dishes())
                .allSatisfy(d -> assertThat(share(d, DemoMoneyTest::cheapest)).as(d.id())
                        .isGreaterThanOrEqualTo(0.18));
    }

    /** A price board of quarters and nickels, not of odd cents. */
    @Test
    void prices_endInFiveOrNought() {
        assertThat(DemoBook.dishes()).allSatisfy(d ->
                assertThat(d.sale().orElseThrow().price().value() % 5).as(d.id()).isZero());
    }

    @Test
    void onePackCostsLess_perGram_inALargerBreak() {
        DemoBook.BOOK.vendors().values().forEach(v -> v.offers().forEach(o -> {
            long before = o.price().value();
            for (Vendor.Break b : o.breaks()) {
                assertThat(b.price().value()).as(v.id() + " " + o.item()).isLessThan(before);
                before = b.price().value();
            }
        }));
    }

    /**
     * Of what a week's average menu costs at median prices, about a twelfth has no known place: the book
     * shows "unknown".
     */
    @Test
    void unknownOrigin_isAboutATwelfthOfNonStapleMoney() {
        Map<String, Vendor> vendors = DemoBook.BOOK.vendors();
        LocalCheck check = new LocalCheck(vendors, DemoBook.BOOK.kitchen().place(),
                DemoBook.BOOK.kitchen().local().orElseThrow().definition());
        double all = 0;
        double unknown = 0;
        for (Recipe dish : DemoBook.dishes().toList()) {
            double portions = dish.portionsPerBatch().toDouble();
            for (var e : DemoBook.TREE.purchased(dish).entrySet()) {
                if (DemoBook.ingredient(e.getKey()).free() || DemoBook.ingredient(e.getKey()).isStaple()) {
                    continue;
                }
                double cents = median(e.getKey()) * e.getValue().toDouble() / portions;
                long offers = DemoBook.offers(e.getKey()).count();
                long unsaid = vendors.values().stream().flatMap(v -> v.offers().stream()
                        .filter(o -> o.item().equals(e.getKey()))
                        .filter(o -> check.of(v, o).answer() == LocalCheck.Answer.UNCLASSIFIED)).count();
                all += cents;
                unknown += cents * unsaid / offers;
            }
        }
        assertThat(unknown / all).isBetween(0.04, 0.14);
    }
}
