package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Fault;
import croftboard.book.Reply;
import croftboard.measure.Cents;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;

class ReplyReaderTest {
    private static final String HEAD = String.join(",", Reply.COLUMNS);
    private static final String KEY = "2027-W36..2027-W39@1,hollow-brook,carrot,\"Carrots, bunching\",25 lb sack,2027-W36,2,4,6,2,2,21.50,";

    private static List<Fault> faults(byte[] content) {
        return ReplyReader.read("answer.csv", content).fold(r -> List.of(), f -> f);
    }

    private static byte[] csv(String... lines) {
        return (HEAD + "\r\n" + String.join("\r\n", lines) + "\r\n").getBytes(StandardCharsets.UTF_8);
    }

    private static Reply read(byte[] content) {
        return ReplyReader.read("answer.csv", content).fold(r -> r, f -> {
            throw new AssertionError(f.toString());
        });
    }

    @Test
    void answer_isRead_withPricesAsPeopleWriteThem() {
        for (String price : List.of("21.50", "$21.50", "21.5", "same", "SAME")) {
            Reply reply = read(csv(KEY + "3," + price + ",early frost"));
            assertThat(reply.vendor()).isEqualTo("hollow-brook");
            assertThat(reply.rows()).hasSize(1);
            assertThat(reply.rows().get(0).price()).contains(new Cents(2150));
            assertThat(reply.rows().get(0).have()).hasValue(3);
            assertThat(reply.rows().get(0).note()).isEqualTo("early frost");
        }
    }

    @Test
    void unansweredRow_isNoFault_andZeroNeedsNoPrice() {
        Reply reply = read(csv(KEY + ",,", KEY.replace("W36,2", "W37,2") + "0,,"));
        assertThat(reply.answered()).hasSize(1);
        assertThat(reply.rows().get(0).have()).isEmpty();
    }

    @Test
    void everyFault_isToldAtOnce_eachOnALineOfItsOwn() {
        List<Fault> faults = faults(csv(KEY + "3,,", KEY.replace("W36,2", "W37,2") + "some,21.50,", KEY.replace("2027-W36,", "soon,") + "1,-4,",
                KEY.replace("hollow-brook", "other") .replace("W36,2", "W38,2") + "1,same,"));
        assertThat(faults).hasSize(5).allMatch(f -> f.line() >= 2 && f.toString().lines().count() == 1);
        assertThat(faults.get(0).wrong()).isEqualTo("the price is missing");
        assertThat(faults.toString()).contains("[some] is no number of packs", "[soon] is no week", "[-4] is no price", "[other]");
    }

    @Test
    void nothingAnswered_twice_orNoTable_isRefused() {
        assertThat(faults(csv(KEY + ",,")).get(0).wrong()).isEqualTo("no row is answered");
        assertThat(faults(csv(KEY + "1,same,", KEY + "1,same,")).get(0).wrong()).contains("stands twice");
        assertThat(faults("vendor,packs\nx,1\n".getBytes(StandardCharsets.UTF_8))).isNotEmpty();
        assertThat(faults(new byte[] {(byte) 0xC3, 0x28})).hasSize(1);
        assertThat(faults("PK\u0003\u0004 broken".getBytes(StandardCharsets.ISO_8859_1)).get(0).wrong()).contains("cannot be read");
    }

    /** The same answer as a workbook, its figures as figures: a spreadsheet leaves empty cells out. */
    @Test
    void workbook_saysWhatItsCsvSays() throws IOException {
        String[] cells = {"2027-W36..2027-W39@1", "hollow-brook", "carrot", "Carrots, bunching", "25 lb sack", "2027-W36", "2", "4", "6", "2", "2",
            "21.50", "3", "24.3", ""};
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "test", "1.0")) {
            Worksheet sheet = book.newWorksheet("notice");
            for (int c = 0; c < cells.length; c++) {
                sheet.value(0, c, Reply.COLUMNS.get(c));
                if (cells[c].matches("[0-9.]+")) {
                    sheet.value(2, c, Double.valueOf(cells[c]));
                } else if (!cells[c].isEmpty()) {
                    sheet.value(2, c, cells[c]);
                }
            }
        }
        Reply reply = read(out.toByteArray());
        assertThat(reply.rows()).hasSize(1);
        assertThat(reply.rows().get(0).line()).isEqualTo(3);
        assertThat(reply.rows().get(0).price()).contains(new Cents(2430));
        assertThat(reply.rows().get(0).have()).hasValue(3);
    }

    /** Whatever is done to the bytes, the answer is read or refused, and every refusal has a reason. */
    @Test
    void damagedAnswers_areReadOrRefused_neverMore() {
        Random random = new Random(5);
        byte[] whole = csv(KEY + "3,21.50,early frost", KEY.replace("W36,2", "W37,2") + "0,,");
        for (int n = 0; n < 400; n++) {
            byte[] damaged = whole.clone();
            for (int k = 0; k < 1 + random.nextInt(6); k++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            boolean read = ReplyReader.read("x", damaged).fold(r -> !r.answered().isEmpty(), f -> !f.isEmpty());
            assertThat(read).isTrue();
        }
    }
}
