package croftboard.menu;

import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A menu being built: put a dish on a slot, ask what the whole is worth. All rules are kept up to date dish by dish.
 * Not safe for several threads.
 */
final class MenuState {
    /** Weight in cents of a day on which a station or equipment is not enough, at least; and of each unit that is not there. */
    private static final long DAY_CENTS = 50_000;
    private static final long UNIT_CENTS = 2_000;
    /** More than any one dish can bring, so that a broken must is never worth it. */
    private final long brokenDay;
    private final WeekProblem problem;
    private final int[] choice;
    private final KitchenWork work;
    private final SalesRule sales;
    private final GapRule gap;
    private final HandsRule hands;
    private final PurchasesRule purchases;
    private final List<MenuRule> promises = new ArrayList<>();
    private final MenuRule[] all;

    MenuState(WeekProblem problem, PurchasePrices prices) {
        this.problem = problem;
        choice = new int[problem.slots().size()];
        Arrays.fill(choice, -1);
        work = new KitchenWork(problem);
        brokenDay = Math.max(DAY_CENTS, problem.slots().stream().mapToLong(s -> s.emptyCents() + s.candidates().stream()
                .mapToLong(WeekProblem.Candidate::valueCents).max().orElse(0)).max().orElse(0));
        sales = new SalesRule(problem);
        gap = new GapRule(problem);
        hands = new HandsRule(problem, work);
        purchases = new PurchasesRule(problem, work, sales, prices);
        for (int k = 0; k < problem.prices().coverage().size(); k++) {
            promises.add(new CoveragePromise(problem, k));
        }
        for (WeekProblem.VarietyRule rule : problem.prices().variety()) {
            promises.add(rule.nextDay() ? new NextDayVariety(problem, rule) : new SameDayVariety(problem, rule));
        }
        List<MenuRule> rules = new ArrayList<>(promises);
        rules.addAll(List.of(sales, gap, hands, purchases));
        all = rules.toArray(MenuRule[]::new);
    }

    int choice(int slot) {
        return choice[slot];
    }

    int[] choices() {
        return choice.clone();
    }

    /** @param candidate number in the slot's list; -1 for none */
    void set(int slot, int candidate) {
        if (choice[slot] == candidate) {
            return;
        }
        List<WeekProblem.Candidate> dishes = problem.slots().get(slot).candidates();
        if (choice[slot] >= 0) {
            WeekProblem.Candidate old = dishes.get(choice[slot]);
            for (MenuRule rule : all) {
                rule.take(slot, old);
            }
            work.take(old);
        }
        choice[slot] = candidate;
        if (candidate >= 0) {
            WeekProblem.Candidate dish = dishes.get(candidate);
            for (MenuRule rule : all) {
                rule.put(slot, dish);
            }
            work.put(dish);
        }
    }

    void setAll(int[] to) {
        for (int s = 0; s < to.length; s++) {
            set(s, to[s]);
        }
    }

    /** Worth in cents, bought food estimated, with broken musts weighed in. */
    long worth() {
        work.settle();
        long cents = 0;
        for (MenuRule rule : all) {
            cents += rule.cents();
        }
        return cents - work.stapleCents() - mustsWeight();
    }

    /** Cents that broken musts weigh. */
    long mustsWeight() {
        return gap.mustsBroken() * 2 * brokenDay + hands.daysBroken() * brokenDay + hands.mustsBroken() * UNIT_CENTS;
    }

    /** Everything but bought food and the promises that hang on it: equal to the final account to the cent. */
    long worthWithoutPurchases() {
        work.settle();
        long cents = sales.cents() + hands.cents() - work.stapleCents();
        for (MenuRule rule : promises) {
            cents += rule.cents();
        }
        return cents;
    }

    /** Whether every must of the menu holds (purchases aside). */
    boolean keepsMusts() {
        work.settle();
        return gap.mustsBroken() == 0 && hands.mustsBroken() == 0;
    }

    /** What is broken, a sentence a rule. */
    List<String> sentences() {
        work.settle();
        purchases.cents();
        return Arrays.stream(all).map(MenuRule::sentence).filter(s -> !s.isEmpty()).toList();
    }

    KitchenWork work() {
        return work;
    }
}
