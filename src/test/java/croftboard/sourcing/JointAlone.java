package croftboard.sourcing;

import com.google.ortools.linearsolver.MPSolver;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The joint program of a random week given to one integer solver and nothing else, in a process of its own:
 * {@code JointAlone SCIP|SAT|HIGHS SEED MILLIS FILE}. The solver speaks on the standard output; the values of all columns are
 * left in the file, after a line that begins with Objective, the best last.
 */
public final class JointAlone {
    private static final String MARK = "Objective ";
    private static final int THREADS = 2;

    private JointAlone() { }

    /** A plan in whole numbers. @param choice candidate of each slot, -1 for none */
    public record Plan(int[] choice, int[] packs) { }

    public static void main(String[] args) throws IOException {
        if (!Natives.available()) {
            return;
        }
        JointProgram joint = new JointProgram(RandomWeek.week(Long.parseLong(args[1])));
        Program.Loaded loaded = joint.program.load(args[0], false);
        MPSolver solver = loaded.solver();
        Path file = Path.of(args[3]);
        Files.deleteIfExists(file);
        solver.enableOutput();
        solver.setTimeLimit(Long.parseLong(args[2]));
        if (args[0].equals("HIGHS")) {
            solver.setSolverSpecificParametersAsString("mip_improving_solution_file=" + file);
        } else if (args[0].equals("SAT")) {
            solver.setNumThreads(THREADS);
        }
        MPSolver.ResultStatus status = solved(solver);
        if (status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE) {
            write(loaded, file);
        }
    }

    /** HiGHS keeps its time limit, but the wrapper knows no word for it and throws; its answers are in the file. */
    private static MPSolver.ResultStatus solved(MPSolver solver) {
        try {
            return solver.solve();
        } catch (IllegalArgumentException e) {
            return MPSolver.ResultStatus.NOT_SOLVED;
        }
    }

    private static void write(Program.Loaded loaded, Path file) throws IOException {
        StringBuilder text = new StringBuilder(MARK).append(loaded.solver().objective().value()).append('\n');
        for (int c = 0; c < loaded.columns().length; c++) {
            text.append(String.format(Locale.ROOT, "v%d %.9f%n", c, loaded.value(c)));
        }
        Files.writeString(file, text);
    }

    /**
     * The last plan of a file, its packs mended where the solver's tolerance left a milligram uncovered, and bettered pack
     * by pack as the program does with its own; empty when there is no whole plan.
     */
    public static Optional<Plan> read(WeekProblem problem, Path file) throws IOException {
        List<String> lines = Files.exists(file) ? Files.readAllLines(file) : List.of();
        int from = lines.size() - 1;
        while (from >= 0 && !lines.get(from).startsWith(MARK)) {
            from--;
        }
        JointProgram joint = new JointProgram(problem);
        double[] value = new double[joint.program.columns.size()];
        int found = 0;
        for (String line : lines.subList(Math.max(0, from), lines.size())) {
            if (line.startsWith("v")) {
                String[] cells = line.split(" ");
                value[Integer.parseInt(cells[0].substring(1))] = Double.parseDouble(cells[1]);
                found++;
            }
        }
        return found == value.length ? Optional.of(plan(problem, joint, value)) : Optional.empty();
    }

    private static Plan plan(WeekProblem problem, JointProgram joint, double[] value) {
        int[][] dish = joint.menu.dish();
        int[] choice = new int[dish.length];
        for (int s = 0; s < choice.length; s++) {
            choice[s] = -1;
            for (int k = 0; k < dish[s].length; k++) {
                choice[s] = value[dish[s][k]] > 0.5 ? k : choice[s];
            }
        }
        int[] packs = new int[joint.buying.packs.length];
        for (int o = 0; o < packs.length; o++) {
            packs[o] = (int) Math.round(value[joint.buying.packs[o]]);
        }
        OrderFacts facts = new OrderFacts(new FixedMenu(problem, choice));
        OrderState state = new OrderState(facts);
        state.copy(packs);
        new PackMoves(facts, state).improve();
        return new Plan(choice, state.packs.clone());
    }
}
