package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.Arrays;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Betters orders pack by pack: one or two packs more or less of an offer, at times against packs of another offer of the
 * same item or of the same delivery. Fast: a move touches one or two items.
 */
final class PackMoves {
    private static final double LEAST = 0.5;
    private static final int PASSES = 20;
    private static final int ASK_EVERY = 1024;
    private static final int MEMORY = 3000;
    private final OrderFacts facts;
    private final OrderState state;
    private final WeekProblem.Offer[] offers;
    private double cents;

    /** @param state to be bettered in place */
    PackMoves(OrderFacts facts, OrderState state) {
        this.facts = facts;
        this.state = state;
        offers = facts.problem.offers().toArray(new WeekProblem.Offer[0]);
        cents = state.centsWithSmallOrders();
    }

    /** Late acceptance; ends with the best packs met. @param rounds moves tried */
    void accept(Random g, long rounds, BooleanSupplier stop) {
        if (offers.length == 0) {
            return;
        }
        int[] best = state.packs.clone();
        double bestCents = cents;
        double[] past = new double[MEMORY];
        Arrays.fill(past, cents);
        for (long round = 0; round < rounds && !(round % ASK_EVERY == 0 && stop.getAsBoolean()); round++) {
            int slot = (int) (round % MEMORY);
            move(g, past[slot]);
            past[slot] = cents;
            if (cents < bestCents) {
                bestCents = cents;
                System.arraycopy(state.packs, 0, best, 0, best.length);
            }
        }
        state.copy(best);
        cents = bestCents;
    }

    private void move(Random g, double past) {
        int a = g.nextInt(offers.length);
        int b = partner(g, a);
        int oldA = state.packs[a];
        int oldB = state.packs[b];
        int toA = within(a, oldA + step(g));
        int toB = b == a ? toA : within(b, toA > oldA ? oldB - 1 - g.nextInt(2) : oldB + 1 + g.nextInt(2));
        if (toA != oldA || toB != oldB) {
            better(a, toA, b, toB, Math.max(cents, past));
        }
    }

    private static int step(Random g) {
        int size = g.nextInt(4) == 0 ? 2 : 1;
        return g.nextBoolean() ? size : -size;
    }

    /** Nothing else, another offer of the item, or another offer of the delivery. */
    private int partner(Random g, int a) {
        int kind = g.nextInt(8);
        int[] among = kind == 0 ? facts.offersOfDelivery[offers[a].delivery()] : facts.offersOfItem[offers[a].item()];
        return kind < 6 ? among[g.nextInt(among.length)] : a;
    }

    private int within(int o, int packs) {
        return Math.max(offers[o].minPacks(), Math.min(offers[o].maxPacks(), packs));
    }

    /** Only changes that help, until none does. */
    void improve() {
        double before = Double.MAX_VALUE;
        for (int pass = 0; pass < PASSES && cents < before - LEAST; pass++) {
            before = cents;
            for (int o = 0; o < offers.length; o++) {
                more(o);
                nextBreak(o);
                less(o);
                instead(o);
            }
        }
    }

    private boolean helps(int a, int packsA, int b, int packsB) {
        return better(a, packsA, b, packsB, cents - LEAST);
    }

    private void more(int o) {
        while (state.missing(offers[o].item()) > 0 && state.packs[o] < offers[o].maxPacks()
                && helps(o, state.packs[o] + 1, o, -1)) {
            continue;
        }
    }

    private void less(int o) {
        while (state.packs[o] > offers[o].minPacks() && helps(o, state.packs[o] - 1, o, -1)) {
            continue;
        }
    }

    private void instead(int o) {
        for (int other : facts.offersOfItem[offers[o].item()]) {
            if (other != o && state.packs[o] > offers[o].minPacks() && state.packs[other] < offers[other].maxPacks()) {
                helps(o, state.packs[o] - 1, other, state.packs[other] + 1);
            }
        }
    }

    private void nextBreak(int o) {
        for (WeekProblem.Tier tier : offers[o].tiers()) {
            if (tier.packs() > state.packs[o] && tier.packs() <= offers[o].maxPacks() && state.packs[o] > 0) {
                helps(o, tier.packs(), o, -1);
            }
        }
    }

    /** Tries new packs of one or two offers; keeps them when that costs no more than the limit. */
    private boolean better(int a, int packsA, int b, int packsB, double limit) {
        int oldA = state.packs[a];
        int oldB = state.packs[b];
        state.set(a, packsA);
        if (b != a) {
            state.set(b, packsB);
        }
        double then = state.centsWithSmallOrders();
        if (then <= limit) {
            cents = then;
            return true;
        }
        state.set(a, oldA);
        if (b != a) {
            state.set(b, oldB);
        }
        return false;
    }
}
