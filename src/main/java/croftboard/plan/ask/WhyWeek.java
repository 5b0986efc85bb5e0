package croftboard.plan.ask;

import croftboard.book.Promises;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.PlanPacks;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What each promise costs a week: the week planned again near the plan with that promise free of charge. */
public final class WhyWeek {
    private static final long TRIES = 12_000;
    private static final int SHOWN = 5;
    private final Question question;
    private final WeekProblem problem;
    private final int[] menu;
    private final int[] packs;

    public WhyWeek(Question question) {
        this.question = question;
        ChangedWeek week = question.asItIs();
        this.problem = week.built().problem();
        this.menu = week.start();
        this.packs = PlanPacks.of(problem, question.plan());
    }

    private record Free(String say, WeekProblem.Prices prices, long broken, List<String> carriedBy, Why.Carried how) { }

    public Why.Week of() {
        List<Free> all = new ArrayList<>();
        WeekProblem.Prices p = problem.prices();
        Account account = Account.of(problem, menu, packs);
        coverage(all, p, account);
        variety(all, p, account);
        if (p.localTarget().signum() > 0) {
            all.add(new Free(p.localTarget().times(100).toDecimal(0) + " % of food money goes to local food", with(p, p.coverage(),
                    p.variety(), Ratio.ZERO, p.foodCostPrice(), p.evennessCentsPerMinute()), broken(account,
                    Account.Promise.LOCAL_SHARE, 0), localVendors(), Why.Carried.VENDORS));
        }
        if (p.foodCostPrice().signum() > 0) {
            all.add(new Free("food costs at most " + p.foodCostAtMost().times(100).toDecimal(0) + " % of sales", with(p, p.coverage(),
                    p.variety(), p.localPrice(), Ratio.ZERO, p.evennessCentsPerMinute()), broken(account,
                    Account.Promise.FOOD_COST, 0), List.of(), Why.Carried.NOTHING));
        }
        if (p.evennessCentsPerMinute().signum() > 0) {
            all.add(new Free("no station's busiest day stands far above its average", with(p, p.coverage(), p.variety(),
                    p.localPrice(), p.foodCostPrice(), Ratio.ZERO), account.broken().stream()
                            .filter(b -> b.promise() == Account.Promise.EVENNESS).mapToLong(Account.Broken::cents).sum(),
                    List.of(), Why.Carried.NOTHING));
        }
        long anyway = gain(problem);
        List<Why.Promise> priced = all.stream().parallel().map(f -> new Why.Promise(f.say,
                Math.max(0, gain(Problems.withPrices(problem, f.prices)) - anyway), f.broken, f.carriedBy, f.how)).sorted(Comparator.comparingLong((Why.Promise x) -> -x.costs() - x.broken())
                        .thenComparing(Why.Promise::say)).toList();
        return new Why.Week(account.value(), priced);
    }

    /** What a short search gains on the plan under other prices of promises. */
    private long gain(WeekProblem free) {
        long now = Account.of(free, menu, packs).value();
        WeekRun.Found found = new Nearby(free, packs, 1).best(menu, TRIES);
        return found.complete() ? Math.max(0, found.valueCents() - now) : 0;
    }

    private static WeekProblem.Prices with(WeekProblem.Prices p, List<WeekProblem.CoverageRule> coverage,
            List<WeekProblem.VarietyRule> variety, Ratio local, Ratio food, Ratio even) {
        return new WeekProblem.Prices(p.gapDays(), coverage, variety, p.localTarget(), local, p.foodCostAtMost(), food, even,
                p.receivingResource(), p.receivingMinutes());
    }

    private static long broken(Account account, Account.Promise kind, int rule) {
        return account.broken().stream().filter(b -> b.promise() == kind && b.rule() == rule).mapToLong(Account.Broken::cents).sum();
    }

    private void coverage(List<Free> all, WeekProblem.Prices p, Account account) {
        for (int k = 0; k < p.coverage().size(); k++) {
            Promises.Coverage promise = question.book().kitchen().promises().coverage().get(k);
            List<WeekProblem.CoverageRule> free = new ArrayList<>(p.coverage());
            free.set(k, new WeekProblem.CoverageRule(free.get(k).id(), free.get(k).atLeast(), 0));
            all.add(new Free(promise.say(), with(p, free, p.variety(), p.localPrice(), p.foodCostPrice(),
                    p.evennessCentsPerMinute()), broken(account, Account.Promise.COVERAGE, k), carriers(k), Why.Carried.DISHES));
        }
    }

    private void variety(List<Free> all, WeekProblem.Prices p, Account account) {
        for (int k = 0; k < p.variety().size(); k++) {
            WeekProblem.VarietyRule v = p.variety().get(k);
            List<WeekProblem.VarietyRule> free = new ArrayList<>(p.variety());
            free.set(k, new WeekProblem.VarietyRule(v.trait(), v.nextDay(), v.atMost(), 0));
            Promises.Variety said = question.book().kitchen().promises().variety().get(k);
            String trait = said.of() == Promises.Trait.MAIN ? "main ingredient" : said.of().name().toLowerCase(Locale.ROOT);
            all.add(new Free(v.nextDay() ? "no line repeats its " + trait + " on following days" : "at most " + v.atMost()
                    + " dishes of one " + trait + " on a day", with(p, p.coverage(), free, p.localPrice(), p.foodCostPrice(),
                    p.evennessCentsPerMinute()), broken(account, Account.Promise.VARIETY, k), List.of(), Why.Carried.NOTHING));
        }
    }

    /** Dishes without which a day would be short of the promise, the most days first. */
    private List<String> carriers(int k) {
        Map<String, Integer> days = new TreeMap<>();
        int atLeast = problem.prices().coverage().get(k).atLeast();
        for (int day : problem.openDays()) {
            List<String> here = new ArrayList<>();
            for (int s = 0; s < menu.length; s++) {
                WeekProblem.Slot slot = problem.slots().get(s);
                if (menu[s] >= 0 && java.util.Arrays.stream(slot.serviceDays()).anyMatch(d -> d == day)
                        && (slot.candidates().get(menu[s]).covers() >> k & 1) == 1) {
                    here.add(slot.candidates().get(menu[s]).recipe());
                }
            }
            if (here.size() <= atLeast) {
                here.forEach(r -> days.merge(r, 1, Integer::sum));
            }
        }
        return most(days.entrySet().stream().map(e -> Map.entry(e.getKey(), (long) e.getValue())).toList());
    }

    private List<String> localVendors() {
        Map<String, Long> money = new TreeMap<>();
        for (WeekPlan.Order o : question.plan().orders()) {
            o.lines().stream().filter(l -> l.locality() == WeekProblem.Locality.LOCAL)
                    .forEach(l -> money.merge(o.vendor(), l.cost(), Long::sum));
        }
        return most(List.copyOf(money.entrySet()));
    }

    private static List<String> most(List<Map.Entry<String, Long>> all) {
        return all.stream().sorted(Comparator.comparingLong((Map.Entry<String, Long> e) -> -e.getValue())
                .thenComparing(Map.Entry::getKey)).limit(SHOWN).map(Map.Entry::getKey).toList();
    }
}
