package croftboard.paper.file;

import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.order.PurchaseOrder;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A week's sheets in a folder: one file for each kind, all of them as one packet in working order, orders also in the forms
 * that vendors take. Every file is written whole or not at all; a trace of what was printed stays beside them.
 */
public final class Packet {
    private static final String PRINTED = "printed";
    private final PaperContext context;
    private final Path folder;
    private final Trace trace;
    private final List<Path> written = new ArrayList<>();

    private Packet(PaperContext context, Path folder) {
        this.context = context;
        this.folder = folder;
        this.trace = new Trace(folder.resolve(PRINTED));
    }

    /**
     * What was done.
     *
     * @param pages of the packet; 0 when no PDF was written
     * @param changed sheets that differ from the ones printed before
     * @param gone sheets that were printed before and are no longer made
     */
    public record Written(List<Path> files, int pages, List<Again> changed, Set<String> gone) { }

    /** @param from plan of the earlier print. @param lines that are gone ({@code - }) or new ({@code + }) */
    public record Again(String id, String title, String from, List<String> lines) { }

    /**
     * Writes the sheets, which stand in working order.
     *
     * @param whole kinds of which every sheet is here: only of those can one be missed
     */
    public static Written write(PaperContext context, Path folder, List<Sheet> sheets, Set<SheetKind> whole,
            PaperFormat format) throws IOException {
        return new Packet(context, folder).write(sheets, whole, format);
    }

    private Written write(List<Sheet> sheets, Set<SheetKind> whole, PaperFormat format) throws IOException {
        WholeFile.makeFolder(folder);
        WholeFile.makeFolder(folder.resolve(PRINTED));
        WholeFile.clean(folder);
        Map<SheetKind, List<Sheet>> kinds = new TreeMap<>();
        sheets.forEach(s -> kinds.computeIfAbsent(s.kind(), k -> new ArrayList<>()).add(s));
        int pages = 0;
        switch (format) {
            case PDF -> pages = pdf(kinds);
            case HTML -> html(kinds, sheets);
            case CSV -> csv(sheets);
            case TEXT -> texts(sheets);
        }
        if (kinds.containsKey(SheetKind.ORDER) && format == PaperFormat.PDF) {
            orders();
        }
        if (kinds.containsKey(SheetKind.ORDER_CALENDAR) && format != PaperFormat.CSV) {
            file(folder.resolve("order-calendar" + suffix() + ".ics"), CalendarFile.of(context));
        }
        return traced(sheets, whole, pages);
    }

    private int pdf(Map<SheetKind, List<Sheet>> kinds) throws IOException {
        PdfPacket packet = new PdfPacket(context, kinds);
        for (Map.Entry<String, byte[]> file : packet.files().entrySet()) {
            file(folder.resolve(file.getKey() + suffix() + ".pdf"), file.getValue());
        }
        return packet.pages();
    }

    private void html(Map<SheetKind, List<Sheet>> kinds, List<Sheet> sheets) throws IOException {
        HtmlPages pages = new HtmlPages(context);
        for (Map.Entry<SheetKind, List<Sheet>> kind : kinds.entrySet()) {
            file(folder.resolve(kind.getKey().word() + suffix() + ".html"),
                    pages.forScreen(kind.getKey().title() + " " + context.planName(), kind.getValue()));
        }
        if (kinds.size() > 1) {
            file(folder.resolve("packet" + suffix() + ".html"), pages.forScreen("Packet " + context.planName(), sheets));
        }
    }

    private void csv(List<Sheet> sheets) throws IOException {
        for (Sheet sheet : sheets) {
            file(inKind(sheet, "csv"), CsvSheet.of(sheet.data()));
        }
    }

    private void texts(List<Sheet> sheets) throws IOException {
        Foot foot = new Foot(context.origin());
        for (Sheet sheet : sheets) {
            file(inKind(sheet, "txt"), foot.told(sheet).map(t -> t + "\n\n").orElse("") + TextSheet.of(sheet) + "\n"
                    + foot.plan() + "\n" + foot.origin() + "\n");
        }
    }

    /** The forms in which an order goes out. */
    private void orders() throws IOException {
        for (PurchaseOrder order : PurchaseOrder.all(context)) {
            Path of = folder.resolve(SheetKind.ORDER.word());
            file(of.resolve(order.id() + ".xml"), OrderXml.of(order));
            file(of.resolve(order.id() + ".csv"), CsvSheet.of(croftboard.paper.order.OrderSheets.data(order)));
            file(of.resolve(order.id() + ".txt"), croftboard.paper.order.OrderLetter.of(order));
        }
    }

    private Path inKind(Sheet sheet, String ending) {
        return folder.resolve(sheet.kind().word()).resolve(sheet.id() + "." + ending);
    }

    /** What was left out by day or vendor shows in the name, so that a part never takes the whole's place. */
    private String suffix() {
        return context.filters().vendor().map(v -> "-" + v).orElse("") + context.filters().day().map(d -> "-" + d).orElse("");
    }

    private void file(Path file, String text) throws IOException {
        file(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private void file(Path file, byte[] content) throws IOException {
        WholeFile.makeFolder(file.getParent());
        WholeFile.replace(file, content);
        written.add(file);
    }

    private Written traced(List<Sheet> sheets, Set<SheetKind> whole, int pages) throws IOException {
        List<Again> changed = new ArrayList<>();
        Set<String> made = new TreeSet<>();
        for (Sheet sheet : sheets) {
            Optional<Trace.Changed> differs = trace.differs(sheet);
            differs.ifPresent(d -> changed.add(new Again(d.id(), d.title(), d.from(), d.lines())));
            trace.keep(sheet, context.planName());
            made.add(sheet.id());
        }
        Set<String> words = new TreeSet<>();
        whole.forEach(k -> words.add(k.word()));
        Set<String> gone = Files.isDirectory(folder) ? trace.gone(words, made) : Set.of();
        for (String id : gone) {
            trace.retire(id);
        }
        return new Written(List.copyOf(written), pages, List.copyOf(changed), gone);
    }
}
