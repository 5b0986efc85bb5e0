package croftboard.menu.choice;

import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Searches the menu of a plain choice week: a short cooling search, then many tries with the slots in four parts.
 * Same problem, prices, start, seed and tries: same menu.
 */
public final class ChoiceSearch {
    private static final long MOVES = 500_000;
    private final Choices choices;

    private ChoiceSearch(Choices choices) {
        this.choices = choices;
    }

    /** Empty when the week is not a plain choice: something is bought, promised beside filled slots, or held apart by a gap. */
    public static Optional<ChoiceSearch> of(WeekProblem problem) {
        return Choices.of(problem).map(ChoiceSearch::new);
    }

    /** How long. @param tries repeatable; 0: no limit. @param millis clock; 0: no limit */
    public record Effort(int tries, long millis) { }

    /**
     * Searches from a menu.
     *
     * @param start candidate of each slot, -1 for none
     * @param unitCents worth of one more unit, by resource and period, 0 or more: the prices of the divisible program
     * @param stop true ends the search
     * @param better hears each better menu that keeps every limit
     */
    public void search(int[] start, double[][] unitCents, long seed, Effort effort, BooleanSupplier stop,
            Consumer<int[]> better) {
        long end = effort.millis() > 0 ? System.nanoTime() + effort.millis() * 1_000_000 : Long.MAX_VALUE;
        Random random = new Random(seed);
        int[] known = choices.options(start);
        int[] best = choices.fits(known) ? known : lightest();
        List<Group> groups = Apart.slots(choices).stream().map(s -> new Group(s, best, unitCents, random)).toList();
        boolean gained = false;
        for (Group g : groups) {
            gained |= g.take(new Annealing(g.priced, random).menu(MOVES), best);
        }
        tell(gained, best, better);
        for (int n = 0; effort.tries() == 0 || n < effort.tries(); n++) {
            gained = false;
            boolean all = true;
            for (Group g : groups) {
                if (stop.getAsBoolean() || effort.millis() > 0 && System.nanoTime() > end) {
                    tell(gained, best, better);
                    return;
                }
                if (g.missing() > 0) {
                    all = false;
                    gained |= g.take(g.parts.menu(g.options, g.missing()), best);
                }
            }
            tell(gained, best, better);
            if (all) {
                return;
            }
        }
    }

    private void tell(boolean gained, int[] best, Consumer<int[]> better) {
        if (gained && choices.fits(best)) {
            better.accept(choices.menu(best));
        }
    }

    /** Of each slot the option that uses least in all: nothing, where a slot may be empty. */
    private int[] lightest() {
        int[] light = new int[choices.slots()];
        for (int s = 0; s < light.length; s++) {
            for (int k = 1; k < choices.units()[s].length; k++) {
                light[s] = sum(choices.units()[s][k]) < sum(choices.units()[s][light[s]]) ? k : light[s];
            }
        }
        return light;
    }

    private static long sum(int[] units) {
        return Arrays.stream(units).asLongStream().sum();
    }

    /** Slots that share no limit with other slots, and the best that is known of them. */
    private final class Group {
        private final int[] slots;
        private final Priced priced;
        private final FourParts parts;
        private int[] options;
        private double worth;

        Group(int[] slots, int[] start, double[][] unitCents, Random random) {
            this.slots = slots;
            Choices own = choices.part(slots, Apart.limits(choices, slots));
            double[] price = new double[own.limits()];
            for (int r = 0; r < price.length; r++) {
                price[r] = Math.max(0, unitCents[own.resource()[r]][own.period()[r]]);
            }
            priced = new Priced(own, price);
            parts = new FourParts(priced, random);
            options = Arrays.stream(slots).map(s -> start[s]).toArray();
            worth = own.fits(options) ? own.worthOf(options) : Double.NEGATIVE_INFINITY;
        }

        /** What the known options miss the bound by; 0 or less when they are the best there is. */
        double missing() {
            return priced.bound - worth - 0.5;
        }

        boolean take(Optional<int[]> found, int[] all) {
            if (found.isEmpty() || !priced.choices.fits(found.get()) || priced.choices.worthOf(found.get()) <= worth) {
                return false;
            }
            options = found.get();
            worth = priced.choices.worthOf(options);
            for (int i = 0; i < slots.length; i++) {
                all[slots[i]] = options[i];
            }
            return true;
        }
    }
}
