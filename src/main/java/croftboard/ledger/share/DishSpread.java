package croftboard.ledger.share;

import croftboard.ledger.Left;
import croftboard.ledger.Ledger;
import croftboard.ledger.Quantity;
import croftboard.ledger.Sale;
import croftboard.measure.Ratio;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The money of a share over the dishes that were sold: what was paid for an ingredient is spread by what each dish's recipe
 * takes of it and how many portions were sold. What no dish sold takes stands under {@link #NO_DISH}. To the cent: the
 * dishes' sum is the share's money.
 */
public final class DishSpread {
    /** Key of what is bought and in no dish that was sold, or not matched to an ingredient. */
    public static final String NO_DISH = "";

    private DishSpread() { }

    /** Grams as purchased of each ingredient in one portion of a dish; empty for what is no dish of the book. */
    public interface Uses {
        Map<String, Ratio> perPortion(String dish);
    }

    /** Portions sold by dish: as the register told; by the production sheets where there is no register's report at all. */
    public static SortedMap<String, Quantity> sold(Ledger ledger, LocalDate from, LocalDate to) {
        SortedMap<String, Quantity> sold = new TreeMap<>();
        ledger.entries(Sale.class, from, to).stream().filter(s -> s.ours() && s.dish().isPresent())
                .forEach(s -> sold.merge(s.dish().orElseThrow(), s.units(), Quantity::plus));
        if (sold.isEmpty()) {
            ledger.entries(Left.class, from, to).stream().filter(l -> l.sold().isPresent())
                    .forEach(l -> sold.merge(l.dish(), l.sold().orElseThrow(), Quantity::plus));
        }
        sold.values().removeIf(q -> q.signum() <= 0);
        return sold;
    }

    public static SortedMap<String, Money> of(Share share, Map<String, Quantity> sold, Uses uses) {
        Map<String, SortedMap<String, Ratio>> weights = weights(sold, uses);
        SortedMap<String, Money> dishes = new TreeMap<>();
        share.by(l -> l.receipt().item().orElse("")).forEach((item, money) -> {
            SortedMap<String, Ratio> dishesOfItem = weights.getOrDefault(item, new TreeMap<>());
            if (dishesOfItem.isEmpty()) {
                dishes.merge(NO_DISH, money, Money::plus);
            } else {
                spread(money, dishesOfItem).forEach((dish, part) -> dishes.merge(dish, part, Money::plus));
            }
        });
        return dishes;
    }

    /** By ingredient, the grams that each dish sold took. */
    private static Map<String, SortedMap<String, Ratio>> weights(Map<String, Quantity> sold, Uses uses) {
        Map<String, SortedMap<String, Ratio>> weights = new TreeMap<>();
        sold.forEach((dish, portions) -> uses.perPortion(dish).forEach((item, grams) -> {
            if (grams.signum() > 0) {
                weights.computeIfAbsent(item, k -> new TreeMap<>()).put(dish, grams.times(portions.thousandths()));
            }
        }));
        return weights;
    }

    private static Map<String, Money> spread(Money money, SortedMap<String, Ratio> weights) {
        List<String> dishes = List.copyOf(weights.keySet());
        List<Ratio> by = List.copyOf(weights.values());
        long[][] parts = {cents(money.local(), by), cents(money.notLocal(), by), cents(money.unclassified(), by),
            cents(money.mixedIn(), by), cents(money.mixedInPart(), by), cents(money.mixedOut(), by),
            cents(money.mixedOutPart(), by)};
        Map<String, Money> all = new TreeMap<>();
        for (int i = 0; i < dishes.size(); i++) {
            all.put(dishes.get(i), new Money(parts[0][i], parts[1][i], parts[2][i], parts[3][i], parts[4][i], parts[5][i],
                    parts[6][i]));
        }
        return all;
    }

    /** Whole cents in these proportions: each rounded down, the cents that are left go to the largest remainders. */
    static long[] cents(long cents, List<Ratio> weights) {
        Ratio all = weights.stream().reduce(Ratio.ZERO, Ratio::plus);
        long amount = Math.abs(cents);
        long[] parts = new long[weights.size()];
        List<Ratio> rests = new ArrayList<>();
        long given = 0;
        for (int i = 0; i < parts.length; i++) {
            Ratio exact = weights.get(i).times(new Ratio(BigInteger.valueOf(amount), BigInteger.ONE)).over(all);
            parts[i] = exact.floor();
            rests.add(exact.minus(Ratio.of(parts[i])));
            given += parts[i];
        }
        List<Integer> largestFirst = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            largestFirst.add(i);
        }
        largestFirst.sort(Comparator.comparing((Integer i) -> rests.get(i)).reversed().thenComparing(i -> i));
        for (int i = 0; i < amount - given; i++) {
            parts[largestFirst.get(i)]++;
        }
        for (int i = 0; i < parts.length; i++) {
            parts[i] *= Long.signum(cents);
        }
        return parts;
    }
}
