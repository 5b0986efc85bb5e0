package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Fault;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Files as a whole: encoding, size, YAML that a book has no use for, names, files that must be there. */
class FilesTest {
    private static final String SEASONS = "seasons/seasons.yaml";
    private static final String CROPS = "seasons/crops.yaml";

    @Test
    void latin1_isRefusedWhereItBegins() {
        SmallKitchen kitchen = new SmallKitchen().change(SEASONS, "autumn:", "# d\u00e9j\u00e0\nautumn:");
        byte[] latin = kitchen.text(SEASONS).getBytes(StandardCharsets.ISO_8859_1);
        kitchen.change(SEASONS, "# d\u00e9", "# d\u00ab\u00e9").put(SEASONS, latin)
                .hasOneFault("no UTF-8 text from here on", "encoding UTF-8");
    }

    @Test
    void latin1_inACsv() {
        String csv = "kitchen/on-hand.csv";
        SmallKitchen kitchen = new SmallKitchen().change(csv, "below par", "below \u00e9t\u00e9");
        byte[] latin = kitchen.text(csv).getBytes(StandardCharsets.ISO_8859_1);
        kitchen.change(csv, "below ", "below \u00ab").put(csv, latin)
                .hasOneFault("no UTF-8 text from here on", "encoding UTF-8");
    }

    @Test
    void byteOrderMarks_areAllowed() {
        SmallKitchen kitchen = new SmallKitchen();
        for (String path : List.of("kitchen/on-hand.csv", "farms/lists/2027-W33.csv", SEASONS)) {
            kitchen.put(path, ("\ufeff" + kitchen.text(path)).getBytes(StandardCharsets.UTF_8));
        }
        assertThat(kitchen.faults()).isEmpty();
    }

    @Test
    void moreThanOneMegabyte_isRefused() {
        byte[] large = new byte[(1 << 20) + 1];
        java.util.Arrays.fill(large, (byte) '#');
        new SmallKitchen().put(CROPS, large).expectWhole(CROPS).hasOneFault("larger than 1 MB", "split it");
    }

    @Test
    void exactlyOneMegabyte_isRead() {
        byte[] large = new byte[1 << 20];
        java.util.Arrays.fill(large, (byte) '#');
        assertThat(new SmallKitchen().put(CROPS, large).faults()).isEmpty();
    }

    @Test
    void anchorsAndAliases_areRefusedEach() {
        List<Fault> faults = new SmallKitchen().put(SEASONS,
                "winter: &w W49..W12\nspring: W13..W22\nsummer: *w\nautumn: W37..W48\n").faults();
        assertThat(faults).extracting(Fault::toString).containsExactly(
                "seasons/seasons.yaml:1:9: an anchor, [&w] -> remove it and write each value where it "
                + "is used",
                "seasons/seasons.yaml:3:9: an alias, [*w], stands for another place in the file -> "
                + "write the value itself");
    }

    @Test
    void aliasBomb_isNeverExpanded() {
        StringBuilder bomb = new StringBuilder("- &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 60; i++) {
            bomb.append("- &a").append(i).append(" [").append(("*a" + (i - 1) + ", ").repeat(9))
                    .append("*a").append(i - 1).append("]\n");
        }
        List<Fault> faults = new SmallKitchen().put(CROPS, bomb.toString()).faults();
        assertThat(faults).hasSize(60 + 59 * 10 + 60).allMatch(f -> f.file().equals(CROPS));
    }

    @Test
    void placesBehindACellOfTwoLines_areExact() {
        new SmallKitchen().change("kitchen/on-hand.csv", "salt,4 lb,2027-06-01,,,,,below par",
                "salt,4 lb,2027-06-01,,,,,\"below\npar\"\nsalt,\u00ab-4 lb,2027-06-01,,,,,")
                .hasOneFault("[-4] is negative", "write it like");
        new SmallKitchen().change("kitchen/on-hand.csv", "salt,4 lb,2027-06-01,,,,,below par",
                "salt,4 lb,2027-06-01,,,,\u00ab12 June,\"below\npar\"")
                .hasOneFault("[12 June] is no date", "write a date");
    }

