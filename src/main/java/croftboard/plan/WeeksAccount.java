package croftboard.plan;

import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Weeks' accounts as one: sums, but for what only all weeks together can tell. Surplus and waste are those at the end of
 * the last week; local share and food cost are promised over all weeks.
 */
final class WeeksAccount {
    private final List<WeekPlan> plans = new ArrayList<>();
    private final List<WeekProblem> problems = new ArrayList<>();

    void add(WeekPlan plan, WeekProblem problem) {
        plans.add(plan);
        problems.add(problem);
    }

    Account of(WeekChain.Left left) {
        long sales = 0;
        long events = 0;
        long leftOver = 0;
        long staples = 0;
        long purchases = 0;
        long local = 0;
        long unclassified = 0;
        long fees = 0;
        long overtime = 0;
        List<Account.Broken> broken = new ArrayList<>();
        for (int w = 0; w < plans.size(); w++) {
            Account a = plans.get(w).account();
            sales += a.sales();
            events += a.eventSales();
            leftOver += a.left();
            staples += a.staples();
            purchases += a.purchases();
            local += a.localPurchases();
            unclassified += a.unclassified();
            fees += a.fees();
            overtime += a.overtime();
            int by = 7 * w;
            a.broken().stream().filter(b -> b.promise() != Account.Promise.LOCAL_SHARE
                    && b.promise() != Account.Promise.FOOD_COST).forEach(b -> broken.add(new Account.Broken(b.promise(),
                            b.rule(), b.day() < 0 ? b.day() : b.day() + by, b.amount(), b.cents())));
        }
        long kept = kept(left.keptMg());
        WeekProblem.Prices prices = problems.get(0).prices();
        over(broken, Account.Promise.LOCAL_SHARE, target().times(purchases).minus(Ratio.of(local)), prices.localPrice());
        over(broken, Account.Promise.FOOD_COST, Ratio.of(purchases - kept + staples)
                .minus(prices.foodCostAtMost().times(sales + events)), prices.foodCostPrice());
        return new Account(sales, events, leftOver, staples, purchases, local, unclassified, kept, waste(left.wastedMg()),
                fees, overtime, List.copyOf(broken));
    }

    Ratio target() {
        return JoinedWeeks.meanTarget(problems);
    }

    private static void over(List<Account.Broken> broken, Account.Promise promise, Ratio cents, Ratio price) {
        long cost = price.times(cents.max(Ratio.ZERO)).round();
        if (cost > 0) {
            broken.add(new Account.Broken(promise, 0, -1, cents.ceil(), cost));
        }
    }

    private long kept(Map<String, Long> mg) {
        long cents = 0;
        List<WeekProblem.Item> first = problems.get(0).items();
        List<WeekProblem.Item> last = problems.get(problems.size() - 1).items();
        for (int i = 0; i < first.size(); i++) {
            boolean staple = first.get(i).lifeDays() == ProblemBuilder.FOREVER;
            cents += (staple ? first : last).get(i).keptCentsPerMg().times(mg.getOrDefault(first.get(i).id(), 0L)).floor();
        }
        return cents;
    }

    private long waste(Map<String, Long> mg) {
        long cents = 0;
        for (WeekProblem.Item i : problems.get(0).items()) {
            cents += i.wasteCentsPerMg().times(mg.getOrDefault(i.id(), 0L)).round();
        }
        return cents;
    }

    WeekPlan.Share share() {
        long local = plans.stream().mapToLong(p -> p.share().local()).sum();
        long not = plans.stream().mapToLong(p -> p.share().notLocal()).sum();
        long unknown = plans.stream().mapToLong(p -> p.share().unclassified()).sum();
        return new WeekPlan.Share(plans.get(0).share().definition(), target(), local, not, unknown);
    }
}
