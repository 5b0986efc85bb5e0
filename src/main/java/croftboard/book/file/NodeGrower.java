package croftboard.book.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/**
 * Grows a tree of nodes from a parser's events, without recursion and at most {@value #DEEPEST}
 * levels deep, and refuses what a book has no use for: anchors, aliases, tags, directives, a second
 * document, a key that is no word.
 */
final class NodeGrower {
    static final int DEEPEST = 16;
    private final String file;
    private final Notebook notebook;
    private final Deque<Branch> open = new ArrayDeque<>();
    private int documents;
    private Node root;

    NodeGrower(String file, Notebook notebook) {
        this.file = file;
        this.notebook = notebook;
    }

    /** A mapping or list that is still growing; for mappings, {@code parts} hold key and value by turns. */
    private record Branch(Spot spot, boolean mapping, boolean flow, List<Node> parts) { }

    Node root() {
        return root != null ? root : new Node.Gone(Spot.whole(file));
    }

    /** @return false when the rest of the file cannot be read; the fault is noted */
    boolean take(Event event) {
        return switch (event.getEventId()) {
            case DocumentStart -> document((DocumentStartEvent) event);
            case MappingStart, SequenceStart -> branch((CollectionStartEvent) event);
            case MappingEnd, SequenceEnd -> close();
            case Scalar -> scalar((ScalarEvent) event);
            case Alias -> alias((AliasEvent) event);
            default -> true;
        };
    }

    private boolean document(DocumentStartEvent event) {
        documents++;
        if (documents > 1) {
            notebook.fault(spot(event), "a second document in one file",
                    "remove the line ---, or use two files");
            return false;
        }
        if (event.getSpecVersion().isPresent() || !event.getTags().isEmpty()) {
            notebook.fault(spot(event), "a directive (a line that starts with %)", "remove it");
            return false;
        }
        return true;
    }

    private boolean branch(CollectionStartEvent event) {
        refuse(event, event.getAnchor(), event.getTag());
        if (open.size() >= DEEPEST) {
            notebook.fault(spot(event), "nested more than " + DEEPEST + " levels deep",
                    "nothing in a book is: check brackets and indentation");
            return false;
        }
        open.push(new Branch(spot(event), event instanceof MappingStartEvent, event.isFlow(),
                new ArrayList<>()));
        return true;
    }

    private boolean close() {
        Branch done = open.pop();
        put(done.mapping() ? new Node.Mapping(done.spot(), pairs(done.parts()), done.flow())
                : new Node.Sequence(done.spot(), List.copyOf(done.parts())));
        return true;
    }

    private List<Node.Pair> pairs(List<Node> parts) {
        List<Node.Pair> pairs = new ArrayList<>();
        for (int i = 0; i + 1 < parts.size(); i += 2) {
            if (parts.get(i) instanceof Node.Scalar key) {
                pairs.add(new Node.Pair(key, parts.get(i + 1)));
            } else if (!(parts.get(i) instanceof Node.Gone)) {
                notebook.fault(parts.get(i).spot(), "a key that is no single word", "write key: value");
            }
        }
        return List.copyOf(pairs);
    }

    private boolean scalar(ScalarEvent event) {
        refuse(event, event.getAnchor(), event.getTag());
        put(new Node.Scalar(spot(event), event.getValue(), event.isPlain(), inner(event)));
        return true;
    }

    /** Where text and source are the same characters, the offset of the first one. */
    private static int inner(ScalarEvent event) {
        var start = event.getStartMark().orElseThrow();
        var end = event.getEndMark().orElseThrow();
        int quotes = event.isPlain() ? 0 : 1;
        boolean flow = event.isPlain() || event.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED
                || event.getScalarStyle() == ScalarStyle.SINGLE_QUOTED;
        int length = event.getValue().codePointCount(0, event.getValue().length());
        boolean same = flow && start.getLine() == end.getLine()
                && end.getColumn() - start.getColumn() == length + 2 * quotes;
        return same ? quotes : -1;
    }

    private boolean alias(AliasEvent event) {
        notebook.fault(spot(event), "an alias, " + Notebook.show("*" + event.getAlias())
                + ", stands for another place in the file",
                "write the value itself");
        put(new Node.Gone(spot(event)));
        return true;
    }

    private void refuse(Event event, Optional<Anchor> anchor, Optional<String> tag) {
        anchor.ifPresent(a -> notebook.fault(spot(event), "an anchor, " + Notebook.show("&" + a.getValue()),
                "remove it and write each value where it is used"));
        tag.ifPresent(t -> notebook.fault(spot(event), "a tag (!...)",
                "remove it; every value is read as text"));
    }

    private void put(Node node) {
        if (open.isEmpty()) {
            root = node;
        } else {
            open.peek().parts().add(node);
        }
    }

    private Spot spot(Event event) {
        return event.getStartMark().map(m -> new Spot(file, m.getLine() + 1, m.getColumn() + 1))
                .orElse(Spot.whole(file));
    }
}
