package croftboard.paper.served;

import croftboard.book.Recipe;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.Optional;

/** The net quantity on a label, in both systems (21 CFR 101.7): declared by the recipe, or a blank to weigh and write in. */
final class NetWeight {
    private static final int POUND_OUNCES = 16;
    private static final Ratio TENTH = Ratio.of(1, 10);

    private NetWeight() { }

    static String of(Recipe dish) {
        Optional<Amount> declared = dish.care().netWeight();
        return declared.map(a -> "Net wt " + ounces(a.base()) + " (" + a.base().floor() + " g)")
                .orElse("Net wt ________ oz  ________ g");
    }

    /** Never more than is declared: to a tenth of an ounce, downwards. */
    private static String ounces(Ratio grams) {
        Ratio ounces = TENTH.times(grams.over(Unit.OUNCE.base()).over(TENTH).floor());
        long pounds = ounces.over(POUND_OUNCES).floor();
        Ratio rest = ounces.minus(Ratio.of(pounds * POUND_OUNCES));
        String small = rest.toDecimal(1).stripTrailingZeros().toPlainString() + " oz";
        return pounds == 0 ? small : pounds + " lb" + (rest.signum() == 0 ? "" : " " + small);
    }
}
