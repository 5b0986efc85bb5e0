package croftboard.paper.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.paper.Contexts;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.order.CalendarSheet;
import croftboard.paper.order.OrderSheets;
import croftboard.plan.WeekPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PacketTest {
    private static final Set<SheetKind> BOTH = EnumSet.of(SheetKind.ORDER, SheetKind.ORDER_CALENDAR);
    @TempDir
    private Path folder;

    private static List<Sheet> sheets(PaperContext context) {
        List<Sheet> sheets = new ArrayList<>(new OrderSheets().make(context));
        sheets.addAll(new CalendarSheet().make(context));
        return sheets;
    }

    private Packet.Written print(PaperContext context, PaperFormat format) throws IOException {
        return Packet.write(context, folder, sheets(context), BOTH, format);
    }

    /** The plan without its first order, and with one more pack in the last. */
    private static PaperContext other(PaperContext c) {
        List<WeekPlan.Order> orders = new ArrayList<>(c.plan().orders());
        orders.remove(0);
        WeekPlan.Order o = orders.remove(orders.size() - 1);
        WeekPlan.OrderLine l = o.lines().get(0);
        WeekPlan.OrderLine more = new WeekPlan.OrderLine(l.item(), l.pack(), l.packs() + 1, l.packMg(), l.price(),
                l.cost() + l.price(), l.locality(), l.whyLocal(), l.onList(), l.promised());
        orders.add(new WeekPlan.Order(o.vendor(), o.delivery(), o.cutOff(), List.of(more), o.total() + l.price(), o.minimum(),
                o.toMinimum(), o.fee()));
        WeekPlan p = c.plan();
        WeekPlan plan = new WeekPlan(p.week(), p.fingerprint(), p.inputs(), p.menu(), p.batches(), orders, p.needs(), p.flows(),
                p.surplus(), p.account(), p.promises(), p.share(), p.proof(), p.missing(), p.swaps());
        return new PaperContext(c.book(), plan, 2, true, c.printed(), c.filters(), c.notSent());
    }

    @Test
    void pdf_oneFileAKind_andThePacketHasAllTheirPages() throws IOException {
        Packet.Written written = print(Contexts.sample(), PaperFormat.PDF);
        int pages = 0;
        for (String name : List.of("order.pdf", "order-calendar.pdf")) {
            try (PDDocument pdf = Loader.loadPDF(folder.resolve(name).toFile())) {
                pages += pdf.getNumberOfPages();
            }
        }
        try (PDDocument packet = Loader.loadPDF(folder.resolve("packet.pdf").toFile())) {
            assertThat(packet.getNumberOfPages()).isEqualTo(pages).isEqualTo(written.pages());
        }
        assertThat(written.files()).allMatch(Files::isRegularFile).contains(folder.resolve("order-calendar.ics"),
                folder.resolve("order/order-hollow-brook-2027-08-16.xml"), folder.resolve("order/order-hollow-brook-2027-08-16.txt"),
                folder.resolve("order/order-hollow-brook-2027-08-16.csv"));
        assertThat(names()).noneMatch(n -> n.contains(".tmp"));
    }

    @Test
    void printedAgain_theSameFilesByteForByte() throws IOException {
        print(Contexts.sample(), PaperFormat.PDF);
        byte[] first = Files.readAllBytes(folder.resolve("packet.pdf"));
        Packet.Written again = print(Contexts.sample(), PaperFormat.PDF);
        assertThat(Files.readAllBytes(folder.resolve("packet.pdf"))).isEqualTo(first);
        assertThat(again.changed()).isEmpty();
        assertThat(again.gone()).isEmpty();
    }

    @Test
    void aSheetThatDiffers_saysWhichLines_andTheOldOneIsKept() throws IOException {
        PaperContext sample = Contexts.sample();
        print(sample, PaperFormat.TEXT);
        Packet.Written written = print(other(sample), PaperFormat.TEXT);
        assertThat(written.gone()).containsExactly("order-mill-run-depot-2027-08-13");
        Packet.Again creamery = written.changed().stream().filter(c -> c.id().startsWith("order-stone")).findFirst().orElseThrow();
        assertThat(creamery.from()).isEqualTo("2027-W33@1");
        assertThat(creamery.lines()).anyMatch(l -> l.startsWith("- Cheddar") || l.startsWith("- cheddar"))
                .anyMatch(l -> l.startsWith("+ ") && l.contains("$124.00"));
        assertThat(written.changed()).noneMatch(c -> c.id().startsWith("order-hollow"));
        assertThat(folder.resolve("printed/order-stone-creamery-2027-08-17~1.txt")).content().contains("$93.00");
        assertThat(folder.resolve("printed/order-stone-creamery-2027-08-17.txt")).content().contains("$124.00");
    }

    @Test
    void aPart_neverTakesTheWholesPlace_norMissesTheRest() throws IOException {
        print(Contexts.sample(), PaperFormat.PDF);
        byte[] whole = Files.readAllBytes(folder.resolve("order.pdf"));
        PaperContext part = Contexts.only(Contexts.sample(), null, "hollow-brook");
        Packet.Written written = Packet.write(part, folder, new OrderSheets().make(part), Set.of(), PaperFormat.PDF);
        assertThat(written.gone()).isEmpty();
        assertThat(written.changed()).isEmpty();
        assertThat(Files.readAllBytes(folder.resolve("order.pdf"))).isEqualTo(whole);
        assertThat(folder.resolve("order-hollow-brook.pdf")).isRegularFile();
    }

    @Test
    void otherFormats() throws IOException {
        print(Contexts.hostile(), PaperFormat.HTML);
        String html = Files.readString(folder.resolve("order.html"));
        assertThat(html).contains("&lt;script&gt;").doesNotContain("<script").doesNotContain("\u202E");
        print(Contexts.hostile(), PaperFormat.CSV);
        assertThat(folder.resolve("order-calendar")).isDirectory();
        assertThat(folder.resolve("order/order-hollow-brook-2027-08-16.csv")).content().startsWith("order,version,vendor");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).toList();
        }
    }
}
