package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Ratio;
import croftboard.safety.AcidityTable;
import croftboard.safety.AcidityTable.Treatment;
import croftboard.safety.AcidityTable.Verdict;
import croftboard.safety.Cooked;
import croftboard.safety.Cooling;
import croftboard.safety.FoodCode;
import croftboard.safety.Rule;
import croftboard.safety.TimeControl;
import croftboard.safety.UseBy;
import croftboard.safety.file.AllergenList;
import croftboard.safety.file.FoodCodes;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits of the Food Code as adopted, section and source beside each check. */
class FoodCodeOutsideTest {
    private static final FoodCode CODE_2017 = FoodCodes.of("FDA Food Code 2017 (model)");
    private static final FoodCode CODE_2013 = FoodCodes.of("Minnesota 4626 (2019)");
    private static final FoodCode UNKNOWN = FoodCodes.of("County ordinance 12 of 1999");

    private static Ratio f(String degrees) {
        return Ratio.decimal(degrees);
    }

    /** 3-501.16, WAC 246-215-03525: 41 F or less. */
    @ParameterizedTest(name = "cold at {0} F: {1}")
    @CsvSource({"41.0, true", "41.1, false", "32, true"})
    void coldHolding(String degrees, boolean pass) {
        for (FoodCode code : List.of(CODE_2017, CODE_2013, UNKNOWN)) {
            assertThat(code.coldEnough(f(degrees))).isEqualTo(pass);
        }
    }

    /** The same section: 135 F or above; 130 F only for roasts cooked or reheated by the roast table. */
    @ParameterizedTest(name = "hot at {0} F, roast {1}: {2}")
    @CsvSource({"135, false, true", "134.9, false, false", "130, true, true", "130, false, false", "129.9, true, false"})
    void hotHolding(String degrees, boolean roast, boolean pass) {
        assertThat(CODE_2017.hotEnough(f(degrees), roast)).isEqualTo(pass);
    }

    private static List<Cooling.Reading> log(String readings) {
        List<Cooling.Reading> log = new ArrayList<>();
        for (String reading : readings.split(" ")) {
            String[] parts = reading.split("@");
            log.add(new Cooling.Reading(Integer.parseInt(parts[1]), f(parts[0])));
        }
        return log;
    }

    /**
     * 3-501.14, Minnesota 4626.0385: 70 F within 2 h, 41 F within 6 h in all; a quick first stage lengthens the second.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"135@0 70@120 41@360, KEPT", "135@0 70@121 41@300, FIRST_STAGE_MISSED", "135@0 70@60 41@360, KEPT",
        "135@0 70@60 41@361, TOO_SLOW", "135@0 70@60 50@300, NOT_YET", "135@0 90@100, NOT_YET",
        "135@0 90@121, FIRST_STAGE_MISSED", "135@0 41@110, KEPT"})
    void cooling(String readings, Cooling.Verdict verdict) {
        assertThat(new Cooling(CODE_2017).ofCooked(log(readings))).isEqualTo(verdict);
    }

    /** 3-501.14(B), the same source: from ambient ingredients 41 F within 4 h: mixed 10:00, cold at 14:00 or 14:01. */
    @ParameterizedTest(name = "cold after {0} min: {1}")
    @CsvSource({"240, KEPT", "241, TOO_SLOW"})
    void coolingFromRoomTemperature(int minutes, Cooling.Verdict verdict) {
        assertThat(new Cooling(CODE_2017).ofAmbient(log("72@0 41@" + minutes))).isEqualTo(verdict);
    }

    /** 3-403.11, Minnesota 4626.0360: 165 F for 15 s within 2 h; from a sealed commercial pack 135 F. */
    @Test
    void reheating() {
        assertThat(CODE_2017.reheating(false).fahrenheit()).isEqualTo(165);
        assertThat(CODE_2017.reheating(false).seconds()).isEqualTo(15);
        assertThat(CODE_2017.limit(Rule.REHEATING_TIME).shown()).isEqualTo("2 h");
        assertThat(CODE_2017.limit(Rule.REHEATING_MICROWAVE_STAND).shown()).isEqualTo("2 min");
        assertThat(CODE_2017.reheating(true).fahrenheit()).isEqualTo(135);
        assertThat(CODE_2017.reheating(true).seconds()).isZero();
    }

