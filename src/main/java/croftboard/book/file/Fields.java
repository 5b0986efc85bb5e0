package croftboard.book.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The {@code key: value} lines of one thing, held against the keys it may and must have. */
final class Fields {
    private final Spot spot;
    private final Map<String, Node> values;

    private Fields(Spot spot, Map<String, Node> values) {
        this.spot = spot;
        this.values = values;
    }

    /**
     * @param what the thing in words, for messages: {@code the cut [diced]}
     * @param spot where the thing starts: its id, or its first key
     */
    static Fields of(Notebook notebook, Form form, String what, Spot spot, Node node) {
        if (!(node instanceof Node.Mapping mapping)) {
            if (!(node instanceof Node.Gone)) {
                notebook.fault(node.spot(), what + " is not written as key: value lines",
                        "give it the keys " + String.join(", ", form.required().isEmpty() ? form.known()
                        : form.required()));
            }
            return new Fields(spot, everythingGone(form, spot));
        }
        Map<String, Node> values = new LinkedHashMap<>();
        for (Node.Pair pair : mapping.pairs()) {
            String key = pair.key().text();
            if (!form.known().contains(key)) {
                notebook.fault(pair.key().spot(), "unknown key " + Notebook.show(key) + " in " + what,
                        remedy(notebook, form, pair, mapping.flow()));
            } else if (values.putIfAbsent(key, pair.value()) != null) {
                notebook.fault(pair.key().spot(), "the key [" + key + "] stands twice in " + what,
                        "keep one of them");
            }
        }
        for (String key : form.required()) {
            if (!values.containsKey(key)) {
                notebook.fault(spot, "the key [" + key + "] is missing in " + what, "add " + key + ": ...");
                values.put(key, new Node.Gone(spot));
            }
        }
        return new Fields(spot, values);
    }

    private static Map<String, Node> everythingGone(Form form, Spot spot) {
        Map<String, Node> gone = new LinkedHashMap<>();
        form.required().forEach(key -> gone.put(key, new Node.Gone(spot)));
        return gone;
    }

    private static String remedy(Notebook notebook, Form form, Node.Pair pair, boolean flow) {
        Optional<String> meant = notebook.nearest().of(pair.key().text(), form.known());
        if (meant.isPresent()) {
            return "did you mean [" + meant.get() + "]?";
        }
        boolean brokenOff = flow && pair.value() instanceof Node.Scalar value && value.isEmpty();
        return brokenOff ? "put \"quotes\" around a text that holds a comma"
                : "the keys here are " + String.join(", ", form.known());
    }

    Spot spot() {
        return spot;
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    /** The value of a key; {@link Node.Gone} when there is none. */
    Node get(String key) {
        return values.getOrDefault(key, new Node.Gone(spot));
    }

    <T> T get(String key, Function<Node, T> read) {
        return read.apply(get(key));
    }

    <T> Optional<T> maybe(String key, Function<Node, T> read) {
        return has(key) ? Optional.of(read.apply(get(key))) : Optional.empty();
    }

    <T> T or(String key, T otherwise, Function<Node, T> read) {
        return has(key) ? read.apply(get(key)) : otherwise;
    }

    /** Whether the key holds a list without items: {@code []}. */
    boolean isEmptyList(String key) {
        return get(key) instanceof Node.Sequence sequence && sequence.items().isEmpty();
    }

    /** The items of a list; none when the key is absent. */
    List<Node> list(String key, Values values) {
        return values.list(get(key));
    }
}
