package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
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
        private final List<Integer> movable = new ArrayList<>();
        private final int[][] partners;
        private final List<Map<Integer, Integer>> numberOfDish = new ArrayList<>();
        private final Random random;

        RandomMoves(MenuSolution solution, Random random) {
            this.random = random;
            slots = solution.slots();
            facts = solution.problem().week().slots();
            for (int s = 0; s < facts.size(); s++) {
                Map<Integer, Integer> numbers = new HashMap<>();
                List<WeekProblem.Candidate> dishes = facts.get(s).candidates();
                for (int k = 0; k < dishes.size(); k++) {
                    numbers.put(dishes.get(k).dish(), k);
                }
                numberOfDish.add(numbers);
                if (dishes.size() + (facts.get(s).mayBeEmpty() ? 1 : 0) > 1) {
                    movable.add(s);
                }
            }
            partners = new int[facts.size()][];
            for (int s = 0; s < partners.length; s++) {
                int own = s;
                partners[s] = movable.stream().filter(o -> o != own && alike(own, o)).mapToInt(o -> o).toArray();
            }
        }

        private boolean alike(int a, int b) {
            return numberOfDish.get(a).keySet().stream().anyMatch(numberOfDish.get(b)::containsKey);
        }

        @Override
        public boolean hasNext() {
            return !movable.isEmpty();
        }

        @Override
        public ChangeDishes next() {
            int s = movable.get(random.nextInt(movable.size()));
            if (random.nextInt(3) == 2 && partners[s].length > 0) {
                ChangeDishes exchange = exchange(s, partners[s][random.nextInt(partners[s].length)]);
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
            Integer inA = slots.get(a).dish();
            Integer inB = slots.get(b).dish();
            if (inA == null || inB == null) {
                return null;
            }
            Integer toA = numberOfDish.get(a).get(facts.get(b).candidates().get(inB).dish());
            Integer toB = numberOfDish.get(b).get(facts.get(a).candidates().get(inA).dish());
            return toA == null || toB == null ? null
                    : new ChangeDishes(slots.get(a), toA, slots.get(b), toB);
        }
    }
}
