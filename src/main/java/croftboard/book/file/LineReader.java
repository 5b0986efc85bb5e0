package croftboard.book.file;

import croftboard.book.Recipe.Line;
import croftboard.measure.Amount;
import croftboard.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One line of a recipe's ingredient list: {@code AMOUNT UNIT [AP] ID[, CUT][ (note)]}. */
final class LineReader {
    private static final String WANTED = "an amount of food";
    private static final String FORM =
            "write AMOUNT UNIT ID, or AMOUNT UNIT ID, CUT (note): 4 lb carrot, diced (small)";
    private static final int LONGEST = 300;
    private static final int LONGEST_AHEAD_DAYS = 3;
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    LineReader(Values values, Quantities quantities) {
        this.values = values;
        this.quantities = quantities;
        this.notebook = values.notebook();
    }

    /** @param at offset of the word in the line's text */
    private record Word(String text, int at) { }

    /** The line; empty when amount or item cannot be read. */
    Optional<Line> read(Node node) {
        int before = notebook.faultCount();
        if (!(node instanceof Node.Mapping)) {
            return values.scalar(node, "an ingredient line").flatMap(s -> line(s, 0, false, before));
        }
        if (isBrokenByColon((Node.Mapping) node)) {
            notebook.fault(node.spot(), "a colon in the line makes it a key and a value",
                    "put \"quotes\" around a line that holds a colon");
            return Optional.empty();
        }
        Fields f = Fields.of(notebook, Form.INGREDIENT_LINE, "the ingredient line", node.spot(), node);
        int ahead = f.or("ahead", 0, n -> quantities.days(n, 0, LONGEST_AHEAD_DAYS));
        boolean substitute = f.or("substitute", false, n -> values.word(n, Map.of("plan", true), true));
        return values.scalar(f.get("use"), "an ingredient line")
                .flatMap(s -> line(s, ahead, substitute, before));
    }

    /** {@code - 12 cloves garlic, minced (last: it burns)} without quotes. */
    private static boolean isBrokenByColon(Node.Mapping mapping) {
        return !mapping.flow() && mapping.pairs().size() == 1 && mapping.pairs().get(0).key().text()
                .contains(" ");
    }

    private Optional<Line> line(Node.Scalar s, int ahead, boolean substitute, int before) {
        String text = s.text();
        if (text.length() > LONGEST) {
            notebook.fault(s.spot(), "an ingredient line of more than " + LONGEST + " characters", FORM);
            return Optional.empty();
        }
        int open = text.indexOf('(');
        Optional<String> note = note(s, open);
        String rest = open < 0 ? text : text.substring(0, open);
        int comma = rest.indexOf(',');
        List<Word> words = words(comma < 0 ? rest : rest.substring(0, comma));
        Optional<Word> cut = comma < 0 ? Optional.empty() : cut(s, rest.substring(comma + 1), comma + 1);
        boolean purchased = words.size() > 2 && words.get(2).text().equals("AP");
        if (words.size() != (purchased ? 4 : 3)) {
            notebook.fault(s.spot(), Notebook.show(text) + " is no ingredient line",
                    remedy(words, purchased));
            return Optional.empty();
        }
        Word item = words.get(words.size() - 1);
        values.checkedId(item.text(), s.at(item.at()));
        notebook.points(Pointer.To.ITEM, item.text(), s.at(item.at()), "an ingredient line");
        Optional<Amount> amount = quantities.amounts().both(words.get(0).text(), words.get(1).text(),
                s.at(words.get(0).at()), s.at(words.get(1).at()), WANTED, false,
                Unit.Kind.MASS, Unit.Kind.VOLUME, Unit.Kind.COUNT);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        Line line = new Line(amount.get(), item.text(), cut.map(Word::text), purchased, ahead, substitute,
                note);
        notebook.wrote(line, s.spot(), before);
        notebook.part(line, "unit", s.at(words.get(1).at()));
        notebook.part(line, "item", s.at(item.at()));
        cut.ifPresent(c -> notebook.part(line, "cut", s.at(c.at())));
        return Optional.of(line);
    }

    private Optional<String> note(Node.Scalar s, int open) {
        String text = s.text().stripTrailing();
        if (open < 0) {
            return Optional.empty();
        }
        if (!text.endsWith(")")) {
            notebook.fault(s.at(open), "a note that is not closed, or words behind it",
                    "end the line with )");
            return Optional.empty();
        }
        String note = text.substring(open + 1, text.length() - 1).strip();
        return note.isEmpty() ? Optional.empty() : Optional.of(note);
    }

    private Optional<Word> cut(Node.Scalar s, String text, int at) {
        List<Word> words = words(text);
        if (words.size() != 1) {
            notebook.fault(s.at(at), Notebook.show(text.strip()) + " is no cut",
                    "write one word behind the comma, and notes in (brackets)");
            return Optional.empty();
        }
        Word cut = new Word(words.get(0).text(), at + words.get(0).at());
        values.checkedId(cut.text(), s.at(cut.at()));
        return Optional.of(cut);
    }

    private String remedy(List<Word> words, boolean purchased) {
        int first = purchased ? 3 : 2;
        if (words.size() > first + 1) {
            String joined = String.join("-", words.subList(first, words.size()).stream().map(Word::text)
                    .toList());
            return "write the name with hyphens, like " + Notebook.show(joined)
                    + ", and notes in (brackets)";
        }
        boolean noUnit = words.size() == 2 && Amount.number(words.get(0).text()).isPresent()
                && Unit.named(words.get(1).text()).isEmpty();
        return noUnit ? "say the unit: " + words.get(0).text() + " lb " + words.get(1).text()
                + ", or each, or cups" : FORM;
    }

    private static List<Word> words(String text) {
        List<Word> words = new ArrayList<>();
        int i = 0;
        while (i < text.length()) {
            while (i < text.length() && Character.isWhitespace(text.charAt(i))) {
                i++;
            }
            int start = i;
            while (i < text.length() && !Character.isWhitespace(text.charAt(i))) {
                i++;
            }
            if (i > start) {
                words.add(new Word(text.substring(start, i), start));
            }
        }
        return words;
    }
}
