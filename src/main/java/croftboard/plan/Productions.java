package croftboard.plan;

import croftboard.book.Recipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A run longer than a dish's life is produced more than once. */
final class Productions {
    private Productions() { }

    /**
     * @param lifeDays how long it lasts, parts regarded
     * @return for each production its day, then the service days it covers; empty when some day cannot be covered
     */
    static Optional<List<int[]>> split(Recipe dish, int lifeDays, int[] days, Calendar calendar) {
        List<int[]> parts = new ArrayList<>();
        int i = 0;
        while (i < days.length) {
            int made = calendar.prepDayAtOrBefore(days[i] - dish.leadDays());
            int good = made + lifeDays - 1;
            if (made < 0 || good < days[i]) {
                return Optional.empty();
            }
            List<Integer> part = new ArrayList<>(List.of(made));
            while (i < days.length && days[i] <= good) {
                part.add(days[i++]);
            }
            parts.add(part.stream().mapToInt(x -> x).toArray());
        }
        return Optional.of(parts);
    }
}
