package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.FoodBook;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes of units against UCUM 2.2, NIST Handbook 44 Appendix C and the values printed in household tables. */
class UnitsOutsideTest {
    private static Ratio base(String amount) {
        return FoodBook.amount(amount).base();
    }

    /**
     * Exact sizes computed from the definitions of UCUM 2.2 (ucum-essence.xml, 2024-06-17); every decimal is
     * printed.
     */
    @ParameterizedTest(name = "{0} = {1} g or mL")
    @CsvSource({
        "1 lb, 453.59237",
        "1 oz, 28.349523125",
        "2000 lb, 907184.74",
        "1 gal, 3785.411784",
        "1 qt, 946.352946",
        "1 pt, 473.176473",
        "1 cup, 236.5882365",
        "1 fl-oz, 29.5735295625",
        "1 tbsp, 14.78676478125",
        "1 tsp, 4.92892159375",
        "1 bushel, 35239.07016688",
        "1 peck, 8809.76754172",
        "1 dry-qt, 1101.220942715",
        "12 oz, 340.1942775",          // 12 oz and 1 lb 4 oz: check values of the same table
        "20 oz, 566.9904625"})
    void size_isTheExactOne(String amount, BigDecimal size) {
        assertThat(base(amount)).isEqualTo(Ratio.of(size));
    }

    /** UCUM 2.2: grain 64.79891 mg, pound 7000 grains; NIST Handbook 44 App. C s. 5 says 7000 grains too. */
    @Test
    void pound_is7000Grains_ounceASixteenth() {
        assertThat(base("1 lb")).isEqualTo(Ratio.decimal("0.06479891").times(7000));
        assertThat(base("16 oz")).isEqualTo(base("1 lb"));
    }

    /** UCUM 2.2 and NIST Handbook 44 App. C: gallon 231 cubic inches, inch 2.54 cm, fluid ounce gal/128. */
    @Test
    void gallon_is231CubicInches_fluidOunceA128th() {
        assertThat(base("1 gal")).isEqualTo(cubicInches("231"));
        assertThat(base("128 fl-oz")).isEqualTo(base("1 gal"));
    }

    /** Illinois Extension, NewsID 14418: 1 bushel = 4 pecks = 32 quarts = 2150.42 cubic inches. */
    @Test
    void bushel_is2150Point42CubicInches_4Pecks_32DryQuarts() {
        assertThat(base("1 bushel")).isEqualTo(cubicInches("2150.42"));
        assertThat(base("4 peck")).isEqualTo(base("1 bushel"));
        assertThat(base("32 dry-qt")).isEqualTo(base("1 bushel"));
        assertThat(base("64 dry-pt")).isEqualTo(base("1 bushel"));
    }

    /** 15 CFR 241.1: barrel for fruits and vegetables 7,056 cubic inches = 3.281 bushels = 105 quarts. */
    @Test
    void barrel_is3Point281Bushels_105DryQuarts() {
        Ratio barrel = cubicInches("7056");
        assertThat(barrel.over(Unit.BUSHEL.base()).toDecimal(3)).isEqualByComparingTo("3.281");
        assertThat(barrel.over(Unit.DRY_QUART.base()).toDecimal(0)).isEqualByComparingTo("105");
    }

    private static Ratio cubicInches(String count) {
        return Ratio.decimal(count).times(Ratio.decimal("16.387064"));      // 2.54 cm cubed
    }

    /**
     * Ladder of NIST SP 430 (nist.gov/pml/owm/metric-household); the first four stand on TM 10-412 card
     * A-1(3) too.
     */
    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource({"3 tsp, 1 tbsp", "16 tbsp, 1 cup", "2 cups, 1 pt", "2 pt, 1 qt", "4 qt, 1 gal", "2 tbsp, 1 fl-oz",
        "48 tsp, 1 cup", "8 fl-oz, 1 cup"})
    void ladder_holdsExactly(String many, String one) {
        assertThat(base(many)).isEqualTo(base(one));
    }

    /** Rounded sizes at ucum.org/trac/ticket/120. */
    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource({"1 fl-oz, 29.5735", "1 cup, 236.5882", "1 tbsp, 14.7868", "1 tsp, 4.9289", "1 oz, 28.3495"})
    void size_roundsToThePrintedFourDecimals(String amount, BigDecimal printed) {
        assertThat(base(amount).toDecimal(4)).isEqualByComparingTo(printed);
    }

