package croftboard.plan;

import croftboard.book.Book;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Natives;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Makes one week's plan: turns the book into a problem of numbers, has it solved, and names things
 * again. With steps in place of time the same inputs give the same plan, byte for byte.
 */
public final class Planner {
    private final Book book;
    private final Optional<LocalDateTime> now;

    /** @param now in the kitchen's zone: deliveries whose cut-off is before it are gone; empty: none is */
    public Planner(Book book, Optional<LocalDateTime> now) {
        this.book = book;
        this.now = now;
    }

    /** @throws IllegalStateException only for a fault of our own */
    public PlanAnswer plan(PlanRequest request) {
        Natives.startLoading();
        ProblemBuilder.Built built =
                ProblemBuilder.build(book, request.week(), request.keep(), request.given(), now);
        if (!built.keptFaults().isEmpty()) {
            return new PlanAnswer.Refused(built.keptFaults());
        }
        KeptPacks kept = new KeptPacks(built.problem());
        WeekProblem problem = kept.with(request.packs());
        if (!kept.faults().isEmpty()) {
            return new PlanAnswer.Refused(kept.faults());
        }
        Budget budget = Budget.of(request.time(), request.steps());
        int[] start = StartMenu.of(built.problem(), request.from());
        WeekSolver.Listener told = told(request, built, budget);
        WeekSolver.Solved solved = request.prove()
                ? new Proving(problem, request.time(), request.seed(), told, request.stop()).solve(start)
                : new WeekSolver(problem, budget, request.seed(), told, request.stop()).solve(start);
        return new PlanAnswer.Planned(plan(request, built, budget, solved), request.stop().getAsBoolean());
    }

    private WeekSolver.Listener told(PlanRequest request, ProblemBuilder.Built built, Budget budget) {
        return new WeekSolver.Listener() {
            @Override
            public void doing(String what) {
                request.progress().doing(what);
            }

            @Override
            public void better(WeekSolver.Solved solved) {
                request.progress().better(plan(request, built, budget, solved));
            }
        };
    }

    private WeekPlan plan(PlanRequest request, ProblemBuilder.Built built, Budget budget, WeekSolver.Solved solved) {
        WeekPlan.Inputs inputs = new WeekPlan.Inputs(request.seed(), budget.tries(), budget.rounds(), budget.nodes(),
                new TreeMap<>(request.keep()), request.from().map(p -> p.week().toString()),
                built.gone());
        WeekPlan.Proof proof = new WeekPlan.Proof(solved.orders().bestForMenu(), solved.bestAtAll(), solved.how());
        return new PlanAssembler(book, request.week(), built, solved.choice(), solved.orders().packs(),
                Standing.NOTHING)
                .assemble(inputs, proof);
    }
}
