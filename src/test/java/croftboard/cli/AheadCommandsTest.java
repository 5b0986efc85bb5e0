package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.file.BookReader;
import croftboard.plan.file.RotationStore;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands that read a rotation: coverage, paper, notice, reply. */
class AheadCommandsTest {
    private static final String SPAN = SampleRotation.SPAN.toString();
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void sitDown() {
        desk = new Desk(folder, Desk.always(true));
        new RotationStore(desk.book).write(SampleRotation.of(BookReader.read(desk.book).orElseThrow()), List.of());
    }

    private List<String> tree(Path of) throws IOException {
        if (!Files.exists(of)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(of)) {
            return all.filter(Files::isRegularFile).map(p -> of.relativize(p).toString()).sorted().toList();
        }
    }

    @Test
    void coverage_readsPlansAndRotations_andSaysWhichWeekHasNone() {
        Desk.Run run = desk.run("coverage", "2027-W33..2027-W35");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("12 days are planned: rotation " + SPAN, "Not planned and not counted: 2027-W35", "eats poorly",
                "How often the same vegan dish");
        desk.run("plan", "2027-W33");
        assertThat(desk.run("coverage", "2027-W33").out()).contains("6 days are planned: 2027-W33@1.");
        assertThat(desk.run("coverage", SPAN, "--format", "csv").out()).startsWith("for,week,day,mains,not_stated,dishes");
    }

