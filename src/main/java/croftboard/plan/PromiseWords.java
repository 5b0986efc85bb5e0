package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Promises;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Every promise of the kitchen, kept or broken, in words: by day for coverage, for the week else. */
final class PromiseWords {
    private final Book book;
    private final WeekProblem problem;
    private final Account account;

    PromiseWords(Book book, WeekProblem problem, Account account) {
        this.book = book;
        this.problem = problem;
        this.account = account;
    }

    List<WeekPlan.Promise> all() {
        List<WeekPlan.Promise> all = new ArrayList<>();
        whole(all, Account.Promise.EMPTY_SLOT, "filled-lines", "every line has a dish on every day");
        coverage(all);
        variety(all);
        if (problem.prices().localTarget().signum() > 0) {
            String target = problem.prices().localTarget().times(100).toDecimal(0) + " % of food money goes to local food";
            whole(all, Account.Promise.LOCAL_SHARE, "local-share", target);
        }
        book.kitchen().promises().foodCost().ifPresent(f -> whole(all, Account.Promise.FOOD_COST, "food-cost",
                "food costs at most " + f.atMost().times(100).toDecimal(0) + " % of sales"));
        evenness(all);
        return List.copyOf(all);
    }

    private void whole(List<WeekPlan.Promise> all, Account.Promise kind, String id, String say) {
        long cents = 0;
        long amount = 0;
        for (Account.Broken b : account.broken()) {
            cents += b.promise() == kind ? b.cents() : 0;
            amount += b.promise() == kind ? b.amount() : 0;
        }
        all.add(new WeekPlan.Promise(id, say, Optional.empty(), cents == 0, amount, cents));
    }

    private void coverage(List<WeekPlan.Promise> all) {
        List<Promises.Coverage> promises = book.kitchen().promises().coverage();
        for (int k = 0; k < promises.size(); k++) {
            for (int day : problem.openDays()) {
                LocalDate date = problem.firstDay().plusDays(day);
                int rule = k;
                Optional<Account.Broken> broken = account.broken().stream()
                        .filter(b -> b.promise() == Account.Promise.COVERAGE && b.rule() == rule && b.day() == day).findFirst();
                all.add(new WeekPlan.Promise("coverage " + promises.get(k).id(), promises.get(k).say(),
                        Optional.of(date), broken.isEmpty(), broken.map(Account.Broken::amount).orElse(0L),
                        broken.map(Account.Broken::cents).orElse(0L)));
            }
        }
    }

    private void variety(List<WeekPlan.Promise> all) {
        List<Promises.Variety> rules = book.kitchen().promises().variety();
        for (int k = 0; k < rules.size(); k++) {
            Promises.Variety v = rules.get(k);
            String trait = v.of() == Promises.Trait.MAIN ? "main ingredient" : v.of().name().toLowerCase(Locale.ROOT);
            String say = v.within() == Promises.Within.DAY
                    ? "at most " + v.atMost() + " dishes of one " + trait + " on a day"
                    : "no line repeats its " + trait + " on following days";
            String within = v.within() == Promises.Within.DAY ? "day" : "next-day";
            String id = "variety " + v.of().name().toLowerCase(Locale.ROOT) + " " + within;
            int rule = k;
            boolean any = false;
            for (Account.Broken b : account.broken()) {
                if (b.promise() == Account.Promise.VARIETY && b.rule() == rule) {
                    any = true;
                    all.add(new WeekPlan.Promise(id, say, Optional.of(problem.firstDay().plusDays(b.day())), false,
                            b.amount(), b.cents()));
                }
            }
            if (!any) {
                all.add(new WeekPlan.Promise(id, say, Optional.empty(), true, 0, 0));
            }
        }
    }

    private void evenness(List<WeekPlan.Promise> all) {
        for (int r = 0; r < problem.resources().size(); r++) {
            WeekProblem.Resource resource = problem.resources().get(r);
            int number = r;
            if (resource.hands() && problem.prices().evennessCentsPerMinute().signum() > 0) {
                account.broken().stream()
                        .filter(b -> b.promise() == Account.Promise.EVENNESS && b.rule() == number)
                        .forEach(b -> all.add(new WeekPlan.Promise("even-days " + resource.id(), resource.name()
                                + " works evenly: busiest day above the average", Optional.empty(), false, b.amount(),
                                b.cents())));
            }
        }
    }

}
