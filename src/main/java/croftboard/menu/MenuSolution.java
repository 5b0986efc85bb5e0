package croftboard.menu;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.score.buildin.simplelong.SimpleLongScore;

/** The engine's copy of a menu; never leaves the room. */
@PlanningSolution
final class MenuSolution {
    private MenuProblem problem;
    @PlanningEntityCollectionProperty
    private List<SlotChoice> slots;
    @PlanningScore
    private SimpleLongScore score;

    MenuSolution() { }

    MenuSolution(MenuProblem problem, int[] choice) {
        this.problem = problem;
        slots = new ArrayList<>();
        for (int s = 0; s < choice.length; s++) {
            slots.add(new SlotChoice(s, problem.week().slots().get(s).candidates().size(), choice[s]));
        }
    }

    MenuProblem problem() {
        return problem;
    }

    List<SlotChoice> slots() {
        return slots;
    }

    SimpleLongScore score() {
        return score;
    }

    int[] choices() {
        return slots.stream().mapToInt(SlotChoice::number).toArray();
    }
}
