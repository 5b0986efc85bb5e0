package croftboard.plan;

import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Musts that a plan breaks, in words, with what would mend each. An empty list is a complete plan. */
final class MissingMusts {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final double GRAMS_PER_POUND = 453.59237;
    private final Names names;
    private final WeekProblem problem;
    private final int[] choice;
    private final int[] packs;
    private final Workload work;
    private final Buying buying;
    private final List<WeekPlan.Missing> all = new ArrayList<>();

    MissingMusts(Names names, WeekProblem problem, int[] choice, int[] packs, Workload work, Buying buying) {
        this.names = names;
        this.problem = problem;
        this.choice = choice;
        this.packs = packs;
        this.work = work;
        this.buying = buying;
    }

    List<WeekPlan.Missing> list() {
        food();
        components();
        hands();
        gaps();
        minimums();
        kept();
        return List.copyOf(all);
    }

    private String day(int day) {
        LocalDate date = problem.firstDay().plusDays(day);
        return DAY.format(date);
    }

    private void food() {
        for (int i = 0; i < buying.missingMg().length; i++) {
            for (int d = 0; d < problem.days(); d++) {
                long mg = buying.missingMg()[i][d];
                if (mg > 0) {
                    String pounds = String.format(Locale.ROOT, "%.2f lb", mg / 1000.0 / GRAMS_PER_POUND);
                    all.add(new WeekPlan.Missing(pounds + " of " + problem.items().get(i).name() + " for " + day(d)
                            + " cannot be bought: used by " + String.join(", ", usersOf(i)),
                            "another vendor or delivery day in farms/, stock in kitchen/on-hand.csv, or another dish"));
                }
            }
        }
    }

    private List<String> usersOf(int item) {
        List<String> users = new ArrayList<>();
        for (int s = 0; s < choice.length; s++) {
            if (choice[s] >= 0) {
                WeekProblem.Candidate dish = problem.slots().get(s).candidates().get(choice[s]);
                if (dish.loose().stream().anyMatch(n -> n.item() == item)) {
                    users.add(names.recipe(dish.recipe()) + " (" + problem.slots().get(s).id() + ")");
                }
            }
        }
        return users;
    }

    private void components() {
        for (WeekProblem.Demand d : work.missed()) {
            String name = names.recipe(problem.components().get(d.component()).recipe());
            all.add(new WeekPlan.Missing(name + " cannot be ready on " + day(d.useDay()) + " and good until "
                    + day(d.lastDay()), "a longer life of the recipe, another prep day, or another dish"));
        }
    }

    private void hands() {
        long[][] used = Account.withReceiving(problem, packs, work.used());
        for (int r = 0; r < used.length; r++) {
            WeekProblem.Resource resource = problem.resources().get(r);
            for (int t = 0; t < used[r].length; t++) {
                long over = used[r][t] - resource.regular()[t] - resource.overtime()[t];
                if (over > 0) {
                    String what = resource.hands() || r == problem.prices().receivingResource() ? " minutes" : " units";
                    String when = resource.periods() == 1 ? "in the week" : "on " + day(t);
                    all.add(new WeekPlan.Missing(resource.name() + " needs " + over + what + " more than there are "
                            + when, "more hours or equipment in kitchen/kitchen.yaml, or another dish"));
                }
            }
        }
    }

    private void gaps() {
        for (int a = 0; a < choice.length; a++) {
            for (int b = a + 1; b < choice.length; b++) {
                if (tooNear(problem.slots().get(a), choice[a], problem.slots().get(b), choice[b])) {
                    all.add(new WeekPlan.Missing(problem.slots().get(a).candidates().get(choice[a]).recipe()
                            + " stands on " + problem.slots().get(a).id() + " and on " + problem.slots().get(b).id()
                            + ", nearer than " + problem.prices().gapDays() + " days",
                            "keep another dish on one of the two"));
                }
            }
        }
    }

    private boolean tooNear(WeekProblem.Slot a, int dishA, WeekProblem.Slot b, int dishB) {
        return dishA >= 0 && dishB >= 0 && a.free() && b.free()
                && Math.abs(a.startDay() - b.startDay()) < problem.prices().gapDays()
                && a.candidates().get(dishA).dish() == b.candidates().get(dishB).dish();
    }

    private void minimums() {
        long[] money = new long[problem.deliveries().size()];
        for (int o = 0; o < packs.length; o++) {
            money[problem.offers().get(o).delivery()] += problem.offers().get(o).costCents(packs[o]);
        }
        for (int v = 0; v < money.length; v++) {
            WeekProblem.Delivery d = problem.deliveries().get(v);
            if (money[v] > 0 && money[v] < d.minimumCents()) {
                all.add(new WeekPlan.Missing("the order of " + names.vendor(d.vendor()) + " for " + day(d.day())
                        + " is below its minimum", "more packs from this vendor, or none"));
            }
        }
    }

    private void kept() {
        for (int s = 0; s < choice.length; s++) {
            if (choice[s] < 0 && !problem.slots().get(s).mayBeEmpty()) {
                all.add(new WeekPlan.Missing("nothing stands on " + problem.slots().get(s).id() + ", which must be filled",
                        "a dish with a longer life, or another one to keep"));
            }
        }
    }
}
