package croftboard.menu.choice;

import croftboard.need.WeekProblem;
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
        Priced priced = new Priced(choices, prices(unitCents));
        Random random = new Random(seed);
        int[] options = choices.options(start);
        long best = choices.fits(options) ? choices.worthOf(options) : Long.MIN_VALUE;
        best = taken(new Annealing(priced, random).menu(MOVES), best, better);
        FourParts parts = new FourParts(priced, random);
        for (int n = 0; effort.tries() == 0 || n < effort.tries(); n++) {
            double budget = priced.bound - best - 0.5;
            if (budget <= 0 || stop.getAsBoolean() || effort.millis() > 0 && System.nanoTime() > end) {
                return;
            }
            best = taken(parts.menu(budget), best, better);
        }
    }

    private double[] prices(double[][] unitCents) {
        double[] price = new double[choices.limits()];
        for (int r = 0; r < price.length; r++) {
            price[r] = Math.max(0, unitCents[choices.resource()[r]][choices.period()[r]]);
        }
        return price;
    }

    private long taken(Optional<int[]> found, long best, Consumer<int[]> better) {
        if (found.isEmpty() || !choices.fits(found.get()) || choices.worthOf(found.get()) <= best) {
            return best;
        }
        better.accept(choices.menu(found.get()));
        return choices.worthOf(found.get());
    }
}
