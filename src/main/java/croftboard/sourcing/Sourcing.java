package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/** Orders for a menu: a search that always answers, then, where the exact solver is there, the exact program with its proof. */
public final class Sourcing {
    private static final long MOVES_A_ROUND = 20;
    private final WeekProblem problem;
    private final double localWorth;

    /** @param localWorth dollars that one more dollar spent locally is worth; {@link Relaxation#localWorth()} */
    public Sourcing(WeekProblem problem, double localWorth) {
        this.problem = problem;
        this.localWorth = localWorth;
    }

    /**
     * @param packs of each offer
     * @param complete every need is met, every minimum reached, the dock has hands
     * @param valueCents of the whole plan, by the account
     * @param bestForMenu no order for this menu makes the plan worth more; empty when nothing was proved
     * @param rounds of the search
     */
    public record Orders(int[] packs, boolean complete, long valueCents, Optional<Long> bestForMenu, int rounds) { }

    /** @param rounds of the search: repeatable; 0: until {@code stop} */
    public Orders search(int[] choice, long seed, int rounds, BooleanSupplier stop) {
        FixedMenu menu = new FixedMenu(problem, choice);
        OrderSearch.Found found = new OrderSearch(menu, localWorth).run(seed, rounds, stop);
        return judged(menu, found.packs(), Optional.empty(), found.rounds());
    }

    /**
     * Orders for the menu bettered pack by pack.
     *
     * @param packs of each offer
     * @param rounds repeatable; each is some packs tried
     */
    public Orders better(int[] choice, int[] packs, long seed, int rounds) {
        FixedMenu menu = new FixedMenu(problem, choice);
        OrderFacts facts = new OrderFacts(menu);
        OrderState state = new OrderState(facts);
        state.copy(packs);
        PackMoves moves = new PackMoves(facts, state);
        moves.improve();
        moves.accept(new java.util.Random(seed), MOVES_A_ROUND * rounds, () -> false);
        moves.improve();
        return judged(menu, state.packs, Optional.empty(), 0);
    }

    /**
     * The exact program, started from known orders; the better of both is kept.
     *
     * @param millis clock limit; 0: none
     * @param nodes limit of the tree, repeatable; 0: none
     */
    public Orders exact(int[] choice, Orders start, long millis, long nodes) {
        if (!Natives.available()) {
            return start;
        }
        FixedMenu menu = new FixedMenu(problem, choice);
        ExactOrders.Answer answer = new ExactOrders(menu).solve(start.packs(), new ExactOrders.Effort(millis, nodes));
        Orders better = answer.packs().map(p -> mended(menu, p)).map(p -> judged(menu, p, Optional.empty(), start.rounds()))
                .filter(o -> o.complete() && (!start.complete() || o.valueCents() > start.valueCents())).orElse(start);
        OptionalLong most = answer.mostCents();
        // A proof that its own plan contradicts proves nothing.
        Optional<Long> proof = better.complete() && most.isPresent() && most.getAsLong() >= better.valueCents()
                ? Optional.of(most.getAsLong()) : Optional.empty();
        return new Orders(better.packs(), better.complete(), better.valueCents(), proof, better.rounds());
    }

    /** Orders close to known ones: those packs as far as they are offered, bettered pack by pack. A matter of milliseconds. */
    public Orders near(int[] choice, int[] packs) {
        FixedMenu menu = new FixedMenu(problem, choice);
        int[] within = packs.clone();
        for (int o = 0; o < within.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            within[o] = Math.max(offer.minPacks(), Math.min(offer.maxPacks(), within[o]));
        }
        return judged(menu, mended(menu, within), Optional.empty(), 0);
    }

    /** Whether it is proved that no order for the menu keeps the musts; false also where nothing is proved. */
    public boolean impossible(int[] choice, long nodes) {
        return Natives.available() && new ExactOrders(new FixedMenu(problem, choice))
                .solve(new int[problem.offers().size()], new ExactOrders.Effort(0, nodes)).impossible();
    }

