package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Files made to be slow or deep end in faults like any other; a reading that hangs or overflows
 * fails the build by itself.
 */
class PathologicalTest {
    private static final String COMPONENT =
            ": {name: x, kind: component, makes: 1 lb, batch_step: 1, life: 1 day, hold: cold, ";

    private static String repeat(int count, IntFunction<String> line) {
        return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining());
    }

    private static int faultsWith(String path, String content) {
        return new SmallKitchen().put(path, content).faults().size();
    }

    @Test
    void chainOfSixThousandRecipes_isWalkedWithoutRecursion() {
        String chain = repeat(6_000, i -> "r" + i + COMPONENT + "ingredients: [1 lb "
                + (i == 5_999 ? "salt" : "r" + (i + 1)) + "], steps: [{do: x}]}\n");
        assertThat(faultsWith("recipes/chain.yaml", chain)).isZero();
    }

    @Test
    void ringOfSixThousandRecipes_isToldShortly() {
        String ring = repeat(6_000, i -> "r" + i + COMPONENT + "ingredients: [1 lb r" + (i + 1) % 6_000
                + "], steps: [{do: x}]}\n");
        assertThat(new SmallKitchen().put("recipes/ring.yaml", ring).faults()).singleElement()
                .satisfies(f -> assertThat(f.wrong()).hasSizeLessThan(200).contains("r0 -> r1 -> r2")
                .endsWith("... -> r0"));
    }

    @Test
    void twoHundredThousandUnknownKeys_areTold() {
        assertThat(faultsWith("seasons/demand.yaml", repeat(70_000, i -> "linex" + i + ": 1\n")
                + "lines: {}\n")).isGreaterThan(70_000);
    }

    @Test
    void thousandsOfDanglingIds_areTold() {
        String lines = repeat(15_000, i -> "    - 1 lb carrot-like-" + i + "\n");
        assertThat(faultsWith("recipes/zz.yaml",
                "broth:\n  name: x\n  kind: component\n  makes: 1 lb\n  batch_step: 1\n  life: 1 day\n"
                + "  hold: cold\n  steps: [{do: x}]\n  ingredients:\n" + lines)).isEqualTo(15_000);
    }

    @Test
    void thousandsOfOverlappingWeeks_areTold() {
        assertThat(faultsWith("seasons/targets.yaml",
                repeat(20_000, i -> "- {weeks: W01..W53, local: 1%}\n"))).isEqualTo(19_999);
    }

    @Test
    void longTextsInTypedValues_areRefusedUnparsed() {
        for (String nasty : new String[] {"1".repeat(300_000), "1-".repeat(100_000), "a-".repeat(100_000)
                + "!", " ".repeat(300_000) + "x",
            "$" + "9".repeat(300_000), "9".repeat(300_000) + "%", "W" + "0".repeat(300_000),
            "1/".repeat(100_000)}) {
            SmallKitchen kitchen = new SmallKitchen();
            for (String value : new String[] {"makes: 24 lb", "portion: 12 oz", "price: $9.50",
                    "life: 4 days", "loss: 13%", "draw: 1.05",
                "batch_step: 1/4", "main: lentil", "hold: hot", "station: hot"}) {
                kitchen.change("recipes/dishes.yaml", value, value.substring(0, value.indexOf(' ')) + " \""
                        + nasty.substring(0, nasty.length() / 12) + "\"");
            }
            assertThat(kitchen.faults()).allMatch(f -> f.toString().length() < 400);
        }
    }

    @Test
    void bracketsColonsAndQuotes_byTheHundredThousand() {
        for (String nasty : new String[] {"[", "{", "]", "- ", "? ", ": ", "a: ", "\"", "'", "&a ", "*a ",
                "!t ", "%", "|\n", "#", ",", "\n", "\r", "\t", "a\n", "[a,", "{a: "}) {
            SmallKitchen kitchen = new SmallKitchen()
                    .put("seasons/crops.yaml", nasty.repeat(500_000 / nasty.length()));
            assertThat(kitchen.faults()).as(nasty).allMatch(f -> f.file().equals("seasons/crops.yaml"));
        }
    }

    @Test
    void commasAndQuotesInACsv_byTheHundredThousand() {
        for (String nasty : new String[] {",", "\"", "\n", "\"\"", ",\n", "a", "\"a\"b", "\r"}) {
            String content = "item,amount,received,made,opened,frozen,thawed,note\n"
                    + nasty.repeat(500_000 / nasty.length());
            assertThat(new SmallKitchen().put("kitchen/on-hand.csv", content).faults()).as(nasty)
                    .allMatch(f -> f.file().equals("kitchen/on-hand.csv"));
        }
    }
}
