package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.optaplanner.core.impl.solver.DefaultSolver;

/** Chooses a menu: a greedy start, then late acceptance in the engine. Same problem, prices, start, seed and tries: same menu. */
public final class MenuSearch {
    /** The engine's meters warn about themselves when a second search starts; kept here so that the setting stays. */
    private static final java.util.logging.Logger METERS = java.util.logging.Logger.getLogger("io.micrometer");

    static {
        METERS.setLevel(java.util.logging.Level.OFF);
    }

    private final WeekProblem problem;
    private final PurchasePrices prices;

    /** @param localWorth dollars that one more dollar spent locally is worth; see the joint relaxation */
    public MenuSearch(WeekProblem problem, double localWorth) {
        this.problem = problem;
        this.prices = PurchasePrices.of(problem, localWorth);
    }

    /**
     * How long to search.
     *
     * @param tries menus looked at: repeatable; 0 for no limit
     * @param millis clock time; 0 for no limit
     * @param memory how many accepted menus back a new one is compared with
     */
    public record Effort(long tries, long millis, int memory) { }

    /**
     * @param worthCents the estimate with which the search compares menus; the account of a plan is another number
     * @param keepsMusts whether hands, equipment and gaps hold
     * @param tries menus looked at
     */
    public record Found(int[] choice, long worthCents, boolean keepsMusts, long tries) { }

    /** A complete menu at once: slot by slot the dish that brings most at that moment. */
    public Found greedy() {
        int[] empty = new int[problem.slots().size()];
        java.util.Arrays.fill(empty, -1);
        return greedy(empty);
    }

    /** The same, keeping what {@code start} already has. */
    public Found greedy(int[] start) {
        MenuState state = new MenuState(problem, prices);
        state.setAll(start);
        long tries = 0;
        for (int s = 0; s < problem.slots().size(); s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            if (state.choice(s) >= 0 || slot.candidates().isEmpty()) {
                continue;
            }
            int best = slot.mayBeEmpty() ? -1 : 0;
            long worth = slot.mayBeEmpty() ? state.worth() : Long.MIN_VALUE;
            for (int k = 0; k < slot.candidates().size(); k++) {
                state.set(s, k);
                tries++;
                if (state.worth() > worth) {
                    worth = state.worth();
                    best = k;
                }
            }
            state.set(s, best);
        }
        tries += mend(state, start);
        return new Found(state.choices(), state.worth(), state.keepsMusts(), tries);
    }

    /** While a must is broken: slot by slot the dish, or none, that brings most; what {@code start} has stays. */
    private long mend(MenuState state, int[] start) {
        long tries = 0;
        long before = Long.MIN_VALUE;
        while (!state.keepsMusts() && state.worth() > before) {
            before = state.worth();
            for (int s = 0; s < start.length && !state.keepsMusts(); s++) {
                WeekProblem.Slot slot = problem.slots().get(s);
                int best = state.choice(s);
                long worth = state.worth();
                for (int k = slot.mayBeEmpty() ? -1 : 0; start[s] < 0 && k < slot.candidates().size(); k++) {
                    state.set(s, k);
                    tries++;
                    if (state.worth() > worth) {
                        worth = state.worth();
                        best = k;
                    }
                }
                state.set(s, best);
            }
        }
        return tries;
    }

    /**
     * Searches from a menu.
     *
     * @param stop asked now and then; true ends the search with the best menu so far
     */
    public Found search(int[] start, long seed, Effort effort, BooleanSupplier stop) {
        return search(start, seed, effort, stop, EnvironmentMode.REPRODUCIBLE);
    }

    Found search(int[] start, long seed, Effort effort, BooleanSupplier stop, EnvironmentMode mode) {
        if (nothingToChoose()) {
            return judged(start, 0);
        }
        Solver<MenuSolution> solver = SolverFactory.<MenuSolution>create(config(seed, effort, mode)).buildSolver();
        Thread watch = watch(solver, stop);
        MenuSolution best = solver.solve(new MenuSolution(new MenuProblem(problem, prices), start));
        watch.interrupt();
        long tries = ((DefaultSolver<MenuSolution>) solver).getSolverScope().getScoreCalculationCount();
        Found found = judged(best.choices(), tries);
        return found.keepsMusts() || !judged(start, 0).keepsMusts() ? found : judged(start, tries);
    }

    private boolean nothingToChoose() {
        return problem.slots().stream()
                .allMatch(s -> s.candidates().isEmpty() || s.candidates().size() == 1 && !s.mayBeEmpty());
    }

    private Found judged(int[] choice, long tries) {
        MenuState state = new MenuState(problem, prices);
        state.setAll(choice);
        return new Found(choice.clone(), state.worth(), state.keepsMusts(), tries);
    }

    private static Thread watch(Solver<MenuSolution> solver, BooleanSupplier stop) {
        Thread watch = new Thread(() -> {
            try {
                while (!stop.getAsBoolean()) {
                    Thread.sleep(20);
                }
                solver.terminateEarly();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }, "menu-search-watch");
        watch.setDaemon(true);
        watch.start();
        return watch;
    }

    private static SolverConfig config(long seed, Effort effort, EnvironmentMode mode) {
        TerminationConfig end = new TerminationConfig();
        if (effort.tries() > 0) {
            end.setScoreCalculationCountLimit(effort.tries());
        }
        if (effort.millis() > 0) {
            end.setMillisecondsSpentLimit(effort.millis());
        }
        LocalSearchPhaseConfig search = new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(MenuMoves.class))
                .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(effort.memory()))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                .withTerminationConfig(end);
        return new SolverConfig().withSolutionClass(MenuSolution.class).withEntityClasses(SlotChoice.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                        .withIncrementalScoreCalculatorClass(MenuWorth.class))
                .withEnvironmentMode(mode).withRandomSeed(seed).withPhaseList(List.of(search));
    }
}
