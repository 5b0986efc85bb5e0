package croftboard.paper.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.Contexts;
import croftboard.paper.Data;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.order.OrderSheets;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;

class PdfPressTest {
    private static final Data NONE = Data.of("nothing").done();

    private static Sheet sheet(String id, Sheet.Look look, Block... blocks) {
        return new Sheet(SheetKind.PREP, id, "Sheet " + id, List.of(), List.of(blocks), NONE, look);
    }

    private static Block rows(int count) {
        List<Row> rows = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            rows.add(Row.of("row" + i + " first line\nrow" + i + " last line", ""));
        }
        return new Block.Table(List.of(Column.words("What", 3), Column.blank("Done", 1)), rows);
    }

    @Test
    void samePagesAndTime_sameBytes() throws IOException {
        List<Sheet> sheets = new OrderSheets().make(Contexts.sample());
        assertThat(PdfText.bytes(Contexts.sample(), sheets)).isEqualTo(PdfText.bytes(Contexts.sample(), sheets));
    }

    @Test
    void everyPage_saysWhereItComesFrom() {
        PaperContext context = Contexts.sample();
        List<Sheet> sheets = List.of(sheet("a", Sheet.Look.PLAIN, rows(80)), sheet("b", Sheet.Look.BIG.wide(), rows(3)),
                sheet("c", Sheet.Look.PLAIN, new Block.Text("x")));
        List<String> pages = PdfText.pages(context, sheets);
        int first = pages.size() - 2;
        assertThat(first).isGreaterThan(2);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i)).contains("2027-W33@1 \u00b7 page " + (i < first ? i + 1 : 1) + " of " + (i < first ? first : 1))
                    .contains("Croftboard \u00b7 Tinderbox Lane Larder \u00b7 plan " + context.plan().fingerprint().substring(0, 8)
                            + " \u00b7 printed Thu 12 Aug 2027 06:05");
        }
    }

    @Test
    void noRow_isCutAtAPagesEnd_andHeadsRepeat() {
        for (String page : PdfText.pages(Contexts.sample(), List.of(sheet("a", Sheet.Look.BIG, rows(200))))) {
            assertThat(page).contains("What Done");
            for (int i = 1; i <= 200; i++) {
                assertThat(page.contains("row" + i + " first line")).isEqualTo(page.contains("row" + i + " last line"));
            }
        }
    }

    @Test
    void firstLine_saysWhatIsWrong() {
        Book book = SamplePlan.book();
        PaperContext context = Contexts.sample();
        Sheet order = new OrderSheets().make(context).get(0);
        OrderKey key = order.behind().iterator().next();
        assertThat(PdfText.pages(context, List.of(order)).get(0)).startsWith("Purchase order");
        assertThat(PdfText.pages(Contexts.notSent(context, Set.of(key)), List.of(order, sheet("free", Sheet.Look.PLAIN, rows(1)))))
                .satisfies(pages -> {
                    assertThat(pages.get(0)).startsWith("NOT SENT BEFORE CUT-OFF: Mill Run Depot, Fri 13 Aug. Nothing comes of it.");
                    assertThat(pages.get(pages.size() - 1)).startsWith("Sheet free");
                });
        List<String> incomplete = PdfText.pages(Contexts.of(book, SamplePlan.incomplete(book)),
                List.of(sheet("long", Sheet.Look.PLAIN, rows(100)), order));
        assertThat(incomplete).hasSizeGreaterThan(3).allMatch(p -> p.startsWith("NOT COMPLETE: 1 thing of this plan"));
        assertThat(PdfText.pages(Contexts.draft(context), List.of(order)).get(0)).contains("2027-W33@1 draft, not posted");
    }

    @Test
    void nothingBelowElevenPoints_butTheLastLineOfTheFoot() throws IOException {
        assertThat(Sheet.Look.LEAST_TYPE).isEqualTo(11);
        SmallestType smallest = new SmallestType();
        try (PDDocument pdf = Loader.loadPDF(PdfText.bytes(Contexts.sample(), new OrderSheets().make(Contexts.sample())))) {
            smallest.getText(pdf);
        }
        assertThat(smallest.words).isNotEmpty().allMatch(w -> w.contains("Croftboard") || w.contains("Larder") || w.isBlank());
    }

    @Test
    void onlyTheShippedTypeface_isUsedAndEmbedded() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfText.bytes(Contexts.hostile(), new OrderSheets().make(Contexts.hostile())))) {
            for (var page : pdf.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.getName()).contains("DejaVuSans");
                    assertThat(font.isEmbedded()).isTrue();
                }
            }
        }
    }

    /** The shipped typeface has no Han characters; a name in them is still told apart. */
    @Test
    void aCharacterThatCannotBeDrawn_isNamedByItsNumber() {
        Block text = new Block.Text("\u6f22\u5b57 caf\u00e9 \u2610 \ud83e\udd55 na\u00efve \u05d0");
        assertThat(PdfText.pages(Contexts.sample(), List.of(sheet("a", Sheet.Look.PLAIN, text))).get(0))
                .contains("[U+6F22][U+5B57] caf\u00e9 \u2610 [U+1F955] na\u00efve");
    }

    @Test
    void everyKindOfBlock_isDrawn() {
        String text = String.join(" ", PdfText.pages(Contexts.sample(), List.of(sheet("all", Sheet.Look.PLAIN,
                new Block.Heading(1, "head one"), new Block.Text("two\nlines"), Block.Fields.of("name", "value", "to write", ""),
                new Block.Notice("mind this"), new Block.Ticks(List.of("tick me")), new Block.Blank(2),
                new Block.Columns(List.of(List.of(new Block.Text("left")), List.of(new Block.Text("right")))),
                new Block.NewPage(), new Block.Picture("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"30mm\" height=\"10mm\""
                        + " viewBox=\"0 0 30 10\"><rect x=\"1\" y=\"1\" width=\"2\" height=\"8\"/><text x=\"5\" y=\"8\" "
                        + "font-size=\"4\">word</text></svg>", "a picture"),
                new Block.Table(List.of(Column.words("c", 1)), List.of(Row.group("group"), Row.strong("strong"), Row.total("sum")))))));
        assertThat(text).contains("head one", "two lines", "name value", "to write", "mind this", "\u2610 tick me", "left right",
                "group", "strong", "sum", "page 2 of 2");
    }
}
