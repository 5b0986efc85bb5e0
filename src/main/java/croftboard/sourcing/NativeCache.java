package croftboard.sourcing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * Unpacks libraries once for all processes of a user: into a fresh folder beside the final one, which then gets its name
 * by one rename, so that a folder is whole or not there. Nothing is left in the temp folder, and what a killed process
 * left half done here is removed by the next.
 */
final class NativeCache {
    private static final String HALF = ".tmp-";
    private final Path cache;

    NativeCache(Path cache) {
        this.cache = cache;
    }

    /**
     * The folder that holds the files of the jar whose names start with the prefix.
     *
     * @throws IOException when the cache cannot be written, or the jar not be read
     */
    Path unpacked(Path jar, String prefix) throws IOException {
        String name = jar.getFileName().toString().replaceAll("\\.jar$", "");
        Path folder = cache.resolve(name);
        Files.createDirectories(cache);
        removeLeftovers();
        try (JarFile file = new JarFile(jar.toFile())) {
            List<JarEntry> entries = file.stream().filter(e -> e.getName().startsWith(prefix) && !e.isDirectory()).toList();
            if (whole(folder, entries, prefix)) {
                return folder;
            }
            Path fresh = Files.createTempDirectory(cache, name + HALF + ProcessHandle.current().pid() + "-");
            for (JarEntry entry : entries) {
                try (InputStream in = file.getInputStream(entry)) {
                    Files.copy(in, fresh.resolve(entry.getName().substring(prefix.length())));
                }
            }
            settle(fresh, folder, entries, prefix);
        }
        return folder;
    }

    /** Every file is there in its full size: also a disk that lost its last writes is noticed. */
    private static boolean whole(Path folder, List<JarEntry> entries, String prefix) throws IOException {
        for (JarEntry entry : entries) {
            Path file = folder.resolve(entry.getName().substring(prefix.length()));
            if (!Files.isRegularFile(file) || Files.size(file) != entry.getSize()) {
                return false;
            }
        }
        return !entries.isEmpty();
    }

    /** Gives the fresh folder its name; where another process was first, its folder is as good. */
    private static void settle(Path fresh, Path folder, List<JarEntry> entries, String prefix) throws IOException {
        try {
            if (Files.isDirectory(folder) && !whole(folder, entries, prefix)) {
                delete(folder);
            }
            Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            delete(fresh);
            if (!whole(folder, entries, prefix)) {
                throw e;
            }
        }
    }

    private void removeLeftovers() throws IOException {
        List<Path> half;
        try (Stream<Path> all = Files.list(cache)) {
            half = all.filter(p -> p.getFileName().toString().contains(HALF)).toList();
        }
        for (Path p : half) {
            String pid = p.getFileName().toString().replaceAll("^.*\\.tmp-(\\d{1,10})-.*$", "$1");
            if (pid.matches("\\d{1,10}") && ProcessHandle.of(Long.parseLong(pid)).isEmpty()) {
                delete(p);
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(p);
            }
        } catch (java.io.UncheckedIOException | java.nio.file.NoSuchFileException e) {
            if (Files.exists(folder)) {
                throw new IOException("cannot remove " + folder, e);
            }
        }
    }
}
