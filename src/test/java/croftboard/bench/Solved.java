package croftboard.bench;

import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.plan.Engine;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A week solved by the program, with the figures that the tables show. Money in cents. */
record Solved(WeekProblem problem, Duration time, Engine.Answer answer, Account account) {
    static Solved week(WeekProblem problem, int seconds, long seed) {
        Duration time = Duration.ofSeconds(seconds);
        return told(new Solved(problem, time, Engine.week(problem, time, seed)));
    }

    static Solved month(WeekProblem problem, int seconds, long seed) {
        Duration time = Duration.ofSeconds(seconds);
        return told(new Solved(problem, time, Engine.month(problem, time, seed)));
    }

    /** The weeks one after the other in the same time. */
    static Solved oneByOne(WeekProblem problem, int seconds, long seed) {
        Duration time = Duration.ofSeconds(seconds);
        return told(new Solved(problem, time, Engine.oneByOne(problem, time, seed)));
    }

    private Solved(WeekProblem problem, Duration time, Engine.Answer answer) {
        this(problem, time, answer, Account.of(problem, answer.choice(), answer.packs()));
    }

    private static Solved told(Solved s) {
        Bench.tell(s.problem.name() + ", " + s.time.toSeconds() + " s: " + Figures.dollars(s.value()));
        return s;
    }

    String name() {
        return problem.name() + (answer.complete() ? "" : " (not complete)");
    }

    long value() {
        return answer.valueCents();
    }

    /** Bound over all menus less value. */
    Optional<Long> gap() {
        return answer.bestAtAll().map(b -> b - value());
    }

    /** Bound over this menu's orders less value. */
    Optional<Long> ordersGap() {
        return answer.bestForMenu().map(b -> b - value());
    }

    /** Packs of an item over all orders, median over the items that are bought. */
    double medianPacks() {
        Map<Integer, Integer> ofItem = new TreeMap<>();
        for (int o = 0; o < answer.packs().length; o++) {
            if (answer.packs()[o] > 0) {
                ofItem.merge(problem.offers().get(o).item(), answer.packs()[o], Integer::sum);
            }
        }
        return Figures.median(ofItem.values());
    }

    /** Menus that one search looked at in a second, median over the searches (two run side by side). */
    double triesPerSecond() {
        double seconds = Engine.menuSeconds(time);
        return Figures.median(answer.searches().stream().map(s -> s.tries() / seconds).toList());
    }

    /** By search: what it thought its menu worth, less what the menu was worth with its orders. */
    List<Long> misjudged() {
        List<Long> all = new ArrayList<>();
        answer.searches().forEach(s -> s.trueCents().ifPresent(t -> all.add(s.thoughtCents() - t)));
        return all;
    }
}
