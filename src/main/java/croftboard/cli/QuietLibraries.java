package croftboard.cli;

import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Libraries that write to stderr on their own: what a person must know, the commands say themselves. */
final class QuietLibraries {
    /** Held, as the logging system forgets loggers that nobody holds. */
    private static final List<Logger> HELD = List.of(Logger.getLogger("io.micrometer"), Logger.getLogger("org.optaplanner"));

    private QuietLibraries() { }

    static void hush() {
        HELD.forEach(l -> l.setLevel(Level.OFF));
    }
}
