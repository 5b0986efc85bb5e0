package croftboard.plan.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** Text to JSON tree: one value, no key twice, nothing after it. */
final class Json {
    private static final JsonMapper READER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION).build();

    private Json() { }

    static In object(String text) throws Unreadable {
        try {
            JsonNode node = READER.readTree(text);
            if (node.isMissingNode()) {
                throw new Unreadable("the file is empty");
            }
            return In.of(node, "$");
        } catch (JsonProcessingException e) {
            var place = e.getLocation();
            String where = place == null ? "" : " in line " + place.getLineNr() + ", column " + place.getColumnNr();
            throw new Unreadable("the file is cut off or damaged" + where + ": " + (isTwice(e) ? "a key stands twice there"
                    : "it cannot be read as JSON from there on"));
        }
    }

    private static boolean isTwice(JsonProcessingException e) {
        return e.getOriginalMessage() != null && e.getOriginalMessage().startsWith("Duplicate");
    }

    /** Reads the key "format" of a file and refuses what a newer version wrote. @param known newest format known here */
    static void checkFormat(In in, int known) throws Unreadable {
        long format = in.number("format");
        if (format > known) {
            throw new Unreadable("$.format", "the file is written in format " + format + " by a newer Croftboard; this one "
                    + "reads up to format " + known + ". Use the newer one");
        }
        if (format < 1) {
            throw new Unreadable("$.format", "there is no format " + format + "; formats count from 1");
        }
    }
}