    /** 3-401.11, WAC 246-215-03400 (2022): as the 2017 model; before: 155 F 15 s and poultry 165 F 15 s. */
    @ParameterizedTest(name = "{0} {1} F {2} s: 2017 {3}, 2013 {4}, unknown edition {5}")
    @CsvSource({"GROUND, 155, 17, true, true, true", "GROUND, 155, 16, false, true, false",
        "GROUND, 155, 15, false, true, false", "GROUND, 145, 180, true, true, true", "GROUND, 145, 179, false, false, false",
        "GROUND, 150, 60, true, true, true", "GROUND, 158, 0, false, true, false", "POULTRY, 165, 0, true, false, false",
        "POULTRY, 165, 15, true, true, true", "POULTRY, 164.9, 60, false, false, false", "WHOLE, 145, 15, true, true, true",
        "WHOLE, 145, 14, false, false, false", "MICROWAVE, 165, 0, true, true, true", "PLANT, 135, 0, true, true, true",
        "PLANT, 134.9, 600, false, false, false"})
    void cookingMinimums(Cooked food, String degrees, int seconds, boolean in2017, boolean in2013, boolean unknown) {
        assertThat(CODE_2017.enough(food, f(degrees), seconds)).isEqualTo(in2017);
        assertThat(CODE_2013.enough(food, f(degrees), seconds)).isEqualTo(in2013);
        assertThat(UNKNOWN.enough(food, f(degrees), seconds)).isEqualTo(unknown);
    }

    /** 3-401.11(B), the same source: every row of the roast table, a minute or second less fails. */
    @ParameterizedTest(name = "roast {0} F {1} s")
    @CsvSource({"130, 6720", "131, 5340", "133, 3360", "135, 2160", "136, 1680", "138, 1080", "140, 720", "142, 480",
        "144, 300", "145, 240", "147, 134", "149, 85", "151, 54", "153, 34", "155, 22", "157, 14", "158, 0"})
    void roasts(String degrees, int seconds) {
        for (FoodCode code : List.of(CODE_2017, CODE_2013, UNKNOWN)) {
            assertThat(code.enough(Cooked.ROAST, f(degrees), seconds)).isTrue();
            assertThat(code.enough(Cooked.ROAST, f(degrees), seconds - 1L)).isFalse();
        }
    }

    /** 3-501.17(A), Minnesota 4626.0400: marked when held more than 24 h, 7 days at most. */
    @Test
    void dateMarking() {
        assertThat(CODE_2017.dateMarked(f("24"))).isFalse();
        assertThat(CODE_2017.dateMarked(f("25"))).isTrue();
        assertThat(CODE_2017.limit(Rule.DATE_MARK_DAYS).whole()).isEqualTo(UseBy.DAYS_AT_MOST);
        assertThat(UNKNOWN.limit(Rule.DATE_MARK_DAYS).whole()).isEqualTo(UseBy.DAYS_AT_MOST);
    }

    /** 3-501.19, Wyoming chapter 3 section 62 and Florida 03F-07-5: 4 h; 6 h from 41 F while never over 70 F. */
    @Test
    void timeControl() {
        LocalDateTime ten = LocalDateTime.of(2027, 8, 17, 10, 0);
        TimeControl time = new TimeControl(CODE_2017);
        assertThat(time.discardBy(ten)).isEqualTo(ten.withHour(14));
        assertThat(time.discardByLong(ten, Optional.of(ten.withHour(13)))).isEqualTo(ten.withHour(13));
        assertThat(time.discardByLong(ten, Optional.empty())).isEqualTo(ten.withHour(16));
        assertThat(time.discardByLong(ten, Optional.of(ten.withHour(17)))).isEqualTo(ten.withHour(16));
        assertThat(CODE_2017.limit(Rule.TIME_CONTROL_LONG_MOST).whole()).isEqualTo(70);
    }

