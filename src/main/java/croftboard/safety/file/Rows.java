package croftboard.safety.file;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** The rows of one of our own tables, by column. */
final class Rows {
    private Rows() { }

    /** @throws UncheckedIOException when the table is not there or not whole: the tool is broken, not the book */
    static List<Map<String, String>> of(String table) {
        String name = "/croftboard/safety/" + table + ".csv";
        try (InputStream in = Rows.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IOException("the table " + name + " is missing in this program");
            }
            MappingIterator<Map<String, String>> rows = new CsvMapper().readerForMapOf(String.class)
                    .with(CsvSchema.emptySchema().withHeader()).readValues(in);
            return rows.readAll();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
