package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;

/** How the integer solver is run: one thread, one seed, to the end or to a limit. */
final class WholeNumbers {
    /** A bound as large as this says nothing. */
    static final double ANY = 1e15;

    private WholeNumbers() { }

    /** @param millis clock limit; 0: none. @param nodes limit of the tree, repeatable; 0: none */
    static MPSolver.ResultStatus solve(MPSolver solver, long millis, long nodes) {
        return solve(solver, millis, nodes, "");
    }

    /** The same. @param more settings, a line each */
    static MPSolver.ResultStatus solve(MPSolver solver, long millis, long nodes, String more) {
        solver.setSolverSpecificParametersAsString("randomization/randomseedshift = 7\nparallel/maxnthreads = 1\n"
                + (nodes > 0 ? "limits/nodes = " + nodes + "\n" : "") + more);
        if (millis > 0) {
            solver.setTimeLimit(millis);
        }
        MPSolverParameters exact = new MPSolverParameters();
        exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        return solver.solve(exact);
    }
}
