package croftboard.plan;

import croftboard.menu.OpenMenu;
import croftboard.need.WeekProblem;
import croftboard.sourcing.OpenOrders;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Menu and orders changed together, judged by true money: a dish moves and the packs of what it touches follow, or packs
 * and deliveries change alone. A try that costs is taken the less often, the more it costs and the later it comes
 * (simulated annealing). Starts from a menu with its orders and answers with the best plan met, the start included.
 * Same start, seed and tries: same plan.
 */
final class JointSearch {
    /** Heat, in cents that are lost as soon as not: at the start so many tries at hand for each, and at the end a tenth. */
    private static final double TRIES_A_CENT = 3_300;
    private static final double LEAST_HEAT = 60;
    private static final double MOST_HEAT = 600;
    /** Of several weeks as one, which have so many slots and more. */
    private static final int MANY = 100;
    private static final double MOST_HEAT_OF_MANY = 1_000;
    private static final double END = 0.1;
    /** By the clock, the tries at hand are known only after a while. */
    private static final double WHILE = 0.01;
    private static final int DISHES_OF_HUNDRED = 80;
    private static final int TURNS_OF_HUNDRED = 1;
    private static final int ASK_EVERY = 256;
    private static final long[] NO_DOCK = {};
    private final OpenMenu menu;
    private final OpenOrders orders;
    private final DishTries dishes;
    private final int dock;
    private final Random random;
    private final double most;
    private int[] bestMenu;
    private int[] bestPacks;
    private double best;
    private double now;
    /** What the orders of the plan at hand cost. */
    private double cost;

    /** @param choice a menu @param packs its orders */
    JointSearch(WeekProblem problem, double localWorth, int[] choice, int[] packs, long seed) {
        menu = new OpenMenu(problem, choice);
        orders = new OpenOrders(problem, localWorth);
        dishes = new DishTries(problem, menu);
        dock = problem.prices().receivingResource();
        random = new Random(seed);
        most = problem.slots().size() < MANY ? MOST_HEAT : MOST_HEAT_OF_MANY;
        menu.changed(i -> orders.need(i, menu.need(i)));
        orders.start(packs);
        bestMenu = choice.clone();
        bestPacks = packs.clone();
        now = value();
        cost = menu.worth() - now;
        best = sound() ? now : Double.NEGATIVE_INFINITY;
    }

    /** Without offers, or with nothing to choose, there is nothing to do here. */
    static boolean suits(WeekProblem problem) {
        return !problem.offers().isEmpty() && problem.slots().stream()
                .anyMatch(s -> s.candidates().size() + (s.mayBeEmpty() ? 1 : 0) > 1);
    }

    /** @param tries plans looked at */
    record Found(int[] choice, int[] packs, long tries) { }

    /**
     * @param tries plans to look at; 0: limited by {@code millis}
     * @param millis clock; 0: limited by {@code tries}
     */
    Found run(long tries, long millis, BooleanSupplier stop) {
        long start = System.nanoTime();
        double heat = LEAST_HEAT;
        long n = 0;
        for (double done = 0; done < 1; n++) {
            if (n % ASK_EVERY == 0) {
                done = tries > 0 ? n / (double) tries : (System.nanoTime() - start) / (millis * 1e6);
                done = stop.getAsBoolean() ? 1 : done;
                heat = heat(done, tries > 0 ? tries : done < WHILE ? 0 : n / done);
            }
            once(now + heat * Math.log(1 - random.nextDouble()));
        }
        return new Found(bestMenu, bestPacks, n);
    }

    /** A search that has few tries must not lose its start: it could not come back. */
    private double heat(double done, double tries) {
        return Math.max(LEAST_HEAT, Math.min(most, tries / TRIES_A_CENT)) * Math.pow(END, done);
    }

    /** @param limit what the plan must be worth after the try, else it is taken back */
    private void once(double limit) {
        int kind = random.nextInt(100);
        if (kind < DISHES_OF_HUNDRED) {
            dish(limit);
            return;
        }
        orders.begin();
        if (kind < DISHES_OF_HUNDRED + TURNS_OF_HUNDRED) {
            orders.turn(random);
        } else {
            orders.shift(random);
        }
        if (!kept(limit)) {
            orders.undo();
        }
    }

    private void dish(double limit) {
        dishes.change(random);
        if (menu.worth() - cost + dishes.mostSaved() < limit) {
            dishes.undo();
            menu.changed(i -> { });
            return;
        }
        orders.begin();
        double foodFree = menu.foodFree();
        menu.changed(i -> {
            orders.need(i, menu.need(i));
            orders.settle(i, foodFree);
        });
        if (!kept(limit)) {
            dishes.undo();
            menu.changed(i -> orders.need(i, menu.need(i)));
            orders.undo();
        }
    }

    private boolean kept(double limit) {
        double then = value();
        if (then < limit) {
            return false;
        }
        now = then;
        cost = menu.worth() - then;
        if (now > best + 0.5 && sound()) {
            best = now;
            bestMenu = menu.choices();
            bestPacks = orders.packs();
        }
        return true;
    }

    private boolean sound() {
        return orders.sound() && menu.keepsMusts();
    }

    private double value() {
        long worth = menu.worth();
        return worth - orders.cents(menu.foodFree(), dock < 0 ? NO_DOCK : menu.used(dock));
    }
}
