package croftboard.planted;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;

/**
 * Slots, dishes and the planted menu, which keeps the gap and every promise of coverage and variety. A slot's other
 * candidates are decoys, and dishes that the planted menu has in other slots.
 */
final class Menus {
    private static final double[] SHARE = {.32, .22, .14, .20, .12};
    private static final double[] BASE = {60, 60, 65, 70, 55, 50, 45, 50};
    private static final double[] DAY = {.9, .95, 1, 1.05, 1.2, 1.15};
    final List<Place> places = new ArrayList<>();
    private final Shape shape;
    private final Random g;
    private final List<Dish> dishes = new ArrayList<>();

    Menus(Shape shape, Random g) {
        this.shape = shape;
        this.g = g;
        for (int week = 0; week < shape.weeks(); week++) {
            week(week);
        }
        plant();
        decoys();
        int lines = shape.daily().length + shape.longer().length;
        List<TreeSet<Integer>> lists = new ArrayList<>();
        for (int line = 0; line < lines; line++) {
            lists.add(list(line));
        }
        for (int s = 0; s < places.size(); s++) {
            fill(places.get(s), lists.get(places.get(s).line), number(s));
        }
    }

    private void week(int week) {
        int first = 7 * week;
        for (int d = first; d < first + shape.open(); d++) {
            for (int l = 0; l < shape.daily().length; l++) {
                places.add(new Place(l, shape.daily()[l], week, new int[] {d}));
            }
        }
        for (int l = 0; l < shape.longer().length; l++) {
            for (int run = 0; run < shape.runs(); run++) {
                int b = first + 3 * run;
                places.add(new Place(shape.daily().length + l, shape.longer()[l], week, new int[] {b, b + 1, b + 2}));
            }
        }
    }

    /** Of the planted dish of a slot. */
    private int number(int slot) {
        return slot % (shape.menus() * shape.slotsOfWeek());
    }

    private void plant() {
        int[] vegan = new int[shape.menus() * 7];
        int mains = (int) java.util.Arrays.stream(shape.daily()).filter(k -> k == 0).count();
        java.util.Arrays.setAll(vegan, d -> g.nextInt(mains));
        for (int s = 0; s < shape.menus() * shape.slotsOfWeek(); s++) {
            Place p = places.get(s);
            int day = p.days[0];
            boolean daily = p.line < shape.daily().length;
            boolean free = daily && (p.line + day) % shape.daily().length < 2;
            long covers = (daily && p.kind == 0 && p.line == vegan[day] ? 1 : 0) | (free ? 2 : 0);
            int main = daily ? (p.line + day) % Dish.MAINS : (4 * (p.line - shape.daily().length) + day) % Dish.MAINS;
            dishes.add(Dish.random(g, p.kind, shape).with(covers | g.nextInt(5) / 3, main));
        }
    }

    private void decoys() {
        int kinds = (int) java.util.Arrays.stream(shape.daily()).distinct().count();
        for (int k = 0; k < kinds; k++) {
            long n = kinds == 1 ? shape.decoys() : Math.round(SHARE[k] * shape.decoys());
            for (int r = 0; r < n; r++) {
                dishes.add(Dish.random(g, k, shape));
            }
        }
    }

    /** A line's dishes: all that the planted menu has on it, and others of its kind. */
    private TreeSet<Integer> list(int line) {
        TreeSet<Integer> own = new TreeSet<>();
        List<Integer> others = new ArrayList<>();
        int planted = shape.menus() * shape.slotsOfWeek();
        int kind = places.stream().filter(p -> p.line == line).findFirst().orElseThrow().kind;
        for (int r = 0; r < dishes.size(); r++) {
            if (r < planted && places.get(r).line == line) {
                own.add(r);
            } else if (dishes.get(r).kind() == kind) {
                others.add(r);
            }
        }
        Collections.shuffle(others, g);
        own.addAll(others.subList(0, Math.max(0, Math.min(others.size(), shape.listed() - own.size()))));
        return own;
    }

    private void fill(Place place, TreeSet<Integer> list, int planted) {
        double part = place.days.length > 1 ? .45 : 1;
        for (int r : list) {
            double sold = BASE[Math.min(place.line, BASE.length - 1)] * DAY[place.days[0] % 7] * dishes.get(r).draw()
                    * part * (.93 + .14 * g.nextDouble());
            if (r == planted) {
                place.planted = place.drafts.size();
            }
            place.drafts.add(new Place.Draft(r, dishes.get(r), (int) Math.round(sold), place.days.length));
        }
    }
}
