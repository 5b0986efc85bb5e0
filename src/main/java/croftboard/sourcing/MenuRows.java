package croftboard.sourcing;

import croftboard.need.Account;
import croftboard.need.WeekProblem;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The menu half of the joint program: dishes on slots, gaps, hands and equipment, coverage, variety, and their needs. */
final class MenuRows {
    private final WeekProblem problem;
    private final Program program;
    private final DishNeeds needs;
    private final HandsRows hands;
    private final FoodCost food;
    private final int[][] dish;

    MenuRows(WeekProblem problem, Program program, DishNeeds needs, HandsRows hands, FoodCost food) {
        this.problem = problem;
        this.program = program;
        this.needs = needs;
        this.hands = hands;
        this.food = food;
        dish = new int[problem.slots().size()][];
    }

    void build() {
        double free = StapleNeeds.inStock(problem);
        program.constant += problem.constantCents() + free;
        food.fixed(problem.constantCents(), -free);
        for (int s = 0; s < dish.length; s++) {
            slot(s);
        }
        gaps();
        for (int k = 0; k < problem.prices().coverage().size(); k++) {
            coverage(k, problem.prices().coverage().get(k));
        }
        for (WeekProblem.VarietyRule rule : problem.prices().variety()) {
            if (rule.nextDay()) {
                nextDay(rule);
            } else {
                sameDay(rule);
            }
        }
    }

    /** Columns: the dishes of each slot. */
    int[][] dish() {
        return dish;
    }

    private List<WeekProblem.Candidate> candidates(int s) {
        return problem.slots().get(s).candidates();
    }

    private void slot(int s) {
        WeekProblem.Slot slot = problem.slots().get(s);
        Program.Row one = program.row(1, 1);
        one.add(program.whole(0, slot.mayBeEmpty() ? 1 : 0, -slot.emptyCents()), 1);
        dish[s] = new int[slot.candidates().size()];
        for (int k = 0; k < dish[s].length; k++) {
            WeekProblem.Candidate c = slot.candidates().get(k);
            int x = program.whole(0, 1, c.valueCents() - c.looseStapleCents());
            dish[s][k] = x;
            one.add(x, 1);
            c.loose().forEach(n -> needs.need(new Covers.Window(n.item(), n.from(), n.to()), x, n.mg() / 1000.0));
            c.uses().forEach(u -> hands.use(x, u.resource(), u.day(), u.units()));
            food.dish(x, c.salesCents(), c.stapleCents() + c.looseStapleCents());
        }
    }

    /** Of all free slots that start within one gap, at most one holds the dish. */
    private void gaps() {
        int gap = problem.prices().gapDays();
        int[] starts = problem.slots().stream().mapToInt(WeekProblem.Slot::startDay).distinct().sorted().toArray();
        for (int from : starts) {
            Map<Integer, Program.Row> rows = new TreeMap<>();
            for (int s = 0; s < dish.length; s++) {
                WeekProblem.Slot slot = problem.slots().get(s);
                boolean within = from <= slot.startDay() && slot.startDay() < from + gap;
                for (int k = 0; within && slot.free() && k < dish[s].length; k++) {
                    rows.computeIfAbsent(candidates(s).get(k).dish(), d -> program.atMost(1)).add(dish[s][k], 1);
                }
            }
        }
    }

    private void coverage(int number, WeekProblem.CoverageRule rule) {
        for (int day : problem.openDays()) {
            Program.Row row = program.atLeast(rule.atLeast());
            row.add(program.real(0, rule.atLeast(), -rule.centsEach()), 1);
            for (int s = 0; s < dish.length; s++) {
                for (int k = 0; serves(s, day) && k < dish[s].length; k++) {
                    row.add(dish[s][k], candidates(s).get(k).covers() >> number & 1);
                }
            }
        }
    }

    private boolean serves(int s, int day) {
        return java.util.Arrays.stream(problem.slots().get(s).serviceDays()).anyMatch(d -> d == day);
    }

    private void sameDay(WeekProblem.VarietyRule rule) {
        for (int day : problem.openDays()) {
            Map<Integer, Program.Row> rows = new TreeMap<>();
            for (int s = 0; s < dish.length; s++) {
                if (problem.slots().get(s).free() && serves(s, day)) {
                    count(s, rule, rule.atMost(), rows);
                }
            }
        }
    }

    private void nextDay(WeekProblem.VarietyRule rule) {
        for (int s = 0; s < dish.length; s++) {
            int next = Account.nextOnLine(problem, s);
            if (next >= 0) {
                Map<Integer, Program.Row> rows = new TreeMap<>();
                count(s, rule, 1, rows);
                count(next, rule, 1, rows);
            }
        }
    }

    /** Adds the slot's dishes to the row of their trait; what is above the limit costs. */
    private void count(int s, WeekProblem.VarietyRule rule, int atMost, Map<Integer, Program.Row> rows) {
        for (int k = 0; k < dish[s].length; k++) {
            rows.computeIfAbsent(Account.trait(candidates(s).get(k), rule.trait()), t -> program.atMost(atMost)
                    .add(program.real(0, dish.length, -rule.centsEach()), -1)).add(dish[s][k], 1);
        }
    }
}