    @Test
    void coverage_ofNothing_andBackward_isOneLine() {
        Desk.Run none = desk.run("coverage", "2027-W10..2027-W12");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err().lines()).hasSize(1);
        assertThat(none.err()).contains("no week of 2027-W10..2027-W12 is planned");
        assertThat(desk.run("coverage", "2027-W12..2027-W10").code()).isEqualTo(2);
    }

    @Test
    void paperOfARotation_isOneWallSheet_cropUse_andTables() throws IOException {
        Desk.Run run = desk.run("paper", SPAN);
        assertThat(run.err()).isEmpty();
        Path of = desk.book.resolve("paper").resolve(SPAN);
        assertThat(tree(of)).containsExactly("crops.pdf", "crops.svg", "rotation.xlsx", "tables/crops.csv", "tables/menu.csv", "tables/money.csv",
                "tables/orders.csv", "tables/promises.csv", "wall.pdf");
        try (PDDocument wall = Loader.loadPDF(of.resolve("wall.pdf").toFile())) {
            assertThat(wall.getNumberOfPages()).isEqualTo(1);
        }
        assertThat(Files.readString(of.resolve("crops.svg"))).startsWith("<svg ").contains("2027-W34").doesNotContain("color");
    }

    @Test
    void paper_refusesSheetsOfTheOtherKind() {
        assertThat(desk.run("paper", SPAN, "--sheet", "prep").err()).contains("a rotation has no such sheet");
        desk.run("plan", "2027-W33");
        assertThat(desk.run("paper", "2027-W33", "--sheet", "wall").err()).contains("made of several weeks");
        assertThat(desk.run("paper", SPAN, "--vendor", "hollow-brook").code()).isEqualTo(2);
    }

    /** A name that begins like a formula stays a text in the workbook and is guarded in the CSV. */
    @Test
    void formulas_areNeverWritten() throws IOException {
        String file = "recipes/dishes.yaml";
        desk.write(file, Files.readString(desk.book.resolve(file)).replace("name: Carrot slaw with sesame", "name: \"=1+1 slaw\""));
        desk.run("paper", SPAN);
        Path of = desk.book.resolve("paper").resolve(SPAN);
        assertThat(xml(of.resolve("rotation.xlsx"))).contains("=1+1 slaw").doesNotContain("<f>").doesNotContain("<f ");
        assertThat(Files.readString(of.resolve("tables/menu.csv"))).contains(",'=1+1 slaw,").doesNotContain(",=1+1");
    }

    private static String xml(Path workbook) throws IOException {
        StringBuilder all = new StringBuilder();
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            for (ZipEntry e : zip.stream().map(x -> (ZipEntry) x).toList()) {
                all.append(new String(zip.getInputStream(e).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return all.toString();
    }

    @Test
    void notice_writesSheetLetterAndTables_ofEachGrower() throws IOException {
        Desk.Run run = desk.run("notice", SPAN);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("Hollow Brook", "2027-W33").doesNotContain("Mill Run");
        Path of = desk.book.resolve("paper").resolve(SPAN).resolve("notice");
        assertThat(tree(of)).contains("notice-hollow-brook.csv", "notice-hollow-brook.pdf", "notice-hollow-brook.txt",
                "notice-hollow-brook.xlsx").noneMatch(f -> f.contains("mill-run"));
        assertThat(Files.readString(of.resolve("notice-hollow-brook.txt"))).contains("Subject: ", "25 lb sack", "firm", "no order");
        assertThat(Files.readString(of.resolve("notice-hollow-brook.csv"))).startsWith("rotation,vendor,item,").contains(",have,price_usd,note");
    }

    @Test
    void notice_ofAVendorThatIsNotWanted_isOneLine_andWritesNothing() throws IOException {
        Desk.Run run = desk.run("notice", SPAN, "--vendor", "nobody");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(tree(desk.book.resolve("paper"))).isEmpty();
        assertThat(desk.run("notice", "2027-W40..2027-W41").code()).isEqualTo(2);
    }

    private Path answered(java.util.function.UnaryOperator<String> change) throws IOException {
        desk.run("notice", SPAN);
        Path table = desk.book.resolve("paper").resolve(SPAN).resolve("notice").resolve("notice-hollow-brook.csv");
        Path answer = folder.resolve("answer.csv");
        Files.writeString(answer, change.apply(Files.readString(table)));
        return answer;
    }

    @Test
    void season_isShown_inFormats_andByParts() {
        Desk.Run run = desk.run("season", "2027-W33..2027-W35");
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("Wanted of each crop", "Commitments worth proposing", "Weeks without a local crop", "Freezing chances",
                "Dishes that a season lacks", "ask your authority first", "Not planned and not counted: 2027-W35");
        assertThat(desk.run("season", SPAN, "demand", "--format", "csv").out()).startsWith("item,item_name,week,vendor,grams");
        assertThat(desk.run("season", SPAN, "--format", "csv").err()).contains("one table at a time");
        assertThat(desk.run("season", SPAN, "--format", "json").out()).contains("\"gaps\"");
        assertThat(desk.run("season", "2027-W40..2027-W41").code()).isEqualTo(2);
    }

    /** What is taken is a list of the book, which then reads without faults and says what was answered. */
    @Test
    void reply_taken_isAListOfTheBook_once() throws IOException {
        Path answer = answered(t -> t.replaceFirst("(carrot.*2027-W34.*),,,\r\n", "$1,2,same,wet ground\r\n"));
        Desk.Run run = desk.run("reply", answer.toString(), "--take");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isIn(0, 3);
        assertThat(run.out()).contains("2027-W34.csv");
        var rows = BookReader.read(desk.book).orElseThrow().lists().get(SamplePlan.WEEK.plusWeeks(1));
        assertThat(rows.stream().filter(r -> r.item().equals("carrot")).mapToInt(r -> r.packs()).sum()).isEqualTo(2);
        Desk.Run again = desk.run("reply", answer.toString(), "--take");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("has a list of this week already");
    }

    @Test
    void reply_withFaults_isALineEach_andWritesNothing() throws IOException {
        List<String> before = tree(desk.book.resolve("farms"));
        Desk.Run missing = desk.run("reply", answered(t -> t.replace(",,,\r\n", ",1,,\r\n")).toString(), "--take");
        assertThat(missing.code()).isEqualTo(2);
        assertThat(missing.err().lines()).hasSizeGreaterThan(1).allMatch(l -> l.contains("the price is missing"));
        Desk.Run other = desk.run("reply", answered(t -> t.replace("hollow-brook", "peat-hill").replace(",,,\r\n", ",1,same,\r\n")).toString(),
                "--take");
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err().lines()).hasSize(1);
        assertThat(other.err()).contains("the vendor 'peat-hill' was not asked");
        Desk.Run unasked = desk.run("reply", answered(t -> t.replace(",carrot,", ",leek,").replace(",,,\r\n", ",1,same,\r\n")).toString(), "--take");
        assertThat(unasked.err()).contains("was not asked for");
        assertThat(desk.run("reply", folder.resolve("none.csv").toString()).err()).contains("there is no such file");
        assertThat(tree(desk.book.resolve("farms"))).isEqualTo(before);
    }
}
