package croftboard.paper.file;

import croftboard.book.Book;
import croftboard.paper.Data;
import croftboard.paper.Origin;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
        Origin origin = new Origin(book, from, "", "", 0, printed, Set.of(), PaperContext.Doubtful.NONE);
        HtmlPages pages = new HtmlPages(origin);
        int count = 0;
        if (formats.contains(PaperFormat.PDF)) {
            try (PDDocument pdf = new PdfPress(origin).document(pages.forPaper(sheet.title(), List.of(sheet)),
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
}
