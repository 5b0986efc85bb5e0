package croftboard.paper.file;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Collects the lines that are set in type below 11 points, a tenth of a point apart: the layout counts in dots. */
final class SmallestType extends PDFTextStripper {
    final List<String> words = new ArrayList<>();

    SmallestType() {
        setSortByPosition(true);
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) throws IOException {
        if (positions.stream().anyMatch(p -> p.getYScale() < 10.9f)) {
            words.add(text);
        }
        super.writeString(text, positions);
    }
}
