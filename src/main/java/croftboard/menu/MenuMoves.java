package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/** Two tries in three put another dish on a slot; one exchanges the dishes of two slots that share dishes. */
public final class MenuMoves implements MoveIteratorFactory<MenuSolution, ChangeDishes> {

    /** The engine makes its own. */
    public MenuMoves() { }

    @Override
    public long getSize(ScoreDirector<MenuSolution> director) {
        return director.getWorkingSolution().slots().stream()
                .mapToLong(s -> slot(director, s).candidates().size()).sum();
    }

    private static WeekProblem.Slot slot(ScoreDirector<MenuSolution> director, SlotChoice choice) {
        return director.getWorkingSolution().problem().week().slots().get(choice.slot());
    }

    @Override
    public Iterator<ChangeDishes> createOriginalMoveIterator(ScoreDirector<MenuSolution> director) {
        List<ChangeDishes> all = new ArrayList<>();
        for (SlotChoice s : director.getWorkingSolution().slots()) {
            for (int k = 0; k < slot(director, s).candidates().size(); k++) {
                all.add(new ChangeDishes(s, k, null, null));
            }
        }
        return all.iterator();
    }

    @Override
    public Iterator<ChangeDishes> createRandomMoveIterator(ScoreDirector<MenuSolution> director, Random random) {
        return new RandomMoves(director.getWorkingSolution(), random);
    }

    private static final class RandomMoves implements Iterator<ChangeDishes> {
        private final List<SlotChoice> slots;
        private final List<WeekProblem.Slot> facts;
        private final MoveTable table;
        private final Random random;

        RandomMoves(MenuSolution solution, Random random) {
            this.random = random;
            slots = solution.slots();
            facts = solution.problem().week().slots();
            table = solution.problem().moves();
        }

        @Override
        public boolean hasNext() {
            return table.movable.length > 0;
        }

        @Override
        public ChangeDishes next() {
            int s = table.movable[random.nextInt(table.movable.length)];
            int[] partners = table.partners[s];
            if (random.nextInt(3) == 2 && partners.length > 0) {
                ChangeDishes exchange = exchange(s, partners[random.nextInt(partners.length)]);
                if (exchange != null) {
                    return exchange;
                }
            }
            int dishes = facts.get(s).candidates().size();
            int to = random.nextInt(dishes + (facts.get(s).mayBeEmpty() ? 1 : 0));
            return new ChangeDishes(slots.get(s), to == dishes ? null : Integer.valueOf(to), null, null);
        }

        /** Null when one of the two dishes does not fit the other slot. */
        private ChangeDishes exchange(int a, int b) {
            int inA = slots.get(a).number();
            int inB = slots.get(b).number();
            if (inA < 0 || inB < 0) {
                return null;
            }
            int toA = table.carried(b, inB, a);
            int toB = table.carried(a, inA, b);
            return toA < 0 || toB < 0 ? null : new ChangeDishes(slots.get(a), toA, slots.get(b), toB);
        }
    }
}
