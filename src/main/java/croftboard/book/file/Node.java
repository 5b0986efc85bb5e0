package croftboard.book.file;

import java.util.List;

/**
 * A piece of a YAML file that knows where it stands. All scalars are texts: nothing is ever turned
 * into a number by itself.
 */
sealed interface Node {
    Spot spot();

    /**
     * @param text as meant by the writer, quotes and escapes resolved
     * @param plain written without quotes
     * @param inner column offset of the first character when text and source match one to one; -1
     * when they do not
     */
    record Scalar(Spot spot, String text, boolean plain, int inner) implements Node {
        /** Nothing at all, or a word that YAML writers use for nothing. */
        boolean isEmpty() {
            return plain && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }

        /** The spot of the character at {@code index} of the text, as far as it can be told. */
        Spot at(int index) {
            return inner < 0 || index < 0 || index > text.length() ? spot
                    : new Spot(spot.file(), spot.line(), spot.column() + inner
                    + text.codePointCount(0, index));
        }
    }

    record Mapping(Spot spot, List<Pair> pairs, boolean flow) implements Node { }

    record Sequence(Spot spot, List<Node> items) implements Node { }

    /**
     * Something that is already reported as a fault, or absent: it gives placeholders and no second
     * fault.
     */
    record Gone(Spot spot) implements Node { }

    record Pair(Scalar key, Node value) { }
}
