package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.FoodBook;
import croftboard.book.LocalCheck.Answer;
import croftboard.book.LocalCheck;
import croftboard.book.LocalRules;
import croftboard.book.Vendor;
import croftboard.measure.Cents;
import croftboard.measure.Place;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** "Local" as statutes and programmes define it, through the one function that decides it. */
class LocalDefinitionOutsideTest {
    private static final Place STORE = new Place("Store", "NY", 42.0, -76.0);

    /** A place so many straight-line miles north of the store. */
    private static Place north(String state, double miles) {
        double degrees = Math.toDegrees(miles * 1.609344 / Place.EARTH_RADIUS_KM);
        return new Place("Farm", state, STORE.latitude() + degrees, STORE.longitude());
    }

    private static Vendor.Offer offer(Optional<Ratio> localPart) {
        return new Vendor.Offer("food", Optional.empty(), "case", FoodBook.amount("10 lb"), new Cents(1000), List.of(),
                Set.of(), new Vendor.Whence.Here(), new Vendor.Whence.Nowhere(), localPart, List.of());
    }

    private static Answer answer(LocalRules.Definition definition, Place farm, Optional<Ratio> localPart) {
        Vendor vendor = new Vendor("farm", "Farm", Vendor.Kind.GROWER, farm, List.of(), Cents.ZERO, Cents.ZERO,
                Optional.empty(), List.of(), List.of(), List.of());
        return new LocalCheck(Map.of("farm", vendor), STORE, definition).of(vendor, offer(localPart)).answer();
    }

    private static LocalRules.Definition within(Integer miles, String mixed, String... states) {
        return new LocalRules.Definition("d", "say", Set.of(states), Optional.ofNullable(miles), Ratio.decimal(mixed));
    }

    /**
     * 7 U.S.C. 1932(g)(9)(A)(i): less than 400 miles of transport, or the State of origin. 400.0 is not
     * local. 399.9 straight-line miles are a lower bound of the road, so that near the limit the answer is
     * "unconfirmed", never local.
     */
    @ParameterizedTest(name = "{0} miles out of State: {1}")
    @CsvSource({"21, LOCAL", "359, LOCAL", "361, UNCLASSIFIED", "399.9, UNCLASSIFIED", "400.0, UNCLASSIFIED",
        "439, UNCLASSIFIED", "441, NOT_LOCAL", "2000, NOT_LOCAL"})
    void farmBill_400Miles(double miles, Answer expected) {
        assertThat(answer(within(400, "0.50", "NY"), north("PA", miles), Optional.empty())).isEqualTo(expected);
    }

    /** The same statute: in the State where produced, at any distance. */
    @ParameterizedTest(name = "same State, {0} miles")
    @CsvSource({"1", "399.9", "400.0", "450", "900"})
    void farmBill_sameState_isLocalAtAnyDistance(double miles) {
        assertThat(answer(within(400, "0.50", "NY"), north("NY", miles), Optional.empty())).isEqualTo(Answer.LOCAL);
    }

    /**
     * Limits in force somewhere: Connecticut s. 22-38 10 miles, Vermont before 2021 30 miles, Real Food guide
     * 150 and 250, co-ops 100, 150 and 500 (olympiafood, garlicandroses, Placerville). Each is data; a
     * nine-tenths and an eleven-tenths of it are clear cases.
     */
    @ParameterizedTest(name = "{0} miles")
    @CsvSource({"10", "30", "50", "100", "150", "250", "400", "500"})
    void anyLimit_isHeldOnBothSides(int limit) {
        LocalRules.Definition d = within(limit, "0.50");
        assertThat(answer(d, north("PA", limit * 0.89), Optional.empty())).isEqualTo(Answer.LOCAL);
        assertThat(answer(d, north("PA", limit), Optional.empty())).isEqualTo(Answer.UNCLASSIFIED);
        assertThat(answer(d, north("PA", limit * 1.11), Optional.empty())).isEqualTo(Answer.NOT_LOCAL);
    }

    /** Vermont 9 V.S.A. 2465a: local is the State, no miles; a farm a mile over the border is not local. */
    @Test
    void stateOnly_aMileOverTheBorder_isNotLocal() {
        LocalRules.Definition vermont = within(null, "0.50", "VT");
        assertThat(answer(vermont, north("VT", 120), Optional.empty())).isEqualTo(Answer.LOCAL);
        assertThat(answer(vermont, north("NH", 1), Optional.empty())).isEqualTo(Answer.NOT_LOCAL);
    }

    /**
     * Vermont 9 V.S.A. 2465a, processed food: more than 50 percent of ingredients; exactly 50 is not a
     * majority.
     */
    @ParameterizedTest(name = "{0} of ingredients: {1}")
    @CsvSource({"0.49, NOT_LOCAL", "0.50, NOT_LOCAL", "0.500001, LOCAL", "0.51, LOCAL", "1, LOCAL"})
    void vermont_exactlyHalf_isNotAMajority(String part, Answer expected) {
        assertThat(answer(within(null, "0.50", "VT"), north("VT", 5), Optional.of(Ratio.decimal(part))))
                .isEqualTo(expected);
    }

    /** New York school lunch 30 percent rule: over 51 percent State raw materials; 51 is not over 51. */
    @ParameterizedTest(name = "{0} of materials: {1}")
    @CsvSource({"0.50, NOT_LOCAL", "0.51, NOT_LOCAL", "0.511, LOCAL"})
    void newYork_over51Percent(String part, Answer expected) {
        assertThat(answer(within(null, "0.51", "NY"), north("NY", 5), Optional.of(Ratio.decimal(part))))
                .isEqualTo(expected);
    }

    /**
     * Majority of local ingredients does not help food that is made far away (Vermont: and processed or based
     * there).
     */
    @Test
    void mixedFoodMadeElsewhere_isNotLocal() {
        assertThat(answer(within(null, "0.50", "VT"), north("NY", 5), Optional.of(Ratio.ONE)))
                .isEqualTo(Answer.NOT_LOCAL);
    }

    /** New England Local Food Count 2022: $3.7 bn of $120.5 bn is printed as 3.1 percent (3.07). */
    @Test
    void share_3Point7Of120Point5_is3Point1Percent() {
        WeekPlan.Share share = new WeekPlan.Share("New England", Ratio.ZERO, 370, 11_680, 0);
        assertThat(share.total()).isEqualTo(12_050);
        assertThat(share.low().times(100).toDecimal(1)).isEqualByComparingTo("3.1");
        assertThat(share.low().times(100).toDecimal(2)).isEqualByComparingTo("3.07");
    }

    /** Unclassified money never counts as local: the low end leads, the range shows the rest. */
    @Test
    void share_withUnclassifiedMoney_isARangeThatStartsWithoutIt() {
        WeekPlan.Share share = new WeekPlan.Share("near", Ratio.ZERO, 30, 60, 10);
        assertThat(share.low()).isEqualTo(Ratio.of(3, 10));
        assertThat(share.high()).isEqualTo(Ratio.of(4, 10));
    }
}
