package croftboard.plan;

import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where a search starts: nothing, or what an earlier plan had on the same slots, as far as it may stand there now. */
final class StartMenu {
    private StartMenu() { }

    static int[] of(WeekProblem problem, Optional<WeekPlan> from) {
        int[] choice = new int[problem.slots().size()];
        Arrays.fill(choice, -1);
        Map<String, String> earlier = from.map(WeekPlan::choices).orElse(Map.of());
        for (int s = 0; s < choice.length; s++) {
            List<WeekProblem.Candidate> dishes = problem.slots().get(s).candidates();
            for (int k = 0; k < dishes.size(); k++) {
                if (dishes.get(k).recipe().equals(earlier.get(problem.slots().get(s).id()))) {
                    choice[s] = k;
                }
            }
        }
        return choice;
    }
}
