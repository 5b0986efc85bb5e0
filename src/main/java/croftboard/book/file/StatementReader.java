package croftboard.book.file;

import croftboard.book.Ingredient.Origin;
import croftboard.book.Ingredient.Statement;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What an ingredient is known to contain and where it comes from: {@code none}, {@code unknown}, or a list.
 * Unknown beside known words leaves these words known.
 */
final class StatementReader {
    private static final Map<String, Origin> ORIGINS = Words.of(Origin.values());
    private final Values values;
    private final Notebook notebook;

    StatementReader(Values values) {
        this.values = values;
        this.notebook = values.notebook();
    }

    /** @param known the words that a list may hold beside {@code unknown} */
    Statement read(Node node, Map<String, String> known) {
        if (node instanceof Node.Sequence sequence) {
            return list(sequence, known);
        }
        String example = known.keySet().iterator().next();
        return values.value(node, "none, unknown or a list like [" + example + "]", Statement.UNKNOWN, s ->
                {
            if (s.text().equals(Words.NONE)) {
                return new Statement(Set.of(), true);
            }
            if (!s.text().equals(Words.UNKNOWN)) {
                boolean word = known.containsKey(s.text());
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is neither none, unknown nor a list",
                        word ? "write [" + s.text() + "]" : "write none, unknown or a list like ["
                        + example + "]");
            }
            return Statement.UNKNOWN;
        });
    }

    private Statement list(Node.Sequence sequence, Map<String, String> known) {
        Set<String> contains = new LinkedHashSet<>();
        boolean othersKnown = true;
        for (Node item : sequence.items()) {
            java.util.Optional<Node.Scalar> scalar = values.scalar(item, "a word");
            if (scalar.isEmpty()) {
                continue;
            }
            String word = scalar.get().text();
            if (word.equals(Words.UNKNOWN)) {
                othersKnown = false;
            } else if (!known.containsKey(word)) {
                notebook.fault(item.spot(), Notebook.show(word) + " is none of the words here",
                        meant(word, known));
            } else if (!contains.add(word)) {
                notebook.fault(item.spot(), Notebook.show(word) + " stands twice in the list",
                        "keep one of them");
            }
        }
        if (sequence.items().isEmpty()) {
            notebook.fault(sequence.spot(),
                    "an empty list does not say whether nothing is in it or nothing is known",
                    "write none or unknown");
        }
        return new Statement(Collections.unmodifiableSet(contains), othersKnown);
    }

    private String meant(String word, Map<String, String> known) {
        String start = Words.GROUPS.get(word);
        if (start != null && known == Words.ALLERGENS) {
            return start.equals("tree-nut") ? "name the kind of nut: almond, walnut, ..."
                    : "name the kind: " + String.join(", ", known.keySet().stream()
                    .filter(k -> k.startsWith(start)).toList());
        }
        if (word.equals(Words.NONE)) {
            return "none stands alone, without a list";
        }
        return notebook.meant(word, known.keySet(), "the words are " + String.join(", ", known.keySet()));
    }

    /** One origin or a list of them. */
    Set<Origin> origins(Node node) {
        List<Node> items = node instanceof Node.Sequence sequence ? sequence.items() : List.of(node);
        if (node instanceof Node.Sequence sequence && items.isEmpty()) {
            notebook.fault(sequence.spot(), "an empty list of origins",
                    "write plant, dairy, ... or unknown");
        }
        EnumSet<Origin> out = EnumSet.noneOf(Origin.class);
        for (Node item : items) {
            out.add(values.word(item, ORIGINS, Origin.UNKNOWN));
        }
        return Collections.unmodifiableSet(out.isEmpty() ? EnumSet.of(Origin.UNKNOWN) : out);
    }

    /** Words of allergens that a promise names. */
    Set<String> without(Node node) {
        Set<String> out = new LinkedHashSet<>();
        for (Node item : values.list(node)) {
            values.scalar(item, "an allergen's word").ifPresent(s -> {
                if (!Words.ALLERGENS.containsKey(s.text())) {
                    notebook.fault(item.spot(), Notebook.show(s.text()) + " is none of the words here",
                            meant(s.text(), Words.ALLERGENS));
                } else {
                    out.add(s.text());
                }
            });
        }
        return Collections.unmodifiableSet(out);
    }
}