    /**
     * 1-201.10, NAC 446.025 and Georgia 40-7-1-.02: pH 4.4 and water activity 0.95 is not controlled when cooked and packed,
     * else needs an assessment. At exactly 0.92 the copies of table A differ: assessment.
     */
    @ParameterizedTest(name = "{0} pH {1} aw {2}: {3}")
    @CsvSource({"HEATED_AND_PACKED, 4.4, 0.95, NOT_CONTROLLED", "OTHER, 4.4, 0.95, ASSESS",
        "HEATED_AND_PACKED, 7, 0.91, NOT_CONTROLLED", "HEATED_AND_PACKED, 7, 0.92, ASSESS",
        "HEATED_AND_PACKED, 5.6, 0.95, NOT_CONTROLLED", "HEATED_AND_PACKED, 5.7, 0.95, ASSESS",
        "HEATED_AND_PACKED, 4.6, 0.99, NOT_CONTROLLED", "HEATED_AND_PACKED, 4.7, 0.99, ASSESS",
        "OTHER, 7, 0.87, NOT_CONTROLLED", "OTHER, 5.0, 0.88, NOT_CONTROLLED", "OTHER, 5.1, 0.88, ASSESS",
        "OTHER, 4.6, 0.92, NOT_CONTROLLED", "OTHER, 4.7, 0.92, ASSESS", "OTHER, 4.1, 0.99, NOT_CONTROLLED",
        "OTHER, 4.2, 0.99, ASSESS"})
    void acidity(Treatment treatment, String ph, String waterActivity, Verdict verdict) {
        assertThat(FoodCodes.acidity().of(treatment, f(ph), f(waterActivity))).isEqualTo(verdict);
    }

    /** A table without copies says nothing: nothing is out of control by silence. */
    @Test
    void acidityWithoutATable_needsAnAssessment() {
        assertThat(new AcidityTable(List.of()).of(Treatment.HEATED_AND_PACKED, f("3"), f("0.5"))).isEqualTo(Verdict.ASSESS);
    }

    /** NCHFP, Freezing garlic-in-oil (2015): 4 days, 40 F; an older copy says 7 days and is not used. */
    @Test
    void garlicInOil() {
        assertThat(UNKNOWN.limit(Rule.GARLIC_IN_OIL_DAYS).shown()).isEqualTo("4 days");
        assertThat(UNKNOWN.limit(Rule.GARLIC_IN_OIL_COLD).shown()).isEqualTo("40 F");
    }

    /** 3-202.11, S.C. 61-25: 41 F, eggs 45 F, hot 135 F. */
    @Test
    void receiving() {
        assertThat(CODE_2017.limit(Rule.RECEIVING_COLD).shown()).isEqualTo("41 F");
        assertThat(CODE_2017.limit(Rule.RECEIVING_EGGS).shown()).isEqualTo("45 F");
        assertThat(CODE_2017.limit(Rule.RECEIVING_HOT).shown()).isEqualTo("135 F");
    }

    @Test
    void unknownEdition_saysThatItTakesTheStricterNumber() {
        assertThat(UNKNOWN.onFile()).isFalse();
        assertThat(UNKNOWN.name()).isEqualTo(
                "stricter number of FDA Food Code 2017 (model) and FDA Food Code 2013 (model)");
        assertThat(CODE_2013.onFile()).isTrue();
        assertThat(FoodCodes.of("  fda food code  2017 ")).isEqualTo(CODE_2017);
    }

    /** Every number of every table names a source whose address is on file. */
    @Test
    void everyNumber_hasASource() {
        for (FoodCode code : List.of(CODE_2017, CODE_2013, UNKNOWN)) {
            code.limits().values().forEach(l -> assertThat(AllergenList.sources()).containsKey(l.source()));
            code.cooking().values().forEach(all -> all.forEach(m ->
                    assertThat(AllergenList.sources()).containsKey(m.source())));
        }
        FoodCodes.acidity().rows().forEach(r -> assertThat(AllergenList.sources()).containsKey(r.source()));
        AllergenList.all().forEach(a -> assertThat(AllergenList.sources()).containsKey(a.source()));
    }

    /**
     * FALCPA (P.L. 108-282) and FASTER (P.L. 117-11): nine groups. Guidance edition 5, 6 January 2025, appendix I: twelve
     * tree nuts, eleven dropped.
     */
    @Test
    void nineAllergens_andTwelveTreeNuts() {
        assertThat(AllergenList.all()).extracting(AllergenList::group).containsOnly("milk", "egg", "fish",
                "Crustacean shellfish", "tree nuts", "wheat", "peanuts", "soybeans", "sesame");
        assertThat(AllergenList.all().stream().map(AllergenList::group).distinct()).hasSize(9);
        assertThat(AllergenList.all().stream().filter(a -> a.group().equals("tree nuts"))).extracting(AllergenList::word)
                .containsExactlyInAnyOrder("almond", "black-walnut", "brazil-nut", "california-walnut", "cashew", "hazelnut",
                        "heartnut", "macadamia", "pecan", "pine-nut", "pistachio", "walnut");
        assertThat(AllergenList.droppedNuts()).hasSize(11).contains("coconut", "chestnut", "hickory nut");
        assertThat(AllergenList.all()).extracting(AllergenList::word).doesNotContain("coconut", "chestnut");
    }
}
