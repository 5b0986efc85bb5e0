package croftboard.ledger.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.Matching;
import croftboard.ledger.Sale;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Files that mean harm, or come from a program that writes otherwise. */
class HostileFilesTest {
    private static final String HEAD = "Date,Item,Units,Money\n";

    private static String refused(byte[] bytes) {
        return ((Table.Reading.Refused) Tables.read(bytes)).why();
    }

    private static Intake sales(byte[] bytes) {
        return SalesFile.read(((Table.Reading.Read) Tables.read(bytes)).table(), Map.of(), Map.of(), new Matching());
    }

    private static Intake sales(String text) {
        return sales(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Intake.Read read(Intake intake) {
        return (Intake.Read) intake;
    }

    private static List<String> faults(String text) {
        return ((Intake.Faulty) sales(text)).faults();
    }

    @Test
    void formula_isTextAndHarmlessWhenItLeaves() {
        Sale sale = (Sale) read(sales(HEAD + "2027-08-16,\"=HYPERLINK(\"\"http://x\"\",1)\",1,2.00\n")).entries().get(0);
        assertThat(sale.words()).startsWith("=HYPERLINK");
        assertThat(CsvOut.cell(sale.words())).startsWith("\"'=");
        assertThat(faults(HEAD + "2027-08-16,soup,=1+1,2.00\n")).containsExactly("line 2: units '=1+1' is no number -> such as 12 or 2.5");
    }

    @Test
    void aMillionColumns_areRefused() throws IOException {
        assertThat(refused(("a,".repeat(1_000_000) + "\n1\n").getBytes(StandardCharsets.UTF_8))).contains("more than 200 columns");
        for (String cell : List.of("BDWGN1", "ZZZZZZ1", "AAAA1", "XFD1", "&#90;ZZZZ1")) {
            assertThat(refused(changed("r=\"A1\"", "r=\"" + cell + "\""))).as(cell).contains("more than 200 columns");
        }
    }

    @Test
    void goodWorkbook_isRead() throws IOException {
        assertThat(Tables.read(Fuzz.workbook())).isInstanceOf(Table.Reading.Read.class);
        assertThat(Tables.read(changed("r=\"A1\"", "r=\"A1\""))).isInstanceOf(Table.Reading.Read.class);
    }

    /** The good workbook with one thing changed in its sheet. */
    private static byte[] changed(String what, String to) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int changes = 0;
        Path good = Files.createTempFile("croftboard", ".xlsx");
        Files.write(good, Fuzz.workbook());
        try (ZipFile in = new ZipFile(good.toFile()); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (ZipEntry part : Collections.list(in.entries())) {
                String text = new String(in.getInputStream(part).readAllBytes(), StandardCharsets.UTF_8);
                zip.putNextEntry(new ZipEntry(part.getName()));
                boolean sheet = part.getName().contains("worksheets/sheet");
                changes += sheet && text.contains(what) ? 1 : 0;
                zip.write((sheet ? text.replace(what, to) : text).getBytes(StandardCharsets.UTF_8));
            }
        } finally {
            Files.delete(good);
        }
        assertThat(changes).isEqualTo(1);
        return out.toByteArray();
    }

    @Test
    void zipBomb_isRefused() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            for (int n = 0; n < 200; n++) {
                zip.write(new byte[1_000_000]);
            }
        }
        assertThat(out.size()).isLessThan(1_000_000);
        assertThat(refused(out.toByteArray())).contains("unpacks to more than any list needs");
    }

    @Test
    void encodings_areReadAndWhatIsGuessedIsSaid() {
        String text = HEAD + "2027-08-16,Crème fraîche,1,2.00\n";
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16, Charset.forName("windows-1252"))) {
            Intake.Read read = read(sales(text.getBytes(charset)));
            assertThat(((Sale) read.entries().get(0)).words()).isEqualTo("Crème fraîche");
            assertThat(read.guesses().stream().anyMatch(g -> g.contains("Windows-1252"))).isEqualTo(charset.name().equals("windows-1252"));
        }
        assertThat(((Sale) read(sales("\ufeff" + text)).entries().get(0)).words()).isEqualTo("Crème fraîche");
    }

    @Test
    void semicolonsAndDecimalCommas_areSaid() {
        Intake.Read read = read(sales("Date;Item;Units;Money\n2027-08-16;soup;1,5;1.234,56\n"));
        assertThat(((Sale) read.entries().get(0)).cents()).isEqualTo(123_456);
        assertThat(read.guesses()).contains("Cells are separated by semicolons.", "Numbers are read with decimal commas.");
        assertThat(faults("Date;Item;Units;Money\n2027-08-16;soup;1;12,50\n2027-08-16;soup;1;12.50\n")).singleElement().asString()
                .contains("decimal commas (line 2)", "decimal dots (line 3)");
    }

    @Test
    void datesThatContradictEachOther_areRefused() {
        for (String[] two : new String[][] {{"08/16/2027", "16/08/2027"}, {"2027-08-16", "08/16/2027"}, {"Aug 16 2027", "16.08.2027"}}) {
            assertThat(faults("Date;Item;Units;Money\n" + two[0] + ";soup;1;2\n" + two[1] + ";soup;1;2\n")).singleElement().asString()
                    .contains("dates of two styles", two[0], two[1]);
        }
        Intake.Read read = read(sales(HEAD + "08/09/2027,soup,1,2\n"));
        assertThat(read.entries().get(0).date()).isEqualTo(LocalDate.of(2027, 8, 9));
        assertThat(read.guesses()).anyMatch(g -> g.contains("(a guess)"));
    }

    @Test
    void xmlThatCallsForMore_isRefused() {
        String bomb = "<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY b \"" + "c".repeat(1000) + "\">]><Invoice><IssueDate>"
                + "&b;".repeat(1000) + "</IssueDate></Invoice>";
        assertThat(UblInvoice.read(bomb.getBytes(StandardCharsets.UTF_8))).isInstanceOf(UblInvoice.Refused.class);
        assertThat(UblInvoice.read("<a>".repeat(100_000).getBytes(StandardCharsets.UTF_8))).isInstanceOf(UblInvoice.Refused.class);
    }

    @Test
    void spoiledFiles_areReadOrRefusedWithWords() throws IOException {
        assertThat(new Fuzz().run(3_000, 1)).containsKeys("sales read", "invoice read", "table refused", "sales with faults", "invoice refused");
    }

    /** {@code -Dslow -Dcroftboard.fuzz=N}. */
    @Test
    @Tag("slow")
    void manySpoiledFiles_areReadOrRefusedWithWords() throws IOException {
        assertThat(new Fuzz().run(Integer.getInteger("croftboard.fuzz", 100_000), 2)).containsKeys("sales read", "table refused");
    }
}
