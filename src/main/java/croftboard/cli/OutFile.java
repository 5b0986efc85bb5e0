package croftboard.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file that a person names: written whole or not at all. */
final class OutFile {
    private OutFile() { }

    /** @throws WrongUse when it could not be written */
    static void check(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file) || folder == null || !Files.isDirectory(folder)) {
            throw new WrongUse("--out " + file + " cannot be written -> a file in a folder that is there");
        }
    }

    static void write(Path file, String text) {
        try {
            Path temp = Files.createTempFile(file.toAbsolutePath().getParent(), file.getFileName() + ".", ".tmp");
            try {
                Files.writeString(temp, text);
                Files.move(temp, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(temp);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
        }
    }
}
