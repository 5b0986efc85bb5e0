package croftboard.menu;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Puts another dish on one slot, or on two at once when they exchange theirs. */
final class ChangeDishes extends AbstractMove<MenuSolution> {
    private final SlotChoice first;
    private final Integer firstTo;
    private final SlotChoice second;
    private final Integer secondTo;

    ChangeDishes(SlotChoice first, Integer firstTo, SlotChoice second, Integer secondTo) {
        this.first = first;
        this.firstTo = firstTo;
        this.second = second;
        this.secondTo = secondTo;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<MenuSolution> director) {
        return !Objects.equals(first.dish(), firstTo) || second != null && !Objects.equals(second.dish(), secondTo);
    }

    @Override
    protected ChangeDishes createUndoMove(ScoreDirector<MenuSolution> director) {
        return new ChangeDishes(first, first.dish(), second, second == null ? null : second.dish());
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<MenuSolution> director) {
        change(director, first, firstTo);
        if (second != null) {
            change(director, second, secondTo);
        }
    }

    private static void change(ScoreDirector<MenuSolution> director, SlotChoice slot, Integer to) {
        director.beforeVariableChanged(slot, "dish");
        slot.choose(to);
        director.afterVariableChanged(slot, "dish");
    }

    @Override
    public ChangeDishes rebase(ScoreDirector<MenuSolution> destination) {
        return new ChangeDishes(destination.lookUpWorkingObject(first), firstTo,
                second == null ? null : destination.lookUpWorkingObject(second), secondTo);
    }

    @Override
    public Collection<?> getPlanningEntities() {
        return second == null ? List.of(first) : List.of(first, second);
    }

    @Override
    public Collection<?> getPlanningValues() {
        return Stream.of(firstTo, secondTo).filter(Objects::nonNull).toList();
    }

    @Override
    public String toString() {
        return first + " -> " + firstTo + (second == null ? "" : ", " + second + " -> " + secondTo);
    }
}
