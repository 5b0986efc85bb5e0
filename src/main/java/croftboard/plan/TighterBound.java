package croftboard.plan;

import croftboard.need.WeekProblem;
import croftboard.sourcing.JointRoot;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;

/**
 * The tighter bound over all menus, reckoned on a thread of its own beside the search. It never breaks a plan: what fails
 * in it proves nothing.
 */
final class TighterBound {
    private static final JointRoot.Found NOTHING = new JointRoot.Found(OptionalLong.empty(), Optional.empty());
    private final CompletableFuture<JointRoot.Found> found = new CompletableFuture<>();

    /**
     * @param known a plan to start from
     * @param millis by the clock; 0: limited by {@code nodes}
     * @param nodes of the tree, repeatable; 0: limited by {@code millis}; both 0: nothing is reckoned
     */
    TighterBound(WeekProblem problem, WeekSolver.Solved known, long millis, long nodes, BooleanSupplier stop) {
        if (millis <= 0 && nodes <= 0) {
            found.complete(NOTHING);
            return;
        }
        Thread thread = new Thread(() -> {
            try {
                found.complete(JointRoot.look(problem, known.choice(), known.orders().packs(), millis, nodes, stop));
            } catch (RuntimeException e) {
                found.complete(NOTHING);
            } finally {
                found.complete(NOTHING);
            }
        }, "bound");
        thread.setDaemon(true);
        thread.start();
    }

    boolean done() {
        return found.isDone();
    }

    /** Waits for the end. */
    JointRoot.Found join() {
        return found.join();
    }
}
