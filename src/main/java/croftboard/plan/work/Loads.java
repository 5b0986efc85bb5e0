package croftboard.plan.work;

import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A making in as many loads as the equipment asks for: the fewest, each a whole number of batch steps; whole batches and a
 * rest where the fewest allow it, else as even as steps are. The largest step of the recipe on a piece of equipment counts,
 * since its steps follow each other.
 *
 * @param loads standard batches of each, largest first; one when nothing has to be split
 * @param because the equipment that asks for it; empty: one load
 * @param tooBig even the smallest step is more than that equipment takes
 */
public record Loads(List<Ratio> loads, Optional<Kitchen.Equipment> because, boolean tooBig) {

    public static Loads of(Kitchen kitchen, Making making) {
        Recipe recipe = making.recipe();
        Ratio most = making.batches();
        Optional<Kitchen.Equipment> because = Optional.empty();
        for (Kitchen.Equipment e : kitchen.equipment()) {
            Ratio perBatch = largestStep(recipe, e);
            if (e.atOnce().isPresent() && !e.held() && perBatch.signum() > 0) {
                Ratio fits = Ratio.of(e.atOnce().get()).over(perBatch);
                if (fits.compareTo(most) < 0) {
                    most = fits;
                    because = Optional.of(e);
                }
            }
        }
        if (because.isEmpty() || making.batches().signum() == 0) {
            return new Loads(List.of(making.batches()), Optional.empty(), false);
        }
        Ratio step = recipe.batchStep();
        Ratio fits = Ratio.of(most.over(step).floor());
        return fits.signum() == 0 ? new Loads(split(making.batches(), step, Ratio.ONE), because, true)
                : new Loads(split(making.batches(), step, fits), because, false);
    }

    private static Ratio largestStep(Recipe recipe, Kitchen.Equipment e) {
        return recipe.steps().stream().map(s -> s.uses().getOrDefault(e.id(), Ratio.ZERO)).reduce(Ratio.ZERO, Ratio::max);
    }

    /** @param most batch steps of a load */
    private static List<Ratio> split(Ratio batches, Ratio step, Ratio most) {
        long steps = batches.over(step).ceil();
        long count = Ratio.of(steps).over(most).ceil();
        Ratio whole = Ratio.of(most.times(step).floor());
        List<Ratio> loads = new ArrayList<>();
        if (whole.signum() > 0 && whole.times(count).compareTo(batches) >= 0) {
            Ratio left = batches;
            for (int i = 0; i < count; i++) {
                Ratio load = left.min(whole);
                loads.add(load);
                left = left.minus(load);
            }
            loads.removeIf(l -> l.signum() == 0);
            return List.copyOf(loads);
        }
        for (int i = 0; i < count; i++) {
            loads.add(step.times(steps / count + (i < steps % count ? 1 : 0)));
        }
        return List.copyOf(loads);
    }

    public boolean split() {
        return loads.size() > 1;
    }

    /** The different sizes, largest first. */
    public List<Ratio> sizes() {
        return loads.stream().distinct().toList();
    }

    /** How many loads are of that size. */
    public long count(Ratio size) {
        return loads.stream().filter(size::equals).count();
    }
}
