package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * The exact solver's native libraries, loaded from a cache of their own version ({@link NativeCache}). Where they are
 * missing or cannot be loaded, {@link #available()} says so and everything goes on without them.
 */
public final class Natives {
    /** {@code off}: behave as if there were none. */
    public static final String SWITCH = "croftboard.natives";
    /** Folder to unpack into, in place of the user's cache. */
    public static final String CACHE = "croftboard.cache";
    private static final String MAIN = "jniortools";
    /**
     * Windows does not look for libraries beside the one that needs them, so they are loaded first, each after what it
     * needs (the order of the solver's own loader). Elsewhere the main library finds its neighbours.
     */
    private static final List<String> WINDOWS_FIRST = List.of("zlib1", "bz2", "abseil_dll", "re2", "libutf8_validity",
            "libprotobuf", "highs", "libscip", "ortools");
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
            URL library = Natives.class.getClassLoader()
                    .getResource("ortools-" + platform + "/" + System.mapLibraryName(MAIN));
            if (library == null || !library.getProtocol().equals("jar")) {
                return false;
            }
            String jar = library.getPath().substring(0, library.getPath().indexOf("!/"));
            Path folder = new NativeCache(cacheFolder()).unpacked(Path.of(URI.create(jar)), "ortools-" + platform + "/");
            if (platform.startsWith("win32")) {
                WINDOWS_FIRST.forEach(name -> load(folder, name));
            }
            load(folder, MAIN);
            return MPSolver.createSolver("GLOP") != null && MPSolver.createSolver("SCIP") != null;
        } catch (IOException | LinkageError | RuntimeException e) {
            return false;
        }
    }

    private static void load(Path folder, String name) {
        Path file = folder.resolve(System.mapLibraryName(name)).toAbsolutePath();
        if (Files.exists(file)) {
            System.load(file.toString());
        }
    }

    private static String platform() {
        String os = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        String arch = System.getProperty("os.arch");
        String system = os.contains("win") && !os.contains("darwin") ? "win32" : os.contains("mac") ? "darwin" : "linux";
        return system + "-" + (arch.equals("amd64") ? "x86-64" : arch.replace('_', '-'));
    }

    private static Path cacheFolder() {
        String own = System.getProperty(CACHE);
        String xdg = System.getenv("XDG_CACHE_HOME");
        return own != null ? Path.of(own)
                : (xdg != null && !xdg.isBlank() ? Path.of(xdg) : Path.of(System.getProperty("user.home"), ".cache"))
                        .resolve("croftboard");
    }
}
