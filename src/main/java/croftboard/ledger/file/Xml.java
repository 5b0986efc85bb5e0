package croftboard.ledger.file;

import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * XML of other people: it calls for nothing outside of itself and defines nothing. The bytes are made text here, because the
 * platform's reader prints lines of its own on the standard error when they are no text.
 */
final class Xml {
    private static final int LOOKED_AT = 200;
    private static final Pattern DECLARED = Pattern.compile("^<\\?xml[^>]*encoding=[\"']([A-Za-z0-9._-]+)[\"']");
    private static final Set<String> KNOWN = Set.of("iso-8859-1", "windows-1252", "us-ascii");

    private Xml() { }

    static XMLStreamReader reader(byte[] content) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        String text = new String(content, charset(content));
        return factory.createXMLStreamReader(new StringReader(text.startsWith("\ufeff") ? text.substring(1) : text));
    }

    private static Charset charset(byte[] content) {
        int first = content.length < 2 ? 0 : (content[0] & 0xff) << 8 | content[1] & 0xff;
        if (first == 0xfeff || first == 0x003c) {
            return StandardCharsets.UTF_16BE;
        }
        if (first == 0xfffe || first == 0x3c00) {
            return StandardCharsets.UTF_16LE;
        }
        Matcher m = DECLARED.matcher(new String(content, 0, Math.min(content.length, LOOKED_AT), StandardCharsets.ISO_8859_1));
        boolean known = m.find() && KNOWN.contains(m.group(1).toLowerCase(java.util.Locale.ROOT));
        return known ? Charset.forName(m.group(1)) : StandardCharsets.UTF_8;
    }
}
