package croftboard.paper.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import croftboard.book.LabelStock;
import croftboard.paper.Block;
import croftboard.paper.Contexts;
import croftboard.paper.Data;
import croftboard.paper.LabelFit;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.Test;

class LabelsFitTest {
    private static final LabelStock TEN = new LabelStock(5, 2, 12_700, 3_969, 101_600, 50_800, 106_363, 50_800);
    private static final String[] WORDS = {"water", "chickpeas", "tahini (sesame)", "lemon juice,", "garlic", "salt;",
        "extra-virgin olive oil", "monounsaturated", "of", "and", "Contains", "WHEAT,", "2%", "mmmmmmmm", "iiiiii"};

    private static List<Block> label(Random random, int words) {
        StringBuilder text = new StringBuilder("start");
        for (int i = 0; i < words; i++) {
            text.append(' ').append(WORDS[random.nextInt(WORDS.length)]);
        }
        return List.of(new Block.Heading(1, "Hummus " + random.nextInt(100)), new Block.Text(text.toString()),
                new Block.Notice("Contains: sesame last"));
    }

    @Test
    void whatFits_standsWhollyOnItsLabel() throws IOException {
        Random random = new Random(11);
        List<List<Block>> cells = new ArrayList<>();
        while (cells.size() < 30) {
            List<Block> label = label(random, random.nextInt(90));
            if (LabelFit.type(TEN, label, 6, 11).isPresent()) {
                cells.add(label);
            }
        }
        try (PDDocument pdf = Loader.loadPDF(PdfText.bytes(Contexts.sample(), List.of(page(cells))))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(3);
            for (int i = 0; i < cells.size(); i++) {
                String text = on(pdf, i);
                String wanted = ((Block.Heading) cells.get(i).get(0)).text() + " " + ((Block.Text) cells.get(i).get(1)).text()
                        + " Contains: sesame last";
                assertThat(text.replace(" ", "")).isEqualTo(wanted.replace(" ", ""));
            }
        }
    }

    private static String on(PDDocument pdf, int cell) throws IOException {
        int row = cell % 10 / 2;
        int column = cell % 2;
        double point = 72 / 25_400.0;
        PDFTextStripperByArea area = new PDFTextStripperByArea();
        area.setSortByPosition(true);
        area.addRegion("cell", new Rectangle2D.Double((TEN.left() + column * TEN.pitchX()) * point,
                (TEN.top() + row * TEN.pitchY()) * point, TEN.width() * point, TEN.height() * point));
        area.extractRegions(pdf.getPage(cell / 10));
        return area.getTextForRegion("cell").replaceAll("\\s+", " ").strip();
    }

    private static Sheet page(List<List<Block>> cells) {
        return new Sheet(SheetKind.LABEL, "labels", "Labels", List.of(), List.of(new Block.LabelPage(TEN, cells, 6, 11)),
                Data.of("x").done(), Sheet.Look.BARE);
    }

    @Test
    void whatDoesNotFit_isRefused() {
        List<Block> long1 = List.of(new Block.Text("long word ".repeat(300)));
        assertThat(LabelFit.type(TEN, long1, 6, 11)).isEmpty();
        assertThatThrownBy(() -> new Block.LabelPage(TEN, List.of(long1), 6, 11)).isInstanceOf(IllegalArgumentException.class);
    }
}
