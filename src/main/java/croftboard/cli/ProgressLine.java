package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.measure.Cents;
import croftboard.plan.PlanRequest;
import croftboard.plan.WeekPlan;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.Function;

/**
 * Tells a person how a plan is coming along: on a terminal one line that is rewritten, else a line for each thing. Keeps
 * the best plan so far. Called from several threads.
 */
final class ProgressLine implements PlanRequest.Progress {
    private static final long SECOND = 1_000_000_000L;
    private final PrintWriter err;
    private final boolean terminal;
    private final int width;
    private final Function<WeekPlan, String> whole;
    private final long start = System.nanoTime();
    private String doing = "reading";
    private WeekPlan best;
    private boolean firstTold;
    private String shown = "";

    /** @param whole the first complete plan as a text, shown on a terminal */
    ProgressLine(PrintWriter err, boolean terminal, int width, Function<WeekPlan, String> whole) {
        this.err = err;
        this.terminal = terminal;
        this.width = Math.max(Page.NARROWEST, width) - 1;
        this.whole = whole;
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
    public synchronized void better(WeekPlan plan) {
        best = plan;
        if (plan.complete() && !firstTold) {
            firstTold = true;
            clear();
            if (terminal) {
                err.print(whole.apply(plan));
            }
            err.println("First complete plan after " + wholeSeconds() + " s: worth " + new Cents(plan.value())
                    + ". Looking for better ones; Ctrl-C takes the best so far.");
            err.flush();
        }
        tick();
    }

    /** Rewrites the line. */
    synchronized void tick() {
        if (terminal) {
            String value = best == null ? "no plan yet" : "best so far " + new Cents(best.value())
                    + (best.complete() ? "" : ", not complete");
            String line = wholeSeconds() + " s, " + value + ", now: " + doing;
            String cut = line.length() > width ? line.substring(0, width - 2) + ".." : line;
            if (!cut.equals(shown)) {
                shown = cut;
                err.print("\r" + cut + " ".repeat(width - cut.length()) + "\r");
                err.flush();
            }
        }
    }

    /** Takes the line away. */
    synchronized void clear() {
        if (terminal) {
            shown = "";
            err.print("\r" + " ".repeat(width) + "\r");
            err.flush();
        }
    }

    synchronized Optional<WeekPlan> best() {
        return Optional.ofNullable(best);
    }

    /** Since the command began. */
    double seconds() {
        return (System.nanoTime() - start) / (double) SECOND;
    }

    private long wholeSeconds() {
        return (long) seconds();
    }
}
