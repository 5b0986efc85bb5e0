package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Fault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The small sample kitchen in memory, to be changed and read again. */
public final class SmallKitchen {
    public static final Path FOLDER = Path.of("src/test/resources/kitchens/small");
    public static final Path WORTH_ONLY = Path.of("src/test/resources/kitchens/worth-only");
    /** Marks, in a changed text, the place where the fault is expected. */
    private static final String MARK = "\u00ab";
    private final SortedMap<String, byte[]> files = files(FOLDER);
    private Spot expected = Spot.whole("");

    public static Book book() {
        return BookReader.read(FOLDER).orElseThrow();
    }

    /** All files under the folder by path with {@code /}. */
    public static SortedMap<String, byte[]> files(Path folder) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    /**
     * Replaces the first {@code before}, which must be there; a mark in {@code after} says where
     * the fault is expected.
     */
    SmallKitchen change(String path, String before, String after) {
        String text = text(path);
        assertThat(text).contains(before);
        return put(path, text.replaceFirst(java.util.regex.Pattern.quote(before),
                java.util.regex.Matcher.quoteReplacement(after)));
    }

    /** Writes a file; a mark in the text says where the fault is expected. */
    SmallKitchen put(String path, String marked) {
        int at = marked.indexOf(MARK);
        if (at >= 0) {
            expected = Text.endOf(path, marked.substring(0, at));
        }
        return put(path, marked.replace(MARK, "").getBytes(StandardCharsets.UTF_8));
    }

    SmallKitchen put(String path, byte[] content) {
        files.put(path, content);
        return this;
    }

    SmallKitchen remove(String path) {
        assertThat(files.remove(path)).isNotNull();
        return this;
    }

    /** The fault is expected where {@code text} first stands in the file, at the mark inside it. */
    SmallKitchen expectAt(String path, String text) {
        String found = text.replace(MARK, "");
        int at = text(path).indexOf(found);
        assertThat(at).as(text).isNotNegative();
        expected = Text.endOf(path, text(path).substring(0, at + text.indexOf(MARK)));
        return this;
    }

    SmallKitchen expectWhole(String path) {
        expected = Spot.whole(path);
        return this;
    }

    String text(String path) {
        assertThat(files).containsKey(path);
        return new String(files.get(path), StandardCharsets.UTF_8);
    }

    SortedMap<String, byte[]> files() {
        return files;
    }

    BookReading reading() {
        return BookReader.readFiles(files);
    }

    List<Fault> faults() {
        return reading().faultsFound();
    }

    List<String> warnings() {
        return reading().fold(BookReading.Read::warnings, f ->
                List.of(new Warning("", 0, 0, "faulty: " + f.faults())))
                .stream().map(Warning::toString).toList();
    }

    /** Exactly one fault, exactly at the expected place, saying this is wrong and that would be right. */
    void hasOneFault(String wrong, String right) {
        List<Fault> faults = faults();
        assertThat(faults).hasSize(1);
        Fault fault = faults.get(0);
        assertThat(new Spot(fault.file(), fault.line(), fault.column())).as(fault.toString())
                .isEqualTo(expected);
        assertThat(fault.wrong()).contains(wrong);
        assertThat(fault.right()).contains(right);
    }
}
