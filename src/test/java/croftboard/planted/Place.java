package croftboard.planted;

import java.util.ArrayList;
import java.util.List;

/** A slot in the making, with its candidates; one of them is the planted dish. */
final class Place {
    final String id;
    final int line;
    final int kind;
    final int week;
    final int[] days;
    final List<Draft> drafts = new ArrayList<>();
    int planted;

    Place(int line, int kind, int week, int[] days) {
        this.id = "day-" + days[0] + "/line-" + line;
        this.line = line;
        this.kind = kind;
        this.week = week;
        this.days = days;
    }

    Draft plantedDraft() {
        return drafts.get(planted);
    }

    /** A candidate in the making. */
    static final class Draft {
        final int number;
        final Dish dish;
        final int portions;
        /** Grams by part of the dish and service day. */
        final long[][] grams;
        long cents;

        /** @param dishNumber equal for the same dish everywhere */
        Draft(int dishNumber, Dish dish, int portions, int days) {
            this.number = dishNumber;
            this.dish = dish;
            this.portions = portions;
            grams = new long[dish.item().length][days];
            for (int j = 0; j < grams.length; j++) {
                java.util.Arrays.fill(grams[j], Math.max(1, Math.round(portions * dish.grams()[j])));
            }
        }
    }
}
