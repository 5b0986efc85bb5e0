package croftboard.paper.file;

import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The PDF files of a week: one for each kind, laid out once, and the packet put together from their pages. */
final class PdfPacket {
    private static final int PRESSES = 2;
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private int pages;

    PdfPacket(PaperContext context, Map<SheetKind, List<Sheet>> kinds) throws IOException {
        List<Callable<Kind>> work = new ArrayList<>();
        ThreadLocal<PdfPress> presses = new ThreadLocal<>();
        kinds.forEach((kind, sheets) -> work.add(() -> {
            if (presses.get() == null) {
                presses.set(new PdfPress(context));
            }
            return press(presses.get(), context, kind, sheets);
        }));
        List<Kind> done = work.size() == 1 ? List.of(alone(work.get(0))) : together(work);
        try {
            done.forEach(k -> files.put(k.kind.word(), k.bytes));
            for (Kind k : done) {
                pages += k.pdf.getNumberOfPages();
            }
            if (done.size() > 1) {
                files.put("packet", packet(context, done));
            }
        } finally {
            for (Kind k : done) {
                k.pdf.close();
            }
        }
    }

    Map<String, byte[]> files() {
        return files;
    }

    int pages() {
        return pages;
    }

    private record Kind(SheetKind kind, PDDocument pdf, byte[] bytes) { }

    private static Kind press(PdfPress press, PaperContext context, SheetKind kind, List<Sheet> sheets) throws IOException {
        String html = new HtmlPages(context).forPaper(kind.title() + " " + context.planName(), sheets);
        PDDocument pdf = press.document(html, kind.ordinal());
        return new Kind(kind, pdf, PdfPress.bytes(pdf));
    }

    private static Kind alone(Callable<Kind> work) throws IOException {
        try {
            return work.call();
        } catch (IOException | RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IOException(e);
        }
    }

    private static List<Kind> together(List<Callable<Kind>> work) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(PRESSES);
        try {
            List<Kind> done = new ArrayList<>();
            for (Future<Kind> kind : pool.invokeAll(work)) {
                done.add(kind.get());
            }
            return done;
        } catch (ExecutionException e) {
            throw e.getCause() instanceof IOException io ? io : new IOException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while pressing pages", e);
        } finally {
            pool.shutdownNow();
        }
    }

    private static byte[] packet(PaperContext context, List<Kind> kinds) throws IOException {
        PdfPress.quiet();
        try (PDDocument packet = new PDDocument(IOUtils.createMemoryOnlyStreamCache())) {
            PDFMergerUtility merger = new PDFMergerUtility();
            for (Kind k : kinds) {
                merger.appendDocument(packet, k.pdf);
            }
            PdfPress.stamp(packet, SheetKind.ofAWeek().size(), context.origin());
            return PdfPress.bytes(packet);
        }
    }
}
