package croftboard.book.file;

import croftboard.book.Book;
import croftboard.book.Fault;
import croftboard.book.Seasons;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Another guarantee for an event, in the text of the book's own file: the digits of that one value, and not a letter else.
 * Nothing is written here; the book with the new number is read as a whole before it is handed out.
 */
public final class HeadCount {
    private static final String FILE = "seasons/events.yaml";
    private static final String MARK = "\uFEFF";

    private HeadCount() { }

    public sealed interface Outcome { }

    /**
     * @param file that holds the event
     * @param where file and line
     * @param before content of the file as it was read
     * @param after the content with the new number
     */
    public record Edited(Path file, String where, byte[] before, byte[] after, Book was, Book now) implements Outcome {
        /** Whether the file still is what was read. */
        public boolean isUnchanged() {
            try {
                return Arrays.equals(before, Files.readAllBytes(file));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** @param faults of the book, as it is or with the new number; at least one */
    public record Refused(List<Fault> faults) implements Outcome { }

    /**
     * @param folder of the book
     * @param event an id that stands in the book
     * @param heads written as it is: what is no head count is refused with file and line
     */
    public static Outcome guarantee(Path folder, String event, int heads) {
        Notebook notebook = new Notebook();
        Optional<SortedMap<String, byte[]>> files = BookFolder.read(folder, notebook);
        if (files.isEmpty() || notebook.faultCount() > 0) {
            return new Refused(notebook.faultsInOrder());
        }
        BookReading read = BookReader.readFiles(files.get());
        if (!read.faultsFound().isEmpty()) {
            return new Refused(read.faultsFound());
        }
        byte[] before = files.get().get(FILE);
        String text = new String(before, StandardCharsets.UTF_8);
        Node.Scalar value = value(text, event, notebook);
        Optional<String> edited = edited(text, value, Integer.toString(heads));
        if (edited.isEmpty()) {
            notebook.fault(value.spot(), "this number cannot be changed where it stands", "write guarantee: " + heads + " here by hand");
            return new Refused(notebook.faultsInOrder());
        }
        byte[] after = edited.get().getBytes(StandardCharsets.UTF_8);
        SortedMap<String, byte[]> changed = new TreeMap<>(files.get());
        changed.put(FILE, after);
        return BookReader.readFiles(changed).<Outcome>fold(now -> new Edited(real(folder), FILE + ":" + value.spot().line(),
                before, after, read.orElseThrow(), checked(now.book(), event, heads)), faulty -> new Refused(faulty.faults()));
    }

    private static Book checked(Book book, String event, int heads) {
        int got = book.seasons().events().stream().filter(e -> e.id().equals(event)).findFirst()
                .map(Seasons.Event::guarantee).orElseThrow();
        if (got != heads) {
            throw new IllegalStateException("guarantee " + got + " after writing " + heads);
        }
        return book;
    }

    private static Path real(Path folder) {
        try {
            return folder.resolve(FILE).toRealPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The book was read: event and guarantee are there. */
    private static Node.Scalar value(String text, String event, Notebook notebook) {
        String plain = text.startsWith(MARK) ? text.substring(1) : text;
        Node root = new YamlText(FILE, notebook).read(plain).orElseThrow();
        return (Node.Scalar) child(child(root, event), "guarantee");
    }

    private static Node child(Node node, String key) {
        return ((Node.Mapping) node).pairs().stream().filter(p -> p.key().text().equals(key)).findFirst().orElseThrow().value();
    }

    /** Empty when the value does not stand in the text letter by letter. */
    private static Optional<String> edited(String text, Node.Scalar value, String with) {
        if (value.inner() < 0) {
            return Optional.empty();
        }
        int line = startOf(text, value.spot().line());
        if (value.spot().line() == 1 && text.startsWith(MARK)) {
            line++;
        }
        int from = text.offsetByCodePoints(line, value.spot().column() - 1 + value.inner());
        int to = from + value.text().length();
        return to <= text.length() && text.substring(from, to).equals(value.text())
                ? Optional.of(text.substring(0, from) + with + text.substring(to)) : Optional.empty();
    }

    /** YAML ends lines with LF, CR LF or CR. */
    private static int startOf(String text, int line) {
        int at = 0;
        for (int n = 1; n < line; n++) {
            int lf = text.indexOf('\n', at);
            int cr = text.indexOf('\r', at);
            int end = cr >= 0 && (lf < 0 || cr < lf) ? (cr + 1 == lf ? lf : cr) : lf;
            at = end + 1;
        }
        return at;
    }
}
