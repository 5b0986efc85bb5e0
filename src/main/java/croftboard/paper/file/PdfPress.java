package croftboard.paper.file;

import croftboard.paper.Origin;
import croftboard.paper.PaperContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Presses HTML into PDF. The same pages printed at the same time give the same bytes. One press serves one thread; it
 * reads the typefaces once.
 */
final class PdfPress {
    private static final Logger QUIET = Logger.getLogger("org.apache");
    private static final String FAMILY = "DejaVu Sans";
    private static final int BOLD = 700;
    private final TrueTypeFont plain;
    private final TrueTypeFont bold;
    private final Origin from;

    PdfPress(PaperContext context) throws IOException {
        this(context.origin());
    }

    PdfPress(Origin from) throws IOException {
        quiet();
        this.from = from;
        this.plain = face("/fonts/DejaVuSans.ttf");
        this.bold = face("/fonts/DejaVuSans-Bold.ttf");
    }

    private static TrueTypeFont face(String name) throws IOException {
        try (InputStream in = PdfPress.class.getResourceAsStream(name)) {
            return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
        }
    }

    /** The caller closes it. @param id of the document: fixed, so that the bytes are */
    PDDocument document(String html, long id) throws IOException {
        PDDocument pdf = new PDDocument();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withHtmlContent(html, null);
        builder.usePDDocument(pdf);
        builder.useSVGDrawer(new PictureDrawer(new Outlines(plain)));
        builder.useExternalResourceAccessControl((uri, type) -> false,
                com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useFont(new PDFontSupplier(PDType0Font.load(pdf, plain, true)), FAMILY, 400, FontStyle.NORMAL, true);
        builder.useFont(new PDFontSupplier(PDType0Font.load(pdf, bold, true)), FAMILY, BOLD, FontStyle.NORMAL, true);
        builder.withProducer("Croftboard");
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
        }
        stamp(pdf, id, from);
        return pdf;
    }

    /** Neither the layout's nor the PDF writer's remarks are for a cook. */
    static void quiet() {
        XRLog.setLoggingEnabled(false);
        QUIET.setLevel(Level.OFF);
    }

    /** Gives a document the printing's time and an id of its own, where the library would take the clock's. */
    static void stamp(PDDocument pdf, long id, Origin from) {
        Calendar printed = GregorianCalendar.from(from.printed().atZone(from.book().kitchen().zone()));
        pdf.getDocumentInformation().setCreationDate(printed);
        pdf.getDocumentInformation().setModificationDate(printed);
        pdf.setDocumentId(id);
    }

    static byte[] bytes(PDDocument pdf) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        pdf.save(out);
        return out.toByteArray();
    }
}