    @Test
    void placeInsideAQuotedLine_isExact() {
        new SmallKitchen().change("recipes/components.yaml",
                "{use: \"2 oz thyme, leaves\", substitute: plan}",
                "{use: '2 oz thyme, \u00ableafs', substitute: plan}")
                .hasOneFault("[thyme] has no cut [leafs]", "did you mean [leaves]?");
    }

    @Test
    void tag_isRefused() {
        new SmallKitchen().change(SEASONS, "winter: W49", "winter: \u00ab!!str W49")
                .hasOneFault("a tag", "remove it");
    }

    @Test
    void secondDocument_isRefused() {
        new SmallKitchen().change(SEASONS, "summer:", "\u00ab---\nsummer:")
                .hasOneFault("a second document in one file", "two files");
    }

    @Test
    void directive_isRefused() {
        new SmallKitchen().put(SEASONS, "\u00ab%YAML 1.2\n---\nwinter: W49..W12\n")
                .hasOneFault("a directive", "remove it");
    }

    @Test
    void deepNesting_isRefused() {
        new SmallKitchen().put(CROPS, "- " + "[".repeat(15) + "\u00ab" + "[".repeat(500_000))
                .hasOneFault("nested more than 16 levels", "brackets");
    }

    @Test
    void tab_isRefused() {
        new SmallKitchen().put("seasons/events.yaml", "a:\n\u00ab\tname: x\n")
                .hasOneFault("a tab where spaces belong", "never with tabs");
    }

    @Test
    void colonInAText_isExplained() {
        new SmallKitchen().change("recipes/dishes.yaml", "name: Lentil bake",
                "name: Lentil bake\u00ab: the best")
                .hasOneFault("a colon where no key can stand", "put \"quotes\"");
    }

    @Test
    void openBracket_isExplained() {
        assertThat(new SmallKitchen().change(CROPS, "source: \"invented\"}", "source: \"invented\"")
                .faults()).singleElement()
                .satisfies(f -> assertThat(f.wrong()).contains("a { that is not closed"));
    }

    @Test
    void controlCharacter_isRefusedWhereItStands() {
        new SmallKitchen().change(SEASONS, "summer: W23", "summer: W\u00ab\u000023")
                .hasOneFault("a control character", "delete it");
    }

    @Test
    void keyThatIsAList_isRefused() {
        new SmallKitchen().change(SEASONS, "summer: W23", "? \u00ab[a, b]\n: W01\nsummer: W23")
                .hasOneFault("a key that is no single word", "key: value");
    }

    @Test
    void listWhereAMapBelongs_isOneFault() {
        new SmallKitchen().put("seasons/events.yaml", "\u00ab- {name: x}\n")
                .hasOneFault("the events are not written as name: ... lines", "write name:");
    }

    @Test
    void ymlEnding_isRefused() {
        new SmallKitchen().put("recipes/soups.yml", "").expectWhole("recipes/soups.yml")
                .hasOneFault("the book has no such file", "rename it to soups.yaml");
    }

    @Test
    void mistypedFileOfTheSeasons_isRefused() {
        new SmallKitchen().put("seasons/target.yaml", "").expectWhole("seasons/target.yaml")
                .hasOneFault("no such file", "did you mean seasons/targets.yaml?");
    }

    @Test
    void recipeInASubfolder_isRefused() {
        new SmallKitchen().put("recipes/soups/leek.yaml", "").expectWhole("recipes/soups/leek.yaml")
                .hasOneFault("no such file", "move it into");
    }

    @Test
    void listWithoutAWeek_isRefused() {
        new SmallKitchen().put("farms/lists/2027-W54.csv", "").expectWhole("farms/lists/2027-W54.csv")
                .hasOneFault("no week of the calendar", "2027-W33.csv");
    }

