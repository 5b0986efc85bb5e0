package croftboard.paper.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.MultiFormatReader;
import croftboard.book.LabelStock;
import croftboard.measure.Cents;
import croftboard.paper.Block;
import croftboard.paper.Contexts;
import croftboard.paper.Data;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.served.PriceBars;
import croftboard.paper.served.PriceNumber;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** The price bars as they come out of the printer: another program reads them off the page. */
class BarsOnPaperTest {
    private static final LabelStock STOCK = new LabelStock(3, 2, 12_700, 3_969, 101_600, 84_667, 106_363, 84_667);

    @Test
    void bars_areReadOffThePage_inTheirTrueSize() throws IOException, NotFoundException {
        PriceNumber number = PriceNumber.of("40711", new Cents(875)).orElseThrow();
        Sheet sheet = new Sheet(SheetKind.LABEL, "label-test", "Label", List.of(), List.of(new Block.LabelPage(STOCK,
                List.of(List.of(new Block.Heading(1, "Bowl"), new Block.Picture(PriceBars.svg(number), "bars"))), 9, 13)),
                Data.of("a").done(), Sheet.Look.BARE);
        byte[] pdf = PdfText.bytes(Contexts.sample(), List.of(sheet));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 300);
            // 113 modules of 0.33 mm are 37.3 mm: the bars stand within 1,200 by 1,000 dots of the label's corner
            BufferedImage label = page.getSubimage(40, 150, 1160, 980);
            int[] pixels = label.getRGB(0, 0, label.getWidth(), label.getHeight(), null, 0, label.getWidth());
            String read = new MultiFormatReader().decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(
                    label.getWidth(), label.getHeight(), pixels))), Map.of(DecodeHintType.POSSIBLE_FORMATS,
                    List.of(BarcodeFormat.UPC_A), DecodeHintType.TRY_HARDER, true)).getText();
            assertThat(read).isEqualTo(number.digits());
        }
    }
}
