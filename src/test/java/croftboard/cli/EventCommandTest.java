package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EventCommandTest {
    private static final String FILE = "seasons/events.yaml";
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void sitDown() {
        desk = new Desk(folder, Desk.always(true));
    }

    private String file() throws IOException {
        return Files.readString(desk.book.resolve(FILE));
    }

    @Test
    void withoutAnything_listsTheEvents() {
        Desk.Run run = desk.run("event");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("harvest-meal", "Thu 19 Aug 2027", "2027-W33", "60", "63");
        assertThat(desk.run("event", "--format", "csv").out()).startsWith("event,name,date").contains("harvest-meal,");
    }

    @Test
    void oneEvent_isShown_withItsPortions() {
        assertThat(desk.run("event", "harvest-meal").out()).contains("Guarantee 60, and 4 % above it: food for 63.",
                "Lentil bake", "44", "the plan chooses, main, vegan", "19", "63", "12 vegan, 4 avoid wheat");
    }

    @Test
    void guarantee_changesThatOneNumber_andSaysWhatFollows() throws IOException {
        desk.run("plan", "2027-W33");
        desk.run("post", "2027-W33");
        String before = file();
        Desk.Run run = desk.run("event", "harvest-meal", "--guarantee", "165");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(file()).isEqualTo(before.replace("guarantee: 60", "guarantee: 165"));
        assertThat(run.out().replace('\n', ' ')).contains("guarantee 60 -> 165, food for 63 -> 172.",
                "main: 44 -> 121 portions.", "vegan: 19 -> 52 portions.", "side: 63 -> 172 portions.",
                "seasons/events.yaml:5, guarantee: 60 -> 165.", "the posted version 1",
                "croftboard plan 2027-W33 --from 2027-W33@1");
    }

    @Test
    void withoutAPlan_saysSo_andTheSameNumberWritesNothing() throws IOException {
        assertThat(desk.run("event", "harvest-meal", "--guarantee", "61").out()).contains("There is no plan of 2027-W33 yet");
        String now = file();
        assertThat(desk.run("event", "harvest-meal", "--guarantee", "61").out()).contains("already: nothing was written");
        assertThat(file()).isEqualTo(now);
    }

    /** Comments, quotes, line ends, marks, blanks and whatever else stands in the file stay as they are. */
    @ParameterizedTest
    @ValueSource(strings = {"  guarantee:   60   # told by telephone, 60 heads", "  guarantee: \"60\"", "  guarantee: '60' # 60",
        "  \"guarantee\": 60"})
    void everythingElse_stays(String line) throws IOException {
        String text = "\uFEFF# 60 \u00e9\u6f22\ud83e\udd55\r\n" + file().replace("\n", "\r\n").replace("  guarantee: 60", line);
        Files.writeString(desk.book.resolve(FILE), text);
        assertThat(desk.run("event", "harvest-meal", "--guarantee", "7").code()).isZero();
        int at = text.indexOf("60", text.indexOf("guarantee"));
        assertThat(file()).isEqualTo(text.substring(0, at) + "7" + text.substring(at + 2));
    }

    @Test
    void anEventOnOneLine_isEditedToo() throws IOException {
        desk.write(FILE, "{\u6f22: {name: \"x\", date: 2027-08-19, guarantee: 60}}");
        assertThat(desk.run("event", "harvest-meal", "--guarantee", "7").code()).isEqualTo(2);
        desk.write(FILE, "other: {name: \"\ud83e\udd55 60\", date: 2027-08-20, guarantee: 60, overage: 4%, price: $1.00, menu: [{id: a, "
                + "course: main, share: 100%}]} # 60\nharvest-meal: {name: \"\ud83e\udd55 60\", date: 2027-08-19, guarantee: 60, "
                + "overage: 4%, price: $1.00, menu: [{id: a, course: main, share: 100%}]} # 60\n");
        String before = file();
        Desk.Run run = desk.run("event", "harvest-meal", "--guarantee", "1000");
        assertThat(run.err()).isEmpty();
        int at = before.lastIndexOf("guarantee: 60") + "guarantee: ".length();
        assertThat(file()).isEqualTo(before.substring(0, at) + "1000" + before.substring(at + 2));
    }

    @ParameterizedTest
    @CsvSource({"0,events.yaml:5", "-3,events.yaml:5", "100001,events.yaml:5", "many,'many' is no head count", "1.5,'1.5' is no head count"})
    void aNumberThatIsNone_isRefused_andNothingWritten(String heads, String told) throws IOException {
        String before = file();
        Desk.Run run = desk.run("event", "harvest-meal", "--guarantee=" + heads);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines().filter(l -> !l.startsWith("Try: "))).hasSize(1);
        assertThat(run.err()).contains(told);
        assertThat(run.out()).isEmpty();
        assertThat(file()).isEqualTo(before);
    }

    @Test
    void unknownEvents_andABookWithFaults_areTold_aLineEach() throws IOException {
        Desk.Run unknown = desk.run("event", "picnic", "--guarantee", "5");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err().lines()).hasSize(1);
        assertThat(unknown.err()).contains("no event 'picnic'", "harvest-meal");
        Desk.Run which = desk.run("event", "--guarantee", "5");
        assertThat(which.code()).isEqualTo(2);
        assertThat(which.err()).contains("of which event?");
        desk.write(FILE, file().replace("price: $16.00", "price: 16").replace("overage: 4%", "overage: much"));
        String before = file();
        Desk.Run faulty = desk.run("event", "harvest-meal", "--guarantee", "5");
        assertThat(faulty.code()).isEqualTo(2);
        assertThat(faulty.err().lines()).hasSize(2).allMatch(l -> l.contains("events.yaml:"));
        assertThat(file()).isEqualTo(before);
    }

    @Test
    void nothingIsLeftBeside() throws IOException {
        desk.run("event", "harvest-meal", "--guarantee", "165");
        try (var files = Files.list(desk.book.resolve("seasons"))) {
            assertThat(files.map(p -> p.getFileName().toString()).filter(n -> n.contains("tmp"))).isEmpty();
        }
        assertThat(new String(Files.readAllBytes(desk.book.resolve(FILE)), StandardCharsets.UTF_8)).contains("guarantee: 165");
    }
}
