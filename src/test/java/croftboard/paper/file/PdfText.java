package croftboard.paper.file;

import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Sheets pressed into PDF and their words read back, a text a page, as somebody's eye would. */
public final class PdfText {
    private PdfText() { }

    /** Words with single blanks between. */
    public static List<String> pages(PaperContext context, List<Sheet> sheets) {
        try {
            PdfPress press = new PdfPress(context);
            try (PDDocument pdf = press.document(new HtmlPages(context).forPaper("test", sheets), 1)) {
                List<String> pages = new ArrayList<>();
                for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                    PDFTextStripper text = new PDFTextStripper();
                    text.setSortByPosition(true);
                    text.setStartPage(page);
                    text.setEndPage(page);
                    pages.add(text.getText(pdf).replaceAll("\\s+", " ").strip());
                }
                return pages;
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    public static byte[] bytes(PaperContext context, List<Sheet> sheets) throws IOException {
        try (PDDocument pdf = new PdfPress(context).document(new HtmlPages(context).forPaper("test", sheets), 1)) {
            return PdfPress.bytes(pdf);
        }
    }

    public static String text(Sheet sheet) {
        return TextSheet.of(sheet);
    }
}
