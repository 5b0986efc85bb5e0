package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.DefinedUnit;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sizes of units against the definitions that the org.fhir:ucum library carries (ucum-essence.xml 2.2). The
 * library's own conversion keeps only the digits of the definition (231 cubic inches: three), so the chain of
 * definitions is followed here exactly.
 */
class UcumOutsideTest {
    private static final Pattern TERM = Pattern.compile("(\\[\\w+]|[a-zA-Z]+)(\\d)?(?:/(\\d+))?");
    private static final Map<String, Ratio> GIVEN = Map.of("cm", Ratio.ONE, "dm", Ratio.of(10), "mL", Ratio.ONE,
            "g", Ratio.ONE, "mg", Ratio.of(1, 1000), "s", Ratio.of(1, 60));
    private static UcumEssenceService ucum;

    @BeforeAll
    static void read() throws IOException, UcumException {
        try (InputStream in = UcumEssenceService.class.getResourceAsStream("/ucum-essence.xml")) {
            ucum = new UcumEssenceService(in);
        }
    }

    /** In millilitres, grams or minutes. */
    private static Ratio defined(String term) {
        Matcher m = TERM.matcher(term);
        assertThat(m.matches()).as(term).isTrue();
        Ratio one = GIVEN.get(m.group(1));
        if (one == null) {
            DefinedUnit unit = (DefinedUnit) ucum.getModel().getUnit(m.group(1));
            one = Ratio.decimal(unit.getValue().getValue().asDecimal()).times(defined(unit.getValue().getUnit()));
        }
        Ratio size = one;
        for (int power = 1; m.group(2) != null && power < Integer.parseInt(m.group(2)); power++) {
            size = size.times(one);
        }
        return m.group(3) == null ? size : size.over(Long.parseLong(m.group(3)));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"oz, [oz_av]", "lb, [lb_av]", "L, L", "tsp, [tsp_us]", "tbsp, [tbs_us]", "fl-oz, [foz_us]",
        "cup, [cup_us]", "pt, [pt_us]", "qt, [qt_us]", "gal, [gal_us]", "dry-pt, [dpt_us]", "dry-qt, [dqt_us]",
        "peck, [pk_us]", "bushel, [bu_us]", "h, h", "day, d"})
    void unit_hasExactlyTheSizeOfItsUcumCode(String name, String code) {
        assertThat(Unit.named(name).orElseThrow().base()).isEqualTo(defined(code));
    }

    /** UCUM codes the measures of nutrition labels apart; a recipe's cup must not be one of these. */
    @ParameterizedTest(name = "{0} is not {1} = {2} mL")
    @CsvSource({"cup, [cup_m], 240", "fl-oz, [foz_m], 30", "tbsp, [tbs_m], 15", "tsp, [tsp_m], 5"})
    void unit_isNotTheLabelMeasure(String name, String code, int millilitres) {
        assertThat(defined(code)).isEqualTo(Ratio.of(millilitres));
        assertThat(Unit.named(name).orElseThrow().base()).isNotEqualTo(defined(code));
    }

    /** The trap of trusting that library's own conversion: a cup given as "1" comes out as 237 mL. */
    @Test
    void libraryConversion_roundsToTheDigitsOfTheDefinition() throws UcumException {
        assertThat(ucum.convert(new Decimal("1"), "[cup_us]", "mL").asDecimal()).isEqualTo("237");
        assertThat(Unit.CUP.base()).isNotEqualTo(Ratio.of(237));
    }
}
