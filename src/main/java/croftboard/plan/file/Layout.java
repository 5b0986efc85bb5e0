package croftboard.plan.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.Map;

/**
 * Lays JSON out so that one row of a plan is one line: what holds only plain values stands on one line, the rest is
 * indented. Version control then shows a changed row as one changed line.
 */
final class Layout {
    private final StringBuilder text = new StringBuilder();

    static String of(JsonNode node) {
        Layout layout = new Layout();
        layout.write(node, "");
        return layout.text.append('\n').toString();
    }

    private void write(JsonNode node, String indent) {
        if (node.isValueNode()) {
            text.append(node);
            return;
        }
        boolean flat = isFlat(node);
        String inner = indent + "  ";
        text.append(node.isObject() ? '{' : '[');
        if (node.isObject()) {
            for (Iterator<Map.Entry<String, JsonNode>> i = node.properties().iterator(); i.hasNext();) {
                Map.Entry<String, JsonNode> e = i.next();
                begin(flat, inner);
                text.append(com.fasterxml.jackson.databind.node.TextNode.valueOf(e.getKey())).append(": ");
                write(e.getValue(), inner);
                text.append(i.hasNext() ? flat ? ", " : "," : "");
            }
        } else {
            for (Iterator<JsonNode> i = node.iterator(); i.hasNext();) {
                begin(flat, inner);
                write(i.next(), inner);
                text.append(i.hasNext() ? flat ? ", " : "," : "");
            }
        }
        begin(flat, indent);
        text.append(node.isObject() ? '}' : ']');
    }

    private void begin(boolean flat, String indent) {
        if (!flat) {
            text.append('\n').append(indent);
        }
    }

    private static boolean isFlat(JsonNode node) {
        for (JsonNode child : node) {
            if (!child.isValueNode()) {
                return false;
            }
        }
        return true;
    }
}