    /**
     * The exact program over the deliveries of some days, all others staying as they are; the better of both is kept. Its
     * proof speaks of these days' deliveries only and is left out.
     *
     * @param fromDay first delivery day
     * @param untilDay day after the last
     */
    public Orders exactWithin(int[] choice, Orders start, int fromDay, int untilDay, long millis, long nodes) {
        Orders found = new Sourcing(pinnedOutside(start.packs(), fromDay, untilDay), localWorth)
                .exact(choice, start, millis, nodes);
        return found.complete() && (!start.complete() || found.valueCents() > start.valueCents())
                ? new Orders(found.packs(), true, found.valueCents(), Optional.empty(), start.rounds()) : start;
    }

    private WeekProblem pinnedOutside(int[] packs, int fromDay, int untilDay) {
        List<WeekProblem.Offer> offers = new ArrayList<>();
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            int day = problem.deliveries().get(offer.delivery()).day();
            offers.add(fromDay <= day && day < untilDay ? offer : offer.pinned(packs[o]));
        }
        return problem.withOffers(offers);
    }

    /** Known orders, judged; where they break a must, mended as far as single packs can. */
    public Orders known(int[] choice, int[] packs) {
        FixedMenu menu = new FixedMenu(problem, choice);
        Orders orders = judged(menu, packs, Optional.empty(), 0);
        return orders.complete() ? orders : judged(menu, mended(menu, packs), Optional.empty(), 0);
    }

    /** The same orders with packs moved to a later delivery of their vendor wherever that loses nothing: fresher food. */
    public Orders fresher(int[] choice, Orders orders) {
        FixedMenu menu = new FixedMenu(problem, choice);
        Orders best = orders;
        for (int o = 0; o < orders.packs().length && best.complete(); o++) {
            for (int later : laterOffers(o)) {
                best = moved(menu, best, o, later);
            }
        }
        return best;
    }

    private int[] laterOffers(int o) {
        WeekProblem.Offer offer = problem.offers().get(o);
        int day = problem.deliveries().get(offer.delivery()).day();
        return java.util.stream.IntStream.range(0, problem.offers().size()).filter(n -> {
            WeekProblem.Offer other = problem.offers().get(n);
            return other.item() == offer.item() && other.vendor().equals(offer.vendor())
                    && other.pack().equals(offer.pack()) && problem.deliveries().get(other.delivery()).day() > day;
        }).boxed().sorted(java.util.Comparator.comparingInt(
                n -> -problem.deliveries().get(problem.offers().get(n).delivery()).day())).mapToInt(n -> n).toArray();
    }

    /** As many packs as may move at once, else fewer. */
    private Orders moved(FixedMenu menu, Orders from, int o, int later) {
        int most = Math.min(from.packs()[o] - problem.offers().get(o).minPacks(),
                problem.offers().get(later).maxPacks() - from.packs()[later]);
        for (int n = most; n > 0; n--) {
            int[] packs = from.packs().clone();
            packs[o] -= n;
            packs[later] += n;
            Orders tried = judged(menu, packs, from.bestForMenu(), from.rounds());
            if (tried.complete() && tried.valueCents() >= from.valueCents()) {
                return tried;
            }
        }
        return from;
    }

    /** Cents: what the menu would be worth if its food cost nothing; no order makes it worth more. */
    public long valueWithFreeFood(int[] choice) {
        return new FixedMenu(problem, choice).cents;
    }

    /** The solver's tolerances may leave a milligram uncovered or a cent below a minimum. */
    private static int[] mended(FixedMenu menu, int[] packs) {
        OrderFacts facts = new OrderFacts(menu);
        OrderState state = new OrderState(facts);
        state.copy(packs);
        new PackMoves(facts, state).improve();
        return state.packs;
    }

    private static Orders judged(FixedMenu menu, int[] packs, Optional<Long> proof, int rounds) {
        return new Orders(packs.clone(), menu.complete(packs), menu.account(packs).value(), proof, rounds);
    }
}
