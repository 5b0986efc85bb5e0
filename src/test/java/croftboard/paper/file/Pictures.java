package croftboard.paper.file;

import croftboard.paper.SheetKind;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Makes a picture of one page of each kind of sheet: {@code Pictures FROM-DIR TO-DIR [KIND...]}. */
final class Pictures {
    private static final int DOTS_AN_INCH = 100;
    /** Words of the page that is shown, where it is not the first. */
    private static final Map<SheetKind, String> SHOWN = Map.of(SheetKind.ORDER, "Purchase order: Ploverstane",
            SheetKind.PREP, "Prep: Hot line, Monday", SheetKind.PULL, "Pull and thaw: Monday",
            SheetKind.BATCH, "at once. So it is",
            SheetKind.LABEL, "Net wt", SheetKind.LOG, "Cooling log");

    private Pictures() { }

    public static void main(String[] args) throws IOException {
        PdfPress.quiet();
        List<String> wanted = new ArrayList<>(List.of(args).subList(2, args.length));
        for (SheetKind kind : SheetKind.values()) {
            Path pdf = Path.of(args[0], kind.word() + ".pdf");
            if (Files.exists(pdf) && (wanted.isEmpty() || wanted.contains(kind.word()))) {
                File to = Path.of(args[1], kind.word() + ".png").toFile();
                picture(pdf, SHOWN.getOrDefault(kind, ""), to);
                System.out.println("wrote " + to);
            }
        }
    }

    private static void picture(Path file, String words, File to) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(page(pdf, words), DOTS_AN_INCH, ImageType.GRAY);
            ImageIO.write(image, "png", to);
        }
    }

    /** The first page with these words; else the first. */
    private static int page(PDDocument pdf, String words) throws IOException {
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            PDFTextStripper text = new PDFTextStripper();
            text.setStartPage(page);
            text.setEndPage(page);
            if (text.getText(pdf).contains(words)) {
                return page - 1;
            }
        }
        return 0;
    }
}