    @Test
    void pathOutOfTheBook_isRefused() {
        new SmallKitchen().put("recipes/../../x.yaml", "").expectWhole("recipes/../../x.yaml")
                .hasOneFault("no such file", "inside the book only");
    }

    @Test
    void vendorCalledHere_isRefused() {
        SmallKitchen kitchen = new SmallKitchen();
        kitchen.put("farms/here.yaml", kitchen.text("farms/stone-creamery.yaml"))
                .expectWhole("farms/here.yaml")
                .hasOneFault("a vendor cannot be called [here]", "rename the file");
    }

    @Test
    void notesAndHiddenFiles_lieThereUnread() {
        SmallKitchen kitchen = new SmallKitchen();
        String before = kitchen.reading().orElseThrow().fingerprint();
        kitchen.put("recipes/README.md", "*").put("README.md", "*").put("plans/2027-W33/1.json", "{}")
                .put("seasons/source.csv", ";");
        assertThat(kitchen.reading().orElseThrow().fingerprint()).isEqualTo(before);
    }

    @Test
    void emptyVendorFile_isRefused() {
        new SmallKitchen().put("farms/hoddle.yaml", "# nothing yet\n").expectWhole("farms/hoddle.yaml")
                .hasOneFault("the file is empty", "docs/book.md");
    }

    @Test
    void emptyClosures_areNoFault() {
        assertThat(new SmallKitchen().put("seasons/closures.yaml", "# none this year\n").faults())
                .isEmpty();
    }

    @Test
    void optionalFiles_mayBeAbsent() {
        SmallKitchen kitchen = new SmallKitchen();
        List.of("seasons/closures.yaml", "seasons/events.yaml", "seasons/targets.yaml", CROPS,
                "kitchen/on-hand.csv", "farms/lists/2027-W33.csv")
                .forEach(kitchen::remove);
        assertThat(kitchen.faults()).isEmpty();
    }

    @Test
    void noKitchen_isOneFault() {
        new SmallKitchen().remove("kitchen/kitchen.yaml").expectWhole("kitchen/kitchen.yaml")
                .hasOneFault("there is no kitchen", "docs/book.md");
    }

    @Test
    void noDemand_isOneFault() {
        new SmallKitchen().remove("seasons/demand.yaml").expectWhole("seasons/demand.yaml")
                .hasOneFault("how many portions", "docs/book.md");
    }

    @Test
    void noSeasons_isOneFault() {
        new SmallKitchen().remove(SEASONS).expectWhole(SEASONS)
                .hasOneFault("recipes name seasons", "docs/book.md");
    }

    @Test
    void nothingAtAll_namesWhatABookNeeds() {
        assertThat(BookReader.readFiles(Map.of()).faultsFound()).extracting(Fault::file)
                .containsExactly("kitchen/kitchen.yaml", "recipes/", "seasons/demand.yaml");
    }

    @Test
    void fileThatDoesNotParse_hidesNoFaultElsewhere_andIsNotMissed() {
        for (String path : new TreeMap<>(new SmallKitchen().files()).keySet()) {
            SmallKitchen kitchen = new SmallKitchen();
            boolean recipes = path.equals("recipes/dishes.yaml");
            kitchen.put(path, path.endsWith(".csv") ? "\"" : "{")
                    .change(recipes ? SEASONS : "recipes/dishes.yaml",
                    recipes ? "winter: W49" : "price: $9.50", recipes ? "winter: X49" : "price: 9.50");
            assertThat(kitchen.faults()).as(path).extracting(Fault::file)
                    .containsExactlyInAnyOrder(path, recipes ? SEASONS : "recipes/dishes.yaml");
        }
    }

    @Test
    void recordThatIsBroken_isNotMissed() {
        SmallKitchen kitchen = new SmallKitchen()
                .change("kitchen/ingredients/fresh.yaml", "  cuts:\n    diced", "  cutz:\n    diced");
        assertThat(kitchen.faults()).extracting(Fault::wrong)
                .containsExactly("unknown key [cutz] in the ingredient [carrot]");
    }
}
