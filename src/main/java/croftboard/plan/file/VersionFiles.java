package croftboard.plan.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.TreeSet;

/** A folder of versions: {@code 1.json}, {@code 2.json} and so on. */
final class VersionFiles {
    private VersionFiles() { }

    /** The numbers that are there, ascending; none where there is no such folder. */
    static TreeSet<Integer> numbers(Path folder) {
        TreeSet<Integer> numbers = new TreeSet<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.json")) {
            for (Path file : files) {
                String name = file.getFileName().toString();
                if (name.matches("[1-9]\\d{0,8}\\.json")) {
                    numbers.add(Integer.valueOf(name.substring(0, name.length() - 5)));
                }
            }
        } catch (NoSuchFileException e) {
            return numbers;
        } catch (IOException e) {
            throw failed(folder, "read", e);
        }
        return numbers;
    }

    /** A sentence for a disk that fails. @param what read or written */
    static UncheckedIOException failed(Path path, String what, IOException e) {
        String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        return new UncheckedIOException(path + " cannot be " + what + ": " + why, e);
    }
}
