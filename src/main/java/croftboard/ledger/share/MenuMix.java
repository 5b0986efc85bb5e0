package croftboard.ledger.share;

import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which dishes sell and which earn, against thresholds that are printed: popular is a dish with more than {@code popular} of an
 * even share of all units, a good margin is more than the average of all units sold (Kasavana and Smith's published method).
 *
 * @param threshold units: more is popular. @param average cents a unit, exact
 */
public record MenuMix(Ratio popular, Ratio threshold, Ratio average, List<Dish> dishes) {
    /** 70 percent, the method's own. */
    public static final Ratio USUAL = Ratio.of(7, 10);

    /** @param units thousandths sold. @param margin cents a unit: money taken less food cost, exact */
    public record Sold(String dish, long units, Ratio margin) { }

    public record Dish(Sold sold, boolean popular, boolean earns) {
        public String word() {
            return popular ? earns ? "keep" : "raise price or cut cost" : earns ? "promote" : "drop unless needed";
        }
    }

    public static MenuMix of(List<Sold> sold, Ratio popular) {
        long all = sold.stream().mapToLong(Sold::units).sum();
        Ratio money = sold.stream().map(s -> s.margin.times(s.units)).reduce(Ratio.ZERO, Ratio::plus);
        Ratio threshold = sold.isEmpty() ? Ratio.ZERO : popular.times(all).over(sold.size());
        Ratio average = all == 0 ? Ratio.ZERO : money.over(all);
        List<Dish> dishes = new ArrayList<>();
        sold.forEach(s -> dishes.add(new Dish(s, Ratio.of(s.units).compareTo(threshold) > 0, s.margin.compareTo(average) > 0)));
        dishes.sort(Comparator.comparing((Dish d) -> -d.sold.units).thenComparing(d -> d.sold.dish));
        return new MenuMix(popular, threshold, average, List.copyOf(dishes));
    }
}
