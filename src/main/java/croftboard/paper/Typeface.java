package croftboard.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How wide the characters of the shipped typeface are, read from its own tables ({@code head}, {@code hhea}, {@code hmtx},
 * {@code cmap} format 4 and 12 of the OpenType specification), so that a maker can ask whether words fit. Several threads
 * may ask at once.
 */
public final class Typeface {
    private static final int ASCII_END = 127;
    private static final int CMAP = 0x636D6170;
    private static final int HEAD = 0x68656164;
    private static final int HHEA = 0x68686561;
    private static final int HMTX = 0x686D7478;
    private final ByteBuffer file;
    private final Map<Integer, Integer> tables = new HashMap<>();
    private final Map<Integer, Integer> widths = new ConcurrentHashMap<>();
    private final int perEm;
    private final int measured;
    private final int characters;

    private Typeface(String resource) {
        try (InputStream in = Typeface.class.getResourceAsStream(resource)) {
            file = ByteBuffer.wrap(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (int i = 0; i < u16(4); i++) {
            tables.put(file.getInt(12 + 16 * i), file.getInt(12 + 16 * i + 8));
        }
        perEm = u16(tables.get(HEAD) + 18);
        measured = u16(tables.get(HHEA) + 34);
        characters = unicodeTable(tables.get(CMAP));
    }

    private static final class Plain {
        private static final Typeface FACE = new Typeface("/fonts/DejaVuSans.ttf");
    }

    private static final class Bold {
        private static final Typeface FACE = new Typeface("/fonts/DejaVuSans-Bold.ttf");
    }

    public static Typeface plain() {
        return Plain.FACE;
    }

    public static Typeface bold() {
        return Bold.FACE;
    }

    private int u16(int at) {
        return file.getShort(at) & 0xFFFF;
    }

    /** Windows' full repertoire if there is one, else its basic plane. */
    private int unicodeTable(int cmap) {
        int basic = -1;
        for (int i = 0; i < u16(cmap + 2); i++) {
            int at = cmap + 4 + 8 * i;
            if (u16(at) == 3 && u16(at + 2) == 10) {
                return cmap + file.getInt(at + 4);
            }
            basic = u16(at) == 3 && u16(at + 2) == 1 ? cmap + file.getInt(at + 4) : basic;
        }
        return basic;
    }

    /** Width of a line of text in ems: times the size of type it is points. */
    public double width(String text) {
        return text.codePoints().mapToDouble(c -> widths.computeIfAbsent(c, this::unitsOf)).sum() / perEm;
    }

    /** Whether the typeface can draw it. */
    public boolean has(int character) {
        return character < ASCII_END && character >= ' ' || glyph(character) != 0;
    }

    private int unitsOf(int character) {
        return u16(tables.get(HMTX) + 4 * Math.min(glyph(character), measured - 1));
    }

    private int glyph(int c) {
        return u16(characters) == 12 ? glyphIn12(c) : c > 0xFFFF ? 0 : glyphIn4(c);
    }

    private int glyphIn12(int c) {
        for (int i = 0; i < file.getInt(characters + 12); i++) {
            int group = characters + 16 + 12 * i;
            if (c <= file.getInt(group + 4)) {
                return c < file.getInt(group) ? 0 : file.getInt(group + 8) + c - file.getInt(group);
            }
        }
        return 0;
    }

    private int glyphIn4(int c) {
        int twice = u16(characters + 6);
        for (int i = 0; i < twice; i += 2) {
            int end = u16(characters + 14 + i);
            if (c <= end) {
                int start = u16(characters + 16 + twice + i);
                int delta = u16(characters + 16 + 2 * twice + i);
                int at = characters + 16 + 3 * twice + i;
                int range = u16(at);
                if (c < start) {
                    return 0;
                }
                int glyph = range == 0 ? c : u16(at + range + 2 * (c - start));
                return glyph == 0 ? 0 : glyph + delta & 0xFFFF;
            }
        }
        return 0;
    }
}
