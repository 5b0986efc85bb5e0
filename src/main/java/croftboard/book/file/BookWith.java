package croftboard.book.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The book as it would be with another text of one file: to be read as a whole before the file is written. */
public final class BookWith {
    private BookWith() { }

    /** @param path inside the book, such as {@code seasons/learned.yaml} */
    public static BookReading reading(Path folder, String path, String text) {
        Notebook notebook = new Notebook();
        Optional<SortedMap<String, byte[]>> files = BookFolder.read(folder, notebook);
        if (files.isEmpty() || notebook.faultCount() > 0) {
            return new BookReading.Faulty(notebook.faultsInOrder());
        }
        SortedMap<String, byte[]> changed = new TreeMap<>(files.get());
        changed.put(path, text.getBytes(StandardCharsets.UTF_8));
        return BookReader.readFiles(changed);
    }
}
