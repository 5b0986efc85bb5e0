package croftboard.book.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Gathers the files of a book from its folder: only its own four folders, nothing larger than 1 MB,
 * nothing outside.
 */
final class BookFolder {
    static final List<String> FOLDERS = List.of("kitchen", "recipes", "farms", "seasons");
    private static final int MOST_FILES = 5_000;
    private static final int DEEPEST = 4;
    private final Path root;
    private final Notebook notebook;
    private final SortedMap<String, byte[]> files = new TreeMap<>();
    private int seen;

    private BookFolder(Path root, Notebook notebook) {
        this.root = root;
        this.notebook = notebook;
    }

    /**
     * Contents by path inside the book, with {@code /}; faults noted for what may not or cannot be read.
     * Empty when there is no such folder.
     */
    static Optional<SortedMap<String, byte[]>> read(Path folder, Notebook notebook) {
        try {
            BookFolder gathered = new BookFolder(folder.toRealPath(), notebook);
            for (String name : FOLDERS) {
                Path child = gathered.root.resolve(name);
                if (Files.exists(child, LinkOption.NOFOLLOW_LINKS)) {
                    gathered.take(child, name, 1);
                }
            }
            return Optional.of(gathered.files);
        } catch (IOException e) {
            notebook.fault(Spot.whole(folder.toString()), "there is no such folder, or it may not be read",
                    "name the folder that holds kitchen/ and recipes/");
            return Optional.empty();
        }
    }

    private void take(Path path, String name, int depth) {
        try {
            if (path.getFileName().toString().startsWith(".")) {
                return;
            }
            Path real = path.toRealPath();
            if (!real.startsWith(root)) {
                refuse(name, "the link leads out of the book", "put the file itself here");
            } else if (Files.isDirectory(real)) {
                list(path, name, depth);
            } else if (FileKind.isOfBook(name)) {
                file(real, name);
            }
        } catch (IOException | UncheckedIOException e) {
            refuse(name, "the file cannot be read", "check the link or the file's permissions");
        }
    }

    private void list(Path folder, String name, int depth) throws IOException {
        if (depth > DEEPEST) {
            refuse(name, "folders more than " + DEEPEST + " deep", "the book has no such folder");
            return;
        }
        try (Stream<Path> children = Files.list(folder)) {
            children.sorted().limit(MOST_FILES + 1L)
                    .forEach(c -> take(c, name + "/" + c.getFileName(), depth + 1));
        }
    }

    private void file(Path real, String name) throws IOException {
        seen++;
        if (seen == MOST_FILES + 1) {
            refuse(name, "more than " + MOST_FILES + " files", "is this the folder of one kitchen?");
        }
        if (seen > MOST_FILES) {
            return;
        }
        if (!Files.isRegularFile(real)) {
            refuse(name, "this is no plain file", "put a plain file here");
        } else if (Files.size(real) > Text.MOST_BYTES) {
            refuse(name, Text.TOO_LARGE, Text.TOO_LARGE_REMEDY);
        } else {
            files.put(name, Files.readAllBytes(real));
        }
    }

    /** Notes the fault, and that what the file would have told is unknown. */
    private void refuse(String name, String wrong, String right) {
        notebook.fault(Spot.whole(name), wrong, right);
        FileKind.under(name).forEach(notebook::unread);
    }
}
