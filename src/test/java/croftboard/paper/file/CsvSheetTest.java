package croftboard.paper.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import croftboard.paper.Contexts;
import croftboard.paper.Data;
import croftboard.paper.Sheet;
import croftboard.paper.order.OrderSheets;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvSheetTest {
    private static List<List<String>> read(String csv) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (String[] row : new CsvMapper().readerFor(String[].class).with(CsvParser.Feature.WRAP_AS_ARRAY)
                .<String[]>readValues(csv).readAll()) {
            rows.add(List.of(row));
        }
        return rows;
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+SUM(A1)", "-cmd", "@x", "\tx", "\rx", "\nx", "'=1", "''", "-", "=\"a,b\"\r\nc"})
    void aCellThatASpreadsheetWouldRun_isHarmless_andComesBack(String cell) throws IOException {
        String written = read(CsvSheet.of(Data.of("a", "b").row(cell, "end").done())).get(1).get(0);
        assertThat(written.charAt(0)).isEqualTo('\'');
        assertThat(CsvSheet.read(written)).isEqualTo(cell);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-3", "-0.05", "12.34", "a=b", "5 lb", "", "2027-08-16"})
    void whatIsNoFormula_standsAsItIs(String cell) throws IOException {
        assertThat(read(CsvSheet.of(Data.of("a", "b").row(cell, "x").done())).get(1).get(0)).isEqualTo(cell);
    }

    @Test
    void randomCells_comeBack() throws IOException {
        Random random = new Random(7);
        String signs = "=+-@\t\r\n',\"; aZ09\u00e9\u6f22";
        for (int i = 0; i < 2_000; i++) {
            StringBuilder cell = new StringBuilder();
            for (int n = random.nextInt(6); n > 0; n--) {
                cell.append(signs.charAt(random.nextInt(signs.length())));
            }
            List<List<String>> rows = read(CsvSheet.of(Data.of("a", "b", "c").row("x", cell, "y").done()));
            assertThat(CsvSheet.read(rows.get(1).get(1))).isEqualTo(cell.toString());
            assertThat(rows).hasSize(2);
        }
    }

    /** RFC 4180 section 2: every record has as many fields as the header; records end in CRLF. */
    @Test
    void hostileOrders_areTables() throws IOException {
        for (Sheet sheet : new OrderSheets().make(Contexts.hostile())) {
            String csv = CsvSheet.of(sheet.data());
            List<List<String>> rows = read(csv);
            assertThat(rows).hasSize(1 + sheet.data().rows().size()).allMatch(r -> r.size() == rows.get(0).size());
            for (int i = 0; i < sheet.data().rows().size(); i++) {
                assertThat(rows.get(i + 1).stream().map(CsvSheet::read).toList()).isEqualTo(sheet.data().rows().get(i));
                assertThat(rows.get(i + 1)).noneMatch(c -> c.matches("(?s)[=+@\t\r].*"));
            }
            assertThat(csv).endsWith("\r\n");
        }
    }
}
