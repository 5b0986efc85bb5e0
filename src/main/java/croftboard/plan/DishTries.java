package croftboard.plan;

import croftboard.menu.OpenMenu;
import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.Random;

/**
 * Tries at the menu: two in three put another dish on a slot, one exchanges the dishes of two slots. Tells how much
 * food money a try could save at the very most, so that hopeless ones need no orders.
 */
final class DishTries {
    /** Packs make food dearer than its cheapest price, or new packs can be had for less than their share. */
    private static final double ROOM = 1.5;
    private static final double ROOM_CENTS = 3_000;
    private final WeekProblem problem;
    private final OpenMenu menu;
    private final int[] movable;
    private final double[][] foodCents;
    private int a;
    private int b;
    private int wasA;
    private int wasB;

    DishTries(WeekProblem problem, OpenMenu menu) {
        this.problem = problem;
        this.menu = menu;
        movable = menu.movable();
        double[] cheapest = new double[problem.items().size()];
        Arrays.fill(cheapest, Double.MAX_VALUE);
        for (WeekProblem.Offer o : problem.offers()) {
            cheapest[o.item()] = Math.min(cheapest[o.item()], o.lowestPriceCents() / (double) o.packMg());
        }
        foodCents = problem.slots().stream().map(s -> s.candidates().stream().mapToDouble(c -> c.loose().stream()
                .mapToDouble(n -> cheapest[n.item()] < Double.MAX_VALUE ? n.mg() * cheapest[n.item()] : 0).sum())
                .toArray()).toArray(double[][]::new);
    }

    void change(Random g) {
        a = movable[g.nextInt(movable.length)];
        b = -1;
        wasA = menu.choice(a);
        int[] partners = menu.partners(a);
        if (g.nextInt(3) == 2 && partners.length > 0 && exchanged(partners[g.nextInt(partners.length)])) {
            return;
        }
        int dishes = problem.slots().get(a).candidates().size();
        int to = g.nextInt(dishes + (problem.slots().get(a).mayBeEmpty() ? 1 : 0));
        menu.set(a, to == dishes ? -1 : to);
    }

    private boolean exchanged(int other) {
        wasB = menu.choice(other);
        int toA = wasA < 0 || wasB < 0 ? -1 : menu.carried(other, a);
        int toB = toA < 0 ? -1 : menu.carried(a, other);
        if (toB < 0) {
            return false;
        }
        b = other;
        menu.set(a, toA);
        menu.set(b, toB);
        return true;
    }

    /** Cents that the orders could become cheaper by, generously. */
    double mostSaved() {
        return ROOM_CENTS + food(a, wasA) * ROOM - food(a, menu.choice(a)) / ROOM
                + (b < 0 ? 0 : food(b, wasB) * ROOM - food(b, menu.choice(b)) / ROOM);
    }

    private double food(int slot, int candidate) {
        return candidate < 0 ? 0 : foodCents[slot][candidate];
    }

    void undo() {
        menu.set(a, wasA);
        if (b >= 0) {
            menu.set(b, wasB);
        }
    }
}
