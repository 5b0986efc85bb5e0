package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.cli.Desk.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperCommandTest {
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void plan() {
        desk = new Desk(folder, Desk.always(true));
        assertThat(desk.run("plan", "2027-W33").code()).isEqualTo(Exit.DONE);
    }

    private Path paper(String name) {
        return desk.book.resolve("paper/2027-W33").resolve(name);
    }

    @Test
    void orders_allTheirForms_andWhatWasWrittenIsTold() {
        Run run = desk.run("paper", "2027-W33", "--sheet", "order,order-calendar");
        assertThat(run.code()).isEqualTo(Exit.DONE);
        assertThat(run.out()).contains("order.pdf", "order-calendar.pdf", "packet.pdf", "order-calendar.ics", "(9 files)", "pages.");
        assertThat(run.err()).isEmpty();
        assertThat(paper("order.pdf")).isRegularFile();
        assertThat(paper("order/order-hollow-brook-2027-08-16.xml")).isRegularFile();
    }

    @Test
    void oneVendor_onlyItsOrder() throws IOException {
        Run run = desk.run("paper", "2027-W33@1", "--vendor", "hollow-brook", "--format", "text");
        assertThat(run.code()).isEqualTo(Exit.DONE);
        try (var files = Files.list(paper("order"))) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactly("order-hollow-brook-2027-08-16.txt");
        }
    }

    @Test
    void oneDay_byItsNameOrDate_intoAnotherFolder() {
        Path out = folder.resolve("desk");
        Run run = desk.run("paper", "2027-W33", "--sheet=order", "--day=mon", "--out=" + out, "--format=html");
        assertThat(run.code()).isEqualTo(Exit.DONE);
        assertThat(out.resolve("order-2027-08-16.html")).content().contains("Hollow Brook").doesNotContain("Stonefold");
        assertThat(desk.run("paper", "2027-W33", "--sheet=order", "--day=2027-08-17", "--out=" + out, "--format=html").code())
                .isEqualTo(Exit.DONE);
        assertThat(out.resolve("order-2027-08-17.html")).content().contains("Stonefold").doesNotContain("Hollow Brook Acre</h1>");
    }

    @Test
    void wrongWords_areToldWithWhatWouldBeRight() {
        assertThat(desk.run("paper", "2027-W33", "--sheet", "orders").err()).contains("'orders' is none of them", "order-calendar");
        assertThat(desk.run("paper", "2027-W33", "--vendor", "nobody").err()).contains("no vendor has this id", "hollow-brook");
        assertThat(desk.run("paper", "2027-W33", "--day", "monday").err()).contains("'monday' is no day", "2027-08-19");
        assertThat(desk.run("paper", "2027-W34").err()).contains("there is no plan of 2027-W34");
        assertThat(desk.run("paper", "2027-W34").code()).isEqualTo(Exit.WRONG_USE);
        assertThat(desk.book.resolve("paper")).doesNotExist();
    }

    @Test
    void anIncompletePlan_isPrintedButSaysSoFirst() throws IOException {
        Files.createDirectory(folder.resolve("other"));
        Desk other = new Desk(folder.resolve("other"), Desk.always(false));
        other.run("plan", "2027-W33");
        Run run = other.run("paper", "2027-W33", "--sheet=order", "--format=text");
        assertThat(run.code()).isEqualTo(Exit.INCOMPLETE);
        assertThat(other.book.resolve("paper/2027-W33/order/order-hollow-brook-2027-08-16.txt")).content()
                .startsWith("NOT COMPLETE: 1 thing");
    }

    @Test
    void anotherVersion_saysWhatDiffersOnPaper() throws IOException {
        desk.run("paper", "2027-W33", "--sheet=order", "--format=text");
        Path farm = desk.book.resolve("farms/hollow-brook.yaml");
        Files.writeString(farm, Files.readString(farm).replace("name: Hollow Brook Acre", "name: Hollow Brook Acres"));
        Run run = desk.run("paper", "2027-W33", "--sheet=order", "--format=text");
        assertThat(run.out()).contains("differs from the one", "- Purchase order: Hollow Brook Acre",
                "+ Purchase order: Hollow Brook Acres", "The book has changed since this plan was made");
        assertThat(desk.run("paper", "2027-W33", "--sheet=order", "--format=text").out()).doesNotContain("differs");
    }
}
