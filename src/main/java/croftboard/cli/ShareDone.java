package croftboard.cli;

import java.io.PrintWriter;

/**
 * Tells how much of a long answer is done and how long the rest will take at the pace so far: on a terminal one line that is
 * rewritten, else a line at each tenth. Called from several threads.
 */
final class ShareDone {
    private static final long SECOND = 1_000_000_000L;
    private static final int STEPS = 10;
    private final PrintWriter err;
    private final boolean terminal;
    private final long start = System.nanoTime();
    private long told = start;
    private int step;
    private String shown = "";

    ShareDone(PrintWriter err, boolean terminal) {
        this.err = err;
        this.terminal = terminal;
    }

    /** @param share of all, 0 to 1 */
    synchronized void done(double share) {
        long now = System.nanoTime();
        int reached = (int) (share * STEPS);
        boolean due = terminal ? now - told > SECOND : reached > step && reached < STEPS;
        if (due) {
            told = now;
            step = reached;
            long left = Math.round((now - start) / (double) SECOND * (1 - share) / share);
            String line = "croftboard: " + Math.round(share * 100) + " % done, about " + left + " s left";
            err.print(terminal ? "\r" + line + "   " : line + System.lineSeparator());
            err.flush();
            shown = line;
        }
    }

    synchronized void end() {
        if (terminal && !shown.isEmpty()) {
            err.print("\r" + " ".repeat(shown.length() + 3) + "\r");
            err.flush();
        }
    }
}
