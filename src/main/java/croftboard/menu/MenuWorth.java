package croftboard.menu;

import org.optaplanner.core.api.score.buildin.simplelong.SimpleLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;

/** Hands the engine's changes to the rules and their worth back to the engine. */
public final class MenuWorth implements IncrementalScoreCalculator<MenuSolution, SimpleLongScore> {
    private MenuState state;

    /** The engine makes its own. */
    public MenuWorth() { }

    @Override
    public void resetWorkingSolution(MenuSolution solution) {
        state = new MenuState(solution.problem().week(), solution.problem().prices());
        state.setAll(solution.choices());
    }

    @Override
    public void beforeEntityAdded(Object entity) { }

    @Override
    public void afterEntityAdded(Object entity) { }

    @Override
    public void beforeVariableChanged(Object entity, String variable) { }

    @Override
    public void afterVariableChanged(Object entity, String variable) {
        SlotChoice slot = (SlotChoice) entity;
        state.set(slot.slot(), slot.number());
    }

    @Override
    public void beforeEntityRemoved(Object entity) { }

    @Override
    public void afterEntityRemoved(Object entity) { }

    @Override
    public SimpleLongScore calculateScore() {
        return SimpleLongScore.of(state.worth());
    }
}
