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
    /** The plan that keeps all of a rotation's dishes gets such a part of the time. */
    private static final int AGAIN = 4;
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
        if (request.rotation().isPresent() && !request.prove()) {
            return fromRotation(request, built, problem, budget, request.rotation().get());
        }
        int[] start = StartMenu.of(built.problem(), request.from());
        WeekSolver.Listener told = told(request, built, budget);
        WeekSolver.Solved solved = request.prove()
                ? new Proving(problem, request.time(), request.seed(), told, request.stop()).solve(start)
                : new WeekSolver(problem, budget, request.seed(), told, request.stop()).solve(start);
        return new PlanAnswer.Planned(plan(request, built, budget, solved), request.stop().getAsBoolean());
    }

    private PlanAnswer fromRotation(PlanRequest request, ProblemBuilder.Built built, WeekProblem week, Budget budget,
            WeekPlan rotation) {
        FromRotation from = new FromRotation(week, rotation.choices(), book.kitchen().promises().change().value());
        WeekSolver.Listener told = told(request, built, budget);
        WeekSolver.Solved solved = from.solve(StartMenu.of(built.problem(), request.rotation()),
                (problem, start) -> new WeekSolver(problem, budget, request.seed(), translated(told, from), request.stop())
                        .solve(start),
                (problem, start) -> new WeekSolver(problem, part(request), request.seed(), quiet(told), request.stop())
                        .solve(StartMenu.of(problem, request.rotation())));
        WeekPlan plan = plan(request, built, budget, solved);
        return new PlanAnswer.Planned(plan, request.stop().getAsBoolean(), Optional.of(FromRotation.kept(book, rotation, plan,
                request.given(), built, from.note())));
    }

    private static Budget part(PlanRequest request) {
        return Budget.of(request.time().dividedBy(AGAIN), request.steps().isPresent()
                ? java.util.OptionalLong.of(Math.max(1, request.steps().getAsLong() / AGAIN)) : request.steps());
    }

    private static WeekSolver.Listener translated(WeekSolver.Listener told, FromRotation from) {
        return new WeekSolver.Listener() {
            @Override
            public void doing(String what) {
                told.doing(what);
            }

            @Override
            public void better(WeekSolver.Solved solved) {
                told.better(from.truth(solved));
            }
        };
    }

    private static WeekSolver.Listener quiet(WeekSolver.Listener told) {
        return new WeekSolver.Listener() {
            @Override
            public void doing(String what) {
                told.doing("keeping the rotation's dishes: " + what);
            }

            @Override
            public void better(WeekSolver.Solved solved) {
                // numbers of another problem
            }
        };
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
                new TreeMap<>(request.keep()), request.from().map(p -> p.week().toString()).or(() -> request.rotation().flatMap(r -> r.inputs().from())),
                built.gone());
        WeekPlan.Proof proof = new WeekPlan.Proof(solved.orders().bestForMenu(), solved.bestAtAll(), solved.how());
        return new PlanAssembler(book, request.week(), built, solved.choice(), solved.orders().packs(),
                Standing.NOTHING)
                .assemble(inputs, proof);
    }
}
