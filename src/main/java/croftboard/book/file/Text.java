package croftboard.book.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Bytes of a file to text: UTF-8 only, at most {@value #MOST_BYTES} bytes. */
final class Text {
    static final int MOST_BYTES = 1 << 20;
    static final String TOO_LARGE = "the file is larger than 1 MB";
    static final String TOO_LARGE_REMEDY = "split it; a file is at most 1 MB";

    private Text() { }

    /** The text, without a byte-order mark; empty when it is no UTF-8 or too long, with the fault noted. */
    static Optional<String> of(String file, byte[] bytes, Notebook notebook) {
        if (bytes.length > MOST_BYTES) {
            notebook.fault(Spot.whole(file), TOO_LARGE, TOO_LARGE_REMEDY);
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        if (decoder.decode(in, out, true).isError()) {
            out.flip();
            notebook.fault(endOf(file, out.toString()), "the file is no UTF-8 text from here on",
                    "save it again with the encoding UTF-8");
            return Optional.empty();
        }
        String text = out.flip().toString();
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    /** The spot just behind the last character of {@code text}. */
    static Spot endOf(String file, String text) {
        int line = 1;
        int start = 0;
        for (int i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) {
            line++;
            start = i + 1;
        }
        return new Spot(file, line, text.codePointCount(start, text.length()) + 1);
    }
}
