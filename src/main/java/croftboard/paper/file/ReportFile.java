package croftboard.paper.file;

import croftboard.book.Book;
import croftboard.paper.Data;
import croftboard.paper.Sheet;
import croftboard.paper.When;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A report of the ledger as files, each written whole or not at all: PDF, HTML, text, and every table of it as CSV. */
public final class ReportFile {
    private static final int DOCUMENT = 1_000;

    private ReportFile() { }

    /** @param pages of the PDF; 0 when none was written */
    public record Written(List<Path> files, int pages) { }

    /**
     * Writes {@code FOLDER/ID.pdf}, {@code .html}, {@code .txt}, and {@code FOLDER/ID/TABLE.csv}.
     *
     * @param from what the report was made from, short, for the page's foot
     * @param printed local time of the kitchen
     */
    public static Written write(Path folder, Book book, Sheet sheet, Map<String, Data> tables, String from, LocalDateTime printed,
            Set<PaperFormat> formats) throws IOException {
        WholeFile.makeFolder(folder);
        List<Path> files = new ArrayList<>();
        HtmlPages pages = new HtmlPages(book.kitchen().paper(), new ReportFoot(book, from, printed));
        int count = 0;
        if (formats.contains(PaperFormat.PDF)) {
            try (PDDocument pdf = new PdfPress(printed.atZone(book.kitchen().zone())).document(pages.forPaper(sheet.title(), List.of(sheet)),
                    DOCUMENT)) {
                count = pdf.getNumberOfPages();
                write(folder.resolve(sheet.id() + ".pdf"), PdfPress.bytes(pdf), files);
            }
        }
        if (formats.contains(PaperFormat.HTML)) {
            write(folder.resolve(sheet.id() + ".html"), bytes(pages.forScreen(sheet.title(), List.of(sheet))), files);
        }
        if (formats.contains(PaperFormat.TEXT)) {
            write(folder.resolve(sheet.id() + ".txt"), bytes(TextSheet.of(sheet)), files);
        }
        if (formats.contains(PaperFormat.CSV)) {
            WholeFile.makeFolder(folder.resolve(sheet.id()));
            for (Map.Entry<String, Data> table : tables.entrySet()) {
                write(folder.resolve(sheet.id()).resolve(table.getKey() + ".csv"), bytes(CsvSheet.of(table.getValue())), files);
            }
        }
        return new Written(List.copyOf(files), count);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void write(Path file, byte[] content, List<Path> files) throws IOException {
        WholeFile.replace(file, content);
        files.add(file);
    }

    /** @param from what the report was made from */
    private record ReportFoot(Book book, String from, LocalDateTime printed) implements Imprint {
        private static final int LONGEST = 46;

        @Override
        public Optional<String> told(Sheet sheet) {
            return Optional.empty();
        }

        @Override
        public String title(Sheet sheet) {
            return Visible.shortened(sheet.title(), LONGEST);
        }

        @Override
        public String plan() {
            return from;
        }

        @Override
        public String origin() {
            return "Croftboard \u00b7 " + Visible.shortened(book.kitchen().name(), LONGEST) + " \u00b7 printed " + When.printed(printed);
        }
    }
}
