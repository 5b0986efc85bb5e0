package croftboard.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChangeGrammarTest {
    private final Book book = BookReader.read(java.nio.file.Path.of("").toAbsolutePath()).orElseThrow();
    private final ChangeGrammar grammar = new ChangeGrammar(book);
    private final String vendor = book.vendors().keySet().iterator().next();
    private final String item = book.vendor(vendor).offers().get(0).item();

    private ChangeGrammar.Read read(String... sentences) {
        return grammar.read(List.of(sentences));
    }

    @Test
    void sentence_readAndWritten_isTheSame_forEveryKind() {
        String recipe = book.recipes().values().stream().filter(r -> r.isDish()).findFirst().orElseThrow().id();
        List<String> all = List.of(vendor + "/" + item + " got 2", vendor + "/" + item + " got 0 tue",
                vendor + " late tue until wed", vendor + " out", vendor + " out thu", "item " + item + " out",
                vendor + "/" + item + " price $18.00", vendor + " not sent tue",
                vendor + "/" + item + " more 12 at $18.50 wed", vendor + "/" + item + " take 12 at $18.50 wed", item + " lost 7/2 lb", "batch " + recipe + " mon lost",
                "closed thu", "cook cook-1 out wed", "equipment oven out fri", "want mon/soup " + recipe,
                "not mon/soup " + recipe, "buy " + vendor + "/" + item + " 3", "hands hot mon +60 min",
                "hands hot mon -60 min", "equipment oven tue +8");
        for (String sentence : all) {
            ChangeGrammar.Read read = read(sentence);
            assertThat(read.faults()).as(sentence).isEmpty();
            assertThat(read.changes()).singleElement().extracting(Change::sentence).isEqualTo(sentence);
        }
        assertThat(all.stream().map(s -> read(s).changes().get(0).getClass().getSimpleName()).distinct().sorted())
                .containsExactlyElementsOf(java.util.Arrays.stream(Change.class.getPermittedSubclasses())
                        .map(Class::getSimpleName).sorted().toList());
    }

    @Test
    void out_namesVendorCookOrEquipment_byTheirId() {
        assertThat(read("cook-1 out wed").changes()).containsExactly(new Change.CookOut("cook-1", DayOfWeek.WEDNESDAY));
        assertThat(read("oven out wed").changes()).containsExactly(new Change.EquipmentOut("oven", DayOfWeek.WEDNESDAY));
        assertThat(read(vendor + " out").changes()).containsExactly(new Change.VendorOut(vendor, Optional.empty()));
        assertThat(read("oven out").faults()).containsExactly("\"oven out\": on which day -> oven out DAY");
    }

    @Test
    void faults_areAllSaid_withWhatWouldBeRight() {
        ChangeGrammar.Read read = read(vendor + "x/" + item + " got 2", "closed thursday", "nonsense",
                item + " lost 3 min", "want mon/soop x");
        assertThat(read.changes()).isEmpty();
        assertThat(read.faults()).hasSize(6).allSatisfy(f -> assertThat(f).contains("->").doesNotContain("\n"));
        assertThat(read.faults().get(0)).contains("no vendor " + vendor + "x").contains("did you mean " + vendor + "?");
        assertThat(read.faults().get(1)).endsWith("-> closed DAY");
    }

    @Test
    void twoSentences_thatContradict_areRefusedTogether() {
        assertThat(read(vendor + "/" + item + " got 2", vendor + "/" + item + " got 3").faults())
                .singleElement().asString().contains("cannot both be so");
        assertThat(read(vendor + " out", vendor + "/" + item + " got 3").faults()).hasSize(1);
        assertThat(read(vendor + " out", vendor + "/" + item + " got 0").faults()).isEmpty();
        assertThat(read("closed thu", "closed thu").faults()).singleElement().asString().contains("twice");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "# a remark"})
    void emptyLines_andRemarks_sayNothing(String line) {
        assertThat(read(line)).isEqualTo(new ChangeGrammar.Read(List.of(), List.of()));
    }

    @Test
    void hostileWords_areAFault_notACrash() {
        assertThat(read("x".repeat(100_000), "a/b got 99999999999", "\u202e out", "(((((", "$1 price $1").faults()).hasSize(5);
    }

    @Test
    void shapes_nameEverySentence_forHelp() {
        assertThat(ChangeGrammar.shapes()).hasSize(18).allSatisfy(s -> assertThat(s.means()).isNotBlank());
    }
}
