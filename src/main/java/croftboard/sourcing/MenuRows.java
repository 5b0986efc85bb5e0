package croftboard.sourcing;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPVariable;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The menu half of the joint program: dishes on slots, gaps, hands and equipment, coverage, variety, and their needs. */
final class MenuRows {
    private final WeekProblem problem;
    private final Program program;
    private final BuyingRows buying;
    private final MPVariable[][] dish;

    MenuRows(WeekProblem problem, Program program, BuyingRows buying) {
        this.problem = problem;
        this.program = program;
        this.buying = buying;
        dish = new MPVariable[problem.slots().size()][];
    }

    void build() {
        program.constant(problem.constantCents());
        if (buying.food != null) {
            buying.food.setUb(problem.prices().foodCostAtMost().toDouble() * problem.constantCents());
        }
        for (int s = 0; s < dish.length; s++) {
            slot(s);
        }
        gaps();
        limits();
        coverage();
        for (WeekProblem.VarietyRule rule : problem.prices().variety()) {
            if (rule.nextDay()) {
                nextDay(rule);
            } else {
                sameDay(rule);
            }
        }
    }

    private List<WeekProblem.Candidate> candidates(int s) {
        return problem.slots().get(s).candidates();
    }

    private void slot(int s) {
        WeekProblem.Slot slot = problem.slots().get(s);
        MPConstraint one = program.row(1, 1);
        Program.add(one, program.real(0, slot.mayBeEmpty() ? 1 : 0, -slot.emptyCents()), 1);
        dish[s] = new MPVariable[slot.candidates().size()];
        for (int k = 0; k < dish[s].length; k++) {
            WeekProblem.Candidate c = slot.candidates().get(k);
            dish[s][k] = program.real(0, 1, c.valueCents() - c.looseStapleCents());
            Program.add(one, dish[s][k], 1);
            for (WeekProblem.LooseNeed n : c.loose()) {
                Program.add(buying.needRow(n.item(), n.from(), n.to()), dish[s][k], -n.mg() / 1000.0);
            }
            double food = c.stapleCents() + c.looseStapleCents()
                    - problem.prices().foodCostAtMost().toDouble() * c.salesCents();
            Program.add(buying.food, dish[s][k], food);
        }
    }

    /** Of all free slots that start within one gap, at most one holds the dish. */
    private void gaps() {
        int gap = problem.prices().gapDays();
        Map<String, MPConstraint> rows = new HashMap<>();
        int[] starts = problem.slots().stream().mapToInt(WeekProblem.Slot::startDay).distinct().sorted().toArray();
        for (int s = 0; s < dish.length; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            for (int k = 0; slot.free() && k < dish[s].length; k++) {
                for (int a : starts) {
                    if (a <= slot.startDay() && slot.startDay() < a + gap) {
                        MPConstraint row = rows.computeIfAbsent(candidates(s).get(k).dish() + " " + a,
                                x -> program.row(-Program.INF, 1));
                        Program.add(row, dish[s][k], 1);
                    }
                }
            }
        }
    }

    private void limits() {
        Map<String, MPConstraint> rows = new TreeMap<>();
        for (int s = 0; s < dish.length; s++) {
            for (int k = 0; k < dish[s].length; k++) {
                for (WeekProblem.Use u : candidates(s).get(k).uses()) {
                    WeekProblem.Resource r = problem.resources().get(u.resource());
                    int period = r.period()[u.day()];
                    MPConstraint row = rows.computeIfAbsent(u.resource() + " " + period, x -> {
                        MPConstraint hands = program.row(-Program.INF, r.regular()[period]);
                        if (r.overtime()[period] > 0) {
                            Program.add(hands, program.real(0, r.overtime()[period],
                                    -r.overtimeCentsPerHour() / 60.0), -1);
                        }
                        return hands;
                    });
                    Program.add(row, dish[s][k], u.units());
                }
            }
        }
    }

    private void coverage() {
        List<WeekProblem.CoverageRule> rules = problem.prices().coverage();
        for (int n = 0; n < rules.size(); n++) {
            for (int day : problem.openDays()) {
                MPConstraint row = program.row(rules.get(n).atLeast(), Program.INF);
                Program.add(row, program.real(0, rules.get(n).atLeast(), -rules.get(n).centsEach()), 1);
                for (int s = 0; s < dish.length; s++) {
                    for (int k = 0; serves(s, day) && k < dish[s].length; k++) {
                        Program.add(row, dish[s][k], candidates(s).get(k).covers() >> n & 1);
                    }
                }
            }
        }
    }

    private boolean serves(int s, int day) {
        for (int d : problem.slots().get(s).serviceDays()) {
            if (d == day) {
                return true;
            }
        }
        return false;
    }

    private void sameDay(WeekProblem.VarietyRule rule) {
        for (int day : problem.openDays()) {
            Map<Integer, MPConstraint> rows = new TreeMap<>();
            for (int s = 0; s < dish.length; s++) {
                for (int k = 0; problem.slots().get(s).free() && serves(s, day) && k < dish[s].length; k++) {
                    MPConstraint row = rows.computeIfAbsent(Account.trait(candidates(s).get(k), rule.trait()),
                            x -> excess(rule));
                    Program.add(row, dish[s][k], 1);
                }
            }
        }
    }

    private MPConstraint excess(WeekProblem.VarietyRule rule) {
        MPConstraint row = program.row(-Program.INF, rule.nextDay() ? 1 : rule.atMost());
        Program.add(row, program.real(0, Program.INF, -rule.centsEach()), -1);
        return row;
    }

    private void nextDay(WeekProblem.VarietyRule rule) {
        for (int s = 0; s < dish.length; s++) {
            int next = Account.nextOnLine(problem, s);
            if (next < 0) {
                continue;
            }
            Map<Integer, MPConstraint> rows = new TreeMap<>();
            for (int slot : new int[] {s, next}) {
                for (int k = 0; k < dish[slot].length; k++) {
                    MPConstraint row = rows.computeIfAbsent(Account.trait(candidates(slot).get(k), rule.trait()),
                            x -> excess(rule));
                    Program.add(row, dish[slot][k], 1);
                }
            }
        }
    }
}