    /** NIST SP 430, printed in whole millilitres, the teaspoon to a tenth. */
    @ParameterizedTest(name = "{0} = {1} mL")
    @CsvSource({"1 tsp, 4.9", "1 tbsp, 15", "1 fl-oz, 30", "1/4 cup, 59", "1/2 cup, 118", "1 cup, 237", "1 pt, 473",
        "1 qt, 946"})
    void size_roundsToTheHouseholdTable(String amount, BigDecimal printed) {
        assertThat(base(amount).toDecimal(printed.scale())).isEqualByComparingTo(printed);
    }

    /** NIST cooking table (nist.gov/pml/owm/cooking-measurement-equivalencies), masses: within a gram of it. */
    @ParameterizedTest(name = "{0} = {1} g")
    @CsvSource({"1 oz, 28", "1/4 lb, 114", "1 lb, 454", "2.2 lb, 998"})
    void mass_isWithinAGramOfTheCookingTable(String amount, int printed) {
        assertThat(base(amount).toDouble()).isCloseTo(printed, org.assertj.core.data.Offset.offset(1.0));
    }

    /**
     * The same NIST table prints 950 mL for a quart, but 1950 mL for a half gallon and 3.84 L for a gallon:
     * its own slip. Chained values are wrong by 3 and 1.4 percent; only the exact sizes may be chained.
     */
    @ParameterizedTest(name = "{0}: {1} mL printed")
    @CsvSource({"1/2 gal, 1950, 3.0, 3.1", "1 gal, 3840, 1.4, 1.5"})
    void slipOfTheCookingTable_isNotOurs(String amount, int printed, double least, double most) {
        double percentOff = (printed / base(amount).toDouble() - 1) * 100;
        assertThat(percentOff).isBetween(least, most);
        assertThat(base("2 qt")).isEqualTo(base("1/2 gal"));
    }

    /**
     * 21 CFR 101.9(b)(5)(viii): a cup is 240 mL, a tablespoon 15, a teaspoon 5 on nutrition labels, and only
     * there.
     */
    @ParameterizedTest(name = "a label''s {0} is {1} mL, a recipe''s is not")
    @CsvSource({"1 cup, 240", "1 tbsp, 15", "1 tsp, 5", "1 fl-oz, 30"})
    void labelMeasures_areNotTheRecipes(String amount, int label) {
        assertThat(base(amount)).isLessThan(Ratio.of(label));
        assertThat(base(amount).toDouble()).isCloseTo(label, org.assertj.core.data.Percentage.withPercentage(1.5));
    }

    /**
     * UCUM values, computed: a dry quart is about 16 percent larger than a liquid one; the two never share a
     * name.
     */
    @Test
    void dryQuart_isAboutASixthLarger() {
        assertThat(base("1 dry-qt").over(base("1 qt")).toDecimal(3)).isEqualByComparingTo("1.164");
        assertThat(Unit.named("quart")).contains(Unit.QUART);
    }

    /**
     * 1964 Census of Agriculture, enumerator manual ch. VIII: 12 1/2 tons of barley at 48 lb a bushel, 520.8,
     * written 521.
     */
    @Test
    void barley_12AndAHalfTons_is521Bushels() {
        Ratio bushels = base("25000 lb").over(base("48 lb"));
        assertThat(bushels.toDecimal(1)).isEqualByComparingTo("520.8");
        assertThat(bushels.round()).isEqualTo(521);
    }

    /** Same manual: 450 bushels of ear corn, two for one shelled: 225. */
    @Test
    void earCorn_450Bushels_is225Shelled() {
        assertThat(FoodBook.amount("450 bushels").times(Ratio.of(1, 2)).base()).isEqualTo(base("225 bushels"));
    }

    /**
     * Food for a crowd, K-State county agent (ruralmessenger.com): 14 qt potato salad and 9 qt coleslaw per
     * 100.
     */
    @ParameterizedTest(name = "{0} is {2} portions of {1}")
    @CsvSource({"14 qt, 1/2 cup, 112", "9 qt, 1/3 cup, 108"})
    void crowdAmounts_holdAHundredPortions(String made, String portion, int portions) {
        assertThat(base(made).over(base(portion))).isEqualTo(Ratio.of(portions));
    }
}
