package croftboard.plan.ask;

import java.util.Optional;

/** How long planted clashes take, for looking at: {@code ClashFigures FROM TO}. */
final class ClashFigures {
    private ClashFigures() { }

    public static void main(String[] args) {
        for (long seed = Long.parseLong(args[0]); seed <= Long.parseLong(args[1]); seed++) {
            PlantedClash week = PlantedClash.of(seed);
            long t = System.nanoTime();
            Optional<Clashing.Core> core = new Clashing(week.problem(), Optional.empty()).find();
            System.out.println(seed + " " + week.kind() + " " + (System.nanoTime() - t) / 1_000_000 + " ms, "
                    + core.map(c -> java.util.Set.copyOf(c.facts()).equals(week.planted()) + (c.proved() ? " proved" : "")).orElse("none"));
        }
    }
}
