package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.measure.Cents;
import croftboard.plan.RotationRequest;
import java.io.PrintWriter;

/** Tells a person how a rotation is coming along: on a terminal one line that is rewritten, else a line for each thing. */
final class RotationProgress implements RotationRequest.Progress {
    private final PrintWriter err;
    private final boolean terminal;
    private final int width;
    private final long start = System.nanoTime();
    private String doing = "reading";
    private String best = "nothing yet";

    RotationProgress(PrintWriter err, boolean terminal, int width) {
        this.err = err;
        this.terminal = terminal;
        this.width = Math.max(Page.NARROWEST, width) - 1;
    }

    @Override
    public synchronized void doing(String what) {
        doing = what;
        if (terminal) {
            tick();
        } else {
            err.println("croftboard: " + what);
            err.flush();
        }
    }

    @Override
    public synchronized void better(long cents, boolean complete) {
        best = "best so far " + new Cents(cents) + (complete ? "" : ", not complete");
        tick();
    }

    private void tick() {
        if (terminal) {
            String line = (System.nanoTime() - start) / 1_000_000_000L + " s, " + best + ", now: " + doing;
            String cut = line.length() > width ? line.substring(0, width - 2) + ".." : line;
            err.print("\r" + cut + " ".repeat(width - cut.length()) + "\r");
            err.flush();
        }
    }

    /** Takes the line away. */
    synchronized void clear() {
        if (terminal) {
            err.print("\r" + " ".repeat(width) + "\r");
            err.flush();
        }
    }
}
