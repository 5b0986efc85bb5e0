package croftboard.paper.file;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;

/** The shipped typeface as shapes: words in a picture need no typeface of the machine's. In the typeface's own units. */
record Outlines(TrueTypeFont face) {
    int perEm() {
        try {
            return face.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double width(String text) {
        return text.codePoints().map(this::advance).sum();
    }

    List<Shape> shapes(String text) {
        List<Shape> shapes = new ArrayList<>();
        int x = 0;
        for (int c : text.codePoints().toArray()) {
            try {
                GlyphData glyph = face.getGlyph().getGlyph(face.getUnicodeCmapLookup().getGlyphId(c));
                if (glyph != null) {
                    shapes.add(AffineTransform.getTranslateInstance(x, 0).createTransformedShape(glyph.getPath()));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            x += advance(c);
        }
        return shapes;
    }

    private int advance(int c) {
        try {
            return face.getAdvanceWidth(face.getUnicodeCmapLookup().getGlyphId(c));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
