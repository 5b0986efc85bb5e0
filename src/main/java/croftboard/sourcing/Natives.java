package croftboard.sourcing;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * The exact solver's native libraries, unpacked once into a cache of their own version and loaded from there, so that a
 * killed process leaves nothing behind in the temp folder. Where they are missing or cannot be loaded,
 * {@link #available()} says so and everything goes on without them.
 */
public final class Natives {
    /** {@code off}: behave as if there were none. */
    public static final String SWITCH = "croftboard.natives";
    /** Folder to unpack into, in place of the user's cache. */
    public static final String CACHE = "croftboard.cache";
    private static final Object LOCK = new Object();
    private static Boolean loaded;

    private Natives() { }

    /** Loads in the background, so that a later {@link #available()} need not wait. */
    public static void startLoading() {
        Thread thread = new Thread(Natives::available, "natives");
        thread.setDaemon(true);
        thread.start();
    }

    /** Whether the exact solver can be used on this machine; loads it on the first call. Never throws. */
    public static boolean available() {
        if ("off".equals(System.getProperty(SWITCH))) {
            return false;
        }
        synchronized (LOCK) {
            if (loaded == null) {
                loaded = load();
            }
            return loaded;
        }
    }

    private static boolean load() {
        try {
            String platform = platform();
            String main = System.mapLibraryName("jniortools");
            URL library = Natives.class.getClassLoader().getResource("ortools-" + platform + "/" + main);
            if (library == null || !library.getProtocol().equals("jar")) {
                return false;
            }
            String jar = library.getPath().substring(0, library.getPath().indexOf("!/"));
            Path folder = unpacked(Path.of(java.net.URI.create(jar)), "ortools-" + platform + "/");
            System.load(folder.resolve(main).toString());
            return true;
        } catch (IOException | LinkageError | RuntimeException e) {
            return false;
        }
    }

    private static String platform() {
        String os = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        String arch = System.getProperty("os.arch");
        String system = os.contains("win") ? "win32" : os.contains("mac") ? "darwin" : "linux";
        return system + "-" + (arch.equals("aarch64") ? "aarch64" : "x86-64");
    }

    /** The folder that holds the libraries of that jar; made whole or not at all, by one rename. */
    static Path unpacked(Path jar, String prefix) throws IOException {
        String name = jar.getFileName().toString().replaceAll("\\.jar$", "");
        Path cache = cacheFolder();
        Path folder = cache.resolve(name);
        if (Files.isDirectory(folder)) {
            return folder;
        }
        Files.createDirectories(cache);
        removeLeftovers(cache);
        Path fresh = Files.createTempDirectory(cache, name + ".tmp-" + ProcessHandle.current().pid() + "-");
        try (JarFile file = new JarFile(jar.toFile())) {
            for (JarEntry entry : file.stream().filter(e -> e.getName().startsWith(prefix) && !e.isDirectory()).toList()) {
                try (InputStream in = file.getInputStream(entry)) {
                    Files.copy(in, fresh.resolve(entry.getName().substring(prefix.length())));
                }
            }
        }
        try {
            Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (FileAlreadyExistsException | java.nio.file.DirectoryNotEmptyException e) {
            delete(fresh);
        } catch (IOException e) {
            delete(fresh);
            if (!Files.isDirectory(folder)) {
                throw e;
            }
        }
        return folder;
    }

    private static Path cacheFolder() {
        String own = System.getProperty(CACHE);
        String xdg = System.getenv("XDG_CACHE_HOME");
        return own != null ? Path.of(own)
                : (xdg != null && !xdg.isBlank() ? Path.of(xdg) : Path.of(System.getProperty("user.home"), ".cache"))
                        .resolve("croftboard");
    }

    /** Half-unpacked folders of processes that are no longer there. */
    private static void removeLeftovers(Path cache) throws IOException {
        List<Path> old;
        try (Stream<Path> all = Files.list(cache)) {
            old = all.filter(p -> p.getFileName().toString().contains(".tmp-")).toList();
        }
        for (Path p : old) {
            String rest = p.getFileName().toString().replaceAll(".*\\.tmp-", "");
            String pid = rest.contains("-") ? rest.substring(0, rest.indexOf('-')) : rest;
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
        }
    }
}
