package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.share.MenuMix;
import croftboard.measure.Ratio;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Kasavana and Smith's method on a published key (trade.md B4, [MIX]): sold, cost, price of seven salads; 1,600 sold, margin
 * 5,334.05, average 3.33. The key's classes cut popularity at 7 to 8 percent; by the method's own 70 percent rule (10 percent of
 * seven dishes' units) the fourth, with 8.75 percent, is not popular. Both thresholds are held here.
 */
class MenuMixOutsideTest {
    private static final long[][] KEY = {{210, 205, 450}, {63, 136, 450}, {390, 177, 450}, {140, 116, 530}, {277, 186, 565},
        {80, 163, 565}, {440, 135, 500}};

    private static MenuMix mix(Ratio popular) {
        List<MenuMix.Sold> sold = new java.util.ArrayList<>();
        for (int i = 0; i < KEY.length; i++) {
            sold.add(new MenuMix.Sold("salad-" + (i + 1), KEY[i][0] * 1000, Ratio.of(KEY[i][2] - KEY[i][1])));
        }
        return MenuMix.of(sold, popular);
    }

    private static Map<String, String> words(MenuMix mix) {
        Map<String, String> words = new TreeMap<>();
        mix.dishes().forEach(d -> words.put(d.sold().dish(), d.word()));
        return words;
    }

    @Test
    void averageMargin_isThePublishedOne() {
        MenuMix mix = mix(MenuMix.USUAL);
        assertThat(mix.average().over(100).toDecimal(2)).isEqualByComparingTo("3.33");
        assertThat(mix.average().times(1600).over(100).toDecimal(2)).isEqualByComparingTo("5334.05");
        assertThat(mix.threshold()).isEqualTo(Ratio.of(160_000));
    }

    @Test
    void classes_atTheKeysThreshold_areThePublishedOnes() {
        assertThat(words(mix(Ratio.of(55, 100)))).isEqualTo(new TreeMap<>(Map.of("salad-1", "raise price or cut cost", "salad-2",
                "drop unless needed", "salad-3", "raise price or cut cost", "salad-4", "keep", "salad-5", "keep", "salad-6", "promote",
                "salad-7", "keep")));
    }

    @Test
    void classes_bySeventyPercent_haveTheFourthUnpopular() {
        assertThat(words(mix(MenuMix.USUAL))).containsEntry("salad-4", "promote").containsEntry("salad-5", "keep");
    }
}
