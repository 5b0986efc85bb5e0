package croftboard.need;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalLong;

/** Tries every menu with every order, judged by the account: what searches and bounds are held against. Slow. */
public final class Enumeration {
    private final WeekProblem problem;
    private Best best;

    private Enumeration(WeekProblem problem) {
        this.problem = problem;
    }

    /** @param cents value of the account */
    public record Best(int[] choice, int[] packs, long cents) { }

    /** Value in cents of the best plan that keeps every must; empty when there is none. */
    public static OptionalLong best(WeekProblem problem) {
        return bestPlan(problem).map(b -> OptionalLong.of(b.cents)).orElse(OptionalLong.empty());
    }

    /** The best value for one menu. */
    public static OptionalLong bestFor(WeekProblem problem, int[] menu) {
        return bestOrder(problem, menu).map(b -> OptionalLong.of(b.cents)).orElse(OptionalLong.empty());
    }

    /** The best menu with the best order; empty when no menu keeps the musts. */
    public static Optional<Best> bestPlan(WeekProblem problem) {
        Enumeration all = new Enumeration(problem);
        all.menus(new int[problem.slots().size()], 0);
        return Optional.ofNullable(all.best);
    }

    /** The best order for one menu; empty when no order keeps the musts. */
    public static Optional<Best> bestOrder(WeekProblem problem, int[] choice) {
        Enumeration all = new Enumeration(problem);
        all.menu(choice);
        return Optional.ofNullable(all.best);
    }

    private void menus(int[] choice, int s) {
        if (s == choice.length) {
            menu(choice);
            return;
        }
        WeekProblem.Slot slot = problem.slots().get(s);
        for (int k = slot.mayBeEmpty() ? -1 : 0; k < slot.candidates().size(); k++) {
            choice[s] = k;
            menus(choice, s + 1);
        }
    }

    private void menu(int[] choice) {
        Workload work = Workload.of(problem, choice);
        if (gapsHold(problem, choice) && work.missed().isEmpty() && work.unitsOver(problem) == 0) {
            int[] packs = new int[problem.offers().size()];
            packs(choice, work, packs, 0);
        }
    }

    private void packs(int[] choice, Workload work, int[] packs, int o) {
        if (o < packs.length) {
            WeekProblem.Offer offer = problem.offers().get(o);
            for (packs[o] = offer.minPacks(); packs[o] <= offer.maxPacks(); packs[o]++) {
                packs(choice, work, packs, o + 1);
            }
        } else if (mustsHold(problem, work, packs)) {
            long cents = Account.of(problem, choice, packs, work).value();
            if (best == null || cents > best.cents) {
                best = new Best(choice.clone(), packs.clone(), cents);
            }
        }
    }

    /** Musts of the orders: packs within limits, minimums, hands at the dock, nothing missing. */
    public static boolean mustsHold(WeekProblem problem, Workload work, int[] packs) {
        return limitsHold(problem, packs) && dockHolds(problem, work, packs)
                && Buying.of(problem, work.needMg(), packs).complete();
    }

    private static boolean limitsHold(WeekProblem problem, int[] packs) {
        long[] money = new long[problem.deliveries().size()];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            if (packs[o] < offer.minPacks() || packs[o] > offer.maxPacks()) {
                return false;
            }
            money[offer.delivery()] += offer.costCents(packs[o]);
        }
        for (int v = 0; v < money.length; v++) {
            if (money[v] > 0 && money[v] < problem.deliveries().get(v).minimumCents()) {
                return false;
            }
        }
        return true;
    }

    private static boolean dockHolds(WeekProblem problem, Workload work, int[] packs) {
        long[][] used = Account.withReceiving(problem, packs, work.used());
        return new Workload(work.batches(), work.needMg(), used, work.missed(), work.stapleCents())
                .unitsOver(problem) == 0;
    }

    /** Two free slots with the same dish start at least the gap apart. */
    public static boolean gapsHold(WeekProblem problem, int[] choice) {
        for (int a = 0; a < choice.length; a++) {
            for (int b = a + 1; b < choice.length; b++) {
                WeekProblem.Slot x = problem.slots().get(a);
                WeekProblem.Slot y = problem.slots().get(b);
                if (choice[a] >= 0 && choice[b] >= 0 && x.free() && y.free()
                        && Math.abs(x.startDay() - y.startDay()) < problem.prices().gapDays()
                        && x.candidates().get(choice[a]).dish() == y.candidates().get(choice[b]).dish()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A menu in which nothing stands anywhere. */
    public static int[] nothing(WeekProblem problem) {
        int[] choice = new int[problem.slots().size()];
        Arrays.fill(choice, -1);
        return choice;
    }
}
