package croftboard.cli;

import croftboard.cli.screen.Rows;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** JSON by RFC 8259 from maps, lists, texts, figures and booleans; pure ASCII, two blanks a level. */
final class JsonText {
    private JsonText() { }

    static String of(Object value) {
        StringBuilder text = new StringBuilder();
        write(value, "", text);
        return text.append('\n').toString();
    }

    /** One object a row, keyed by column. */
    static List<Map<String, Object>> objects(Rows rows) {
        List<Map<String, Object>> all = new ArrayList<>();
        for (List<Object> row : rows.rows()) {
            Map<String, Object> object = new LinkedHashMap<>();
            for (int c = 0; c < row.size(); c++) {
                object.put(rows.columns().get(c), row.get(c));
            }
            all.add(object);
        }
        return all;
    }

    private static void write(Object value, String indent, StringBuilder text) {
        if (value instanceof Map<?, ?> map) {
            object(map, indent, text);
        } else if (value instanceof List<?> list) {
            array(list, indent, text);
        } else if (value instanceof Optional<?> maybe) {
            maybe.ifPresentOrElse(v -> write(v, indent, text), () -> text.append("null"));
        } else if (value instanceof BigDecimal figure) {
            text.append(figure.toPlainString());
        } else if (value instanceof Boolean || value instanceof Integer || value instanceof Long) {
            text.append(value);
        } else {
            string(value.toString(), text);
        }
    }

    private static void object(Map<?, ?> map, String indent, StringBuilder text) {
        text.append('{');
        String inner = indent + "  ";
        Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
        while (entries.hasNext()) {
            Map.Entry<?, ?> e = entries.next();
            text.append('\n').append(inner);
            string(e.getKey().toString(), text);
            text.append(": ");
            write(e.getValue(), inner, text);
            text.append(entries.hasNext() ? "," : "\n" + indent);
        }
        text.append('}');
    }

    private static void array(List<?> list, String indent, StringBuilder text) {
        text.append('[');
        String inner = indent + "  ";
        for (int i = 0; i < list.size(); i++) {
            text.append('\n').append(inner);
            write(list.get(i), inner, text);
            text.append(i + 1 < list.size() ? "," : "\n" + indent);
        }
        text.append(']');
    }

    private static void string(String value, StringBuilder text) {
        text.append('"');
        for (char c : value.toCharArray()) {
            switch (c) {
                case '"' -> text.append("\\\"");
                case '\\' -> text.append("\\\\");
                case '\n' -> text.append("\\n");
                default -> text.append(c < ' ' || c > '~' ? String.format(Locale.ROOT, "\\u%04x", (int) c) : c);
            }
        }
        text.append('"');
    }
}
