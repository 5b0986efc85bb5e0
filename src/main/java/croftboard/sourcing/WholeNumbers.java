package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/** How the integer solver is run: one thread, one seed, to the end or to a limit. */
final class WholeNumbers {
    /** A bound as large as this says nothing. */
    static final double ANY = 1e15;
    private static final long LOOK_MILLIS = 50;
    /**
     * Always the node with the loosest bound next, and short looks ahead before branching: the bound falls several times
     * as fast as with the solver's own ways, which look for answers.
     */
    private static final String BOUND_FIRST = """
            nodeselection/bfs/stdpriority = 1000000
            nodeselection/bfs/minplungedepth = 0
            nodeselection/bfs/maxplungedepth = 0
            branching/relpscost/sbiterofs = 2000
            branching/relpscost/sbiterquot = 0.1
            branching/relpscost/initcand = 20
            branching/relpscost/inititer = 20
            branching/relpscost/minreliable = 1
            branching/relpscost/maxreliable = 2
            """;
    /**
     * Ways in which the solver looks for answers that would only cost time where a plan is known. The quick first ones
     * stay: without any answer it tells no bound.
     */
    private static final String NO_ANSWERS = List.of("alns", "rens", "rins", "crossover", "feaspump", "randrounding",
            "rounding", "shifting", "intshifting", "zirounding", "oneopt", "coefdiving", "fracdiving", "guideddiving",
            "linesearchdiving", "objpscostdiving", "pscostdiving", "rootsoldiving", "veclendiving",
            "distributiondiving", "conflictdiving", "farkasdiving", "adaptivediving", "gins", "mutation",
            "localbranching", "lpface").stream().map(h -> "heuristics/" + h + "/freq = -1\n")
            .collect(Collectors.joining());
    /** Ten times as much of the tree is seen in the same time. */
    private static final String NO_CUTS = """
            separating/maxrounds = 0
            separating/maxroundsroot = 0
            """;

    private WholeNumbers() { }

    /** @param millis clock limit; 0: none. @param nodes limit of the tree, repeatable; 0: none */
    static MPSolver.ResultStatus solve(MPSolver solver, long millis, long nodes) {
        return run(solver, millis, nodes, "");
    }

    /** For the bound above all; finds few answers, or none but the one it starts from. */
    static MPSolver.ResultStatus bound(MPSolver solver, long millis, long nodes) {
        return run(solver, millis, nodes, BOUND_FIRST + NO_ANSWERS);
    }

    /** The same where nothing is bought, which leaves little to cut off. */
    static MPSolver.ResultStatus choose(MPSolver solver, long millis, long nodes) {
        return run(solver, millis, nodes, BOUND_FIRST + NO_ANSWERS + NO_CUTS);
    }

    private static MPSolver.ResultStatus run(MPSolver solver, long millis, long nodes, String ways) {
        String limit = nodes > 0 ? "limits/nodes = " + nodes + "\n" : "";
        if (!solver.setSolverSpecificParametersAsString(
                "randomization/randomseedshift = 7\nparallel/maxnthreads = 1\n" + ways + limit)) {
            throw new IllegalStateException("the exact solver does not know its parameters");
        }
        if (millis > 0) {
            solver.setTimeLimit(millis);
        }
        MPSolverParameters exact = new MPSolverParameters();
        exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        return solver.solve(exact);
    }

    /** Ends the solver's run soon after {@code stop} says so. Close before the solver is deleted. */
    static final class Watch implements AutoCloseable {
        private final MPSolver solver;
        private final BooleanSupplier stop;
        private final Thread thread = new Thread(this::look, "stop-solver");
        private volatile boolean over;

        Watch(MPSolver solver, BooleanSupplier stop) {
            this.solver = solver;
            this.stop = stop;
            thread.setDaemon(true);
            thread.start();
        }

        private void look() {
            try {
                while (!over) {
                    if (stop.getAsBoolean()) {
                        solver.interruptSolve();
                    }
                    Thread.sleep(LOOK_MILLIS);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void close() {
            over = true;
            boolean interrupted = false;
            while (thread.isAlive()) {
                try {
                    thread.join();
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
