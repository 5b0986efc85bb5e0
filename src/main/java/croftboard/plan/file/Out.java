package croftboard.plan.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import croftboard.measure.Ratio;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;

/** Writes one JSON object key by key, in the order in which it is told. What is absent is written as null. */
final class Out {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private final ObjectNode node = NODES.objectNode();

    ObjectNode node() {
        return node;
    }

    Out text(String key, String value) {
        node.put(key, value);
        return this;
    }

    /** Anything whose {@code toString} is its one written form: dates, weeks, ratios. */
    Out word(String key, Object value) {
        return text(key, value.toString());
    }

    Out ratio(String key, Ratio value) {
        return word(key, value);
    }

    Out whole(String key, long value) {
        node.put(key, value);
        return this;
    }

    Out yes(String key, boolean value) {
        node.put(key, value);
        return this;
    }

    /** {@code NOT_LOCAL} as {@code not-local}. */
    Out name(String key, Enum<?> value) {
        return text(key, nameOf(value));
    }

    static String nameOf(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Out maybe(String key, Optional<?> value) {
        return value.isPresent() ? word(key, value.get()) : none(key);
    }

    Out maybeWhole(String key, Optional<Long> value) {
        return value.isPresent() ? whole(key, value.get()) : none(key);
    }

    private Out none(String key) {
        node.putNull(key);
        return this;
    }

    Out object(String key, Out value) {
        node.set(key, value.node);
        return this;
    }

    <T> Out rows(String key, List<T> values, Function<T, Out> form) {
        ArrayNode rows = node.putArray(key);
        values.forEach(v -> rows.add(form.apply(v).node));
        return this;
    }

    Out words(String key, List<?> values) {
        ArrayNode rows = node.putArray(key);
        values.forEach(v -> rows.add(v.toString()));
        return this;
    }

    Out texts(String key, SortedMap<String, String> values) {
        Out inner = new Out();
        values.forEach(inner::text);
        return object(key, inner);
    }
}
