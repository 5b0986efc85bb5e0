package croftboard.sourcing;

import croftboard.need.WeekProblem;

/**
 * Betters orders pack by pack until nothing helps: one pack less, one pack of another offer in its place, or more packs
 * up to the next price break.
 */
final class PackMoves {
    private static final double LEAST = 0.5;
    private static final int PASSES = 20;
    private final OrderFacts facts;
    private final OrderState state;
    private double cents;

    PackMoves(OrderFacts facts, OrderState state) {
        this.facts = facts;
        this.state = state;
    }

    void improve() {
        cents = state.centsWithSmallOrders();
        double before = Double.MAX_VALUE;
        for (int pass = 0; pass < PASSES && cents < before - LEAST; pass++) {
            before = cents;
            for (int o = 0; o < state.packs.length; o++) {
                nextBreak(o);
                less(o);
                instead(o);
            }
        }
    }

    private void less(int o) {
        while (state.packs[o] > facts.problem.offers().get(o).minPacks() && better(o, state.packs[o] - 1, o, -1)) {
            continue;
        }
    }

    private void instead(int o) {
        WeekProblem.Offer offer = facts.problem.offers().get(o);
        for (int other : facts.offersOfItem[offer.item()]) {
            WeekProblem.Offer there = facts.problem.offers().get(other);
            if (other != o && state.packs[o] > offer.minPacks() && state.packs[other] < there.maxPacks()) {
                better(o, state.packs[o] - 1, other, state.packs[other] + 1);
            }
        }
    }

    private void nextBreak(int o) {
        WeekProblem.Offer offer = facts.problem.offers().get(o);
        for (WeekProblem.Tier tier : offer.tiers()) {
            if (tier.packs() > state.packs[o] && tier.packs() <= offer.maxPacks() && state.packs[o] > 0) {
                better(o, tier.packs(), o, -1);
            }
        }
    }

    /** Tries new packs of one or two offers; keeps them when that costs less. */
    private boolean better(int a, int packsA, int b, int packsB) {
        int oldA = state.packs[a];
        int oldB = state.packs[b];
        state.set(a, packsA);
        if (b != a) {
            state.set(b, packsB);
        }
        double then = state.centsWithSmallOrders();
        if (then < cents - LEAST) {
            cents = then;
            return true;
        }
        if (b != a) {
            state.set(b, oldB);
        }
        state.set(a, oldA);
        return false;
    }
}
