package croftboard.plan.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Files that are written whole or not at all: the content goes to a file beside it, to the disk, and only then gets its
 * name. A process killed in between leaves {@code NAME.tmp-PID-N} behind, which nobody reads.
 */
public final class WholeFile {
    private static final Pattern LEFTOVER = Pattern.compile(".*\\.tmp-(\\d{1,18})-\\d+");
    private static final AtomicLong COUNT = new AtomicLong();

    private WholeFile() { }

    /** Replaces a file, or makes it. */
    static void replace(Path file, String text) throws IOException {
        replace(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Replaces a file, or makes it. Its folder is there. */
    public static void replace(Path file, byte[] content) throws IOException {
        Path temp = written(file, content);
        try {
            Files.move(temp, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(temp);
        }
        settle(file.toAbsolutePath().getParent());
    }

    /** Makes a file that must not be there. @return false when it was there already; then nothing is changed */
    static boolean create(Path file, String text) throws IOException {
        Path temp = written(file, text.getBytes(StandardCharsets.UTF_8));
        try {
            linkOrMove(temp, file);
        } catch (FileAlreadyExistsException e) {
            return false;
        } finally {
            Files.deleteIfExists(temp);
        }
        settle(file.toAbsolutePath().getParent());
        return true;
    }

    /** A second name for the file is given only if it is free; where the disk knows no such names, a move does. */
    private static void linkOrMove(Path temp, Path file) throws IOException {
        try {
            Files.createLink(file, temp);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | java.nio.file.FileSystemException e) {
            Files.move(temp, file);
        }
    }

    private static Path written(Path file, byte[] content) throws IOException {
        String name = file.getFileName() + ".tmp-" + ProcessHandle.current().pid() + "-" + COUNT.incrementAndGet();
        Path temp = file.resolveSibling(name);
        try (FileChannel out = FileChannel.open(temp, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(content);
            while (bytes.hasRemaining()) {
                out.write(bytes);
            }
            out.force(true);
        }
        return temp;
    }

    /** Makes a folder with its parents and sees them on the disk. */
    public static void makeFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Path parent = folder.toAbsolutePath().getParent();
            makeFolder(parent);
            Files.createDirectories(folder);
            settle(parent);
        }
    }

    /** New names in a folder reach the disk. Some systems cannot open a folder: there the name may come later. */
    private static void settle(Path folder) throws IOException {
        try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
        } catch (java.nio.file.AccessDeniedException e) {
            if (java.io.File.separatorChar == '/') {
                throw e;
            }
        }
    }

    /** Takes away what killed processes left in a folder. Call it only while no other writer is at work there. */
    public static void clean(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.tmp-*")) {
            for (Path file : files) {
                Matcher m = LEFTOVER.matcher(file.getFileName().toString());
                if (m.matches() && !othersWork(Long.parseLong(m.group(1)))) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    private static boolean othersWork(long pid) {
        return pid != ProcessHandle.current().pid() && ProcessHandle.of(pid).isPresent();
    }
}
