package croftboard.cli;

import croftboard.cli.screen.Page;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Where the program runs.
 *
 * @param terminal a person sees stdout and stderr on a terminal
 * @param stop how a person ends a search early
 */
record Setting(Clock clock, Map<String, String> environment, boolean terminal, StopSignal.Watching stop) {
    private static final long ASK_MILLIS = 300;

    Page page() {
        return new Page(width(), bold());
    }

    /** Bold only on a terminal that has not refused it; nothing is said by it alone. */
    private boolean bold() {
        return terminal && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !"dumb".equals(environment.get("TERM"));
    }

    /** COLUMNS, else what the terminal says, else {@link Page#WIDTH}. */
    int width() {
        String columns = environment.getOrDefault("COLUMNS", "").trim();
        if (columns.matches("[1-9]\\d{0,3}")) {
            return Integer.parseInt(columns);
        }
        return terminal ? askTerminal() : Page.WIDTH;
    }

    private static int askTerminal() {
        try {
            Process stty = new ProcessBuilder("stty", "size").redirectInput(new File("/dev/tty")).start();
            if (!stty.waitFor(ASK_MILLIS, TimeUnit.MILLISECONDS)) {
                stty.destroy();
                return Page.WIDTH;
            }
            String[] size = new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).trim().split(" ");
            return size.length == 2 && size[1].matches("[1-9]\\d{0,3}") ? Integer.parseInt(size[1]) : Page.WIDTH;
        } catch (IOException e) {
            return Page.WIDTH;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Page.WIDTH;
        }
    }
}
