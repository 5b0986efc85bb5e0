package croftboard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The project's own Java files as text, taken apart into code and string literals; comments fall away. */
public final class Sources {
    public static final Path MAIN = Path.of("src", "main", "java", "croftboard");

    private Sources() { }

    /** All Java files of main code, in order of their names. */
    public static List<Path> main() {
        try (Stream<Path> all = Files.walk(MAIN)) {
            List<Path> files = all.filter(p -> p.toString().endsWith(".java")).sorted().toList();
            if (files.isEmpty()) {
                throw new IllegalStateException("no Java file under " + MAIN.toAbsolutePath());
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @param code without comments, and without what stands in quotes. @param literals what stands in quotes */
    public record Parts(String code, List<String> literals) { }

    public static Parts parts(Path file) {
        try {
            return parts(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Parts parts(String text) {
        StringBuilder code = new StringBuilder();
        List<String> literals = new ArrayList<>();
        int i = 0;
        while (i < text.length()) {
            int end;
            if (text.startsWith("//", i)) {
                end = endOf(text, "\n", i);
            } else if (text.startsWith("/*", i)) {
                end = endOf(text, "*/", i + 2) + 2;
            } else if (text.startsWith("\"\"\"", i)) {
                end = endOf(text, "\"\"\"", i + 3) + 3;
                literals.add(text.substring(i + 3, end - 3));
                code.append("\"\"");
            } else if (text.charAt(i) == '"' || text.charAt(i) == '\'') {
                end = closing(text, i) + 1;
                if (text.charAt(i) == '"') {
                    literals.add(text.substring(i + 1, end - 1));
                }
                code.append("\"\"");
            } else {
                code.append(text.charAt(i));
                end = i + 1;
            }
            i = end;
        }
        return new Parts(code.toString(), List.copyOf(literals));
    }

    private static int endOf(String text, String mark, int from) {
        int at = text.indexOf(mark, from);
        return at < 0 ? text.length() : at;
    }

    private static int closing(String text, int open) {
        int i = open + 1;
        while (text.charAt(i) != text.charAt(open)) {
            i += text.charAt(i) == '\\' ? 2 : 1;
        }
        return i;
    }
}
