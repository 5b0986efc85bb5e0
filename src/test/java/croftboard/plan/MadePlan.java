package croftboard.plan;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.menu.MenuSearch;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/**
 * Plans for tests: a greedy menu made to keep hands, equipment and gaps, and a plain cheapest-pack filling, without the
 * order programs. What cannot be bought costs the dish its place, so that most plans come out complete.
 */
public final class MadePlan {
    private final WeekProblem problem;
    private final int[] choice;
    private final int[] packs;
    private final boolean[] barred;

    private MadePlan(WeekProblem problem, int[] choice) {
        this.problem = problem;
        this.choice = choice;
        this.packs = new int[problem.offers().size()];
        this.barred = new boolean[problem.deliveries().size()];
    }

    public static WeekPlan of(Book book, IsoWeek week) {
        return of(book, week, Given.NOTHING, Optional.empty(), Map.of(), 0);
    }

    /** This menu and no other dish, musts broken and all. @param menu dish by slot */
    public static WeekPlan withMenu(Book book, IsoWeek week, Map<String, String> menu) {
        ProblemBuilder.Built built = ProblemBuilder.build(book, week, Map.of(), Given.NOTHING, Optional.empty());
        int[] choice = built.problem().slots().stream().mapToInt(s -> {
            var dishes = s.candidates().stream().map(WeekProblem.Candidate::recipe).toList();
            return dishes.indexOf(menu.getOrDefault(s.id(), ""));
        }).toArray();
        MadePlan made = new MadePlan(built.problem(), choice);
        made.fill(Workload.of(made.problem, made.choice).needMg());
        made.raiseToMinimum();
        return made.assembled(book, week, built, Map.of());
    }

    /** The greedy menu as it is, musts broken and all. */
    public static WeekPlan broken(Book book, IsoWeek week, Given given) {
        ProblemBuilder.Built built = ProblemBuilder.build(book, week, Map.of(), given, Optional.empty());
        MadePlan made = new MadePlan(built.problem(), new MenuSearch(built.problem(), 0).greedy().choice());
        made.fill(Workload.of(made.problem, made.choice).needMg());
        return made.assembled(book, week, built, Map.of());
    }

    /** @param extra seed of a few packs more than needed; 0: none */
    public static WeekPlan of(Book book, IsoWeek week, Given given, Optional<LocalDateTime> now,
            Map<String, String> kept, long extra) {
        ProblemBuilder.Built built = ProblemBuilder.build(book, week, kept, given, now);
        WeekProblem problem = built.problem();
        MadePlan made = new MadePlan(problem, new MenuSearch(problem, 0).greedy().choice());
        made.mendMenu();
        made.buyAll();
        if (extra != 0) {
            made.spill(new Random(extra));
            made.raiseToMinimum();
        }
        return made.assembled(book, week, built, kept);
    }

    private WeekPlan assembled(Book book, IsoWeek week, ProblemBuilder.Built built, Map<String, String> kept) {
        WeekPlan.Inputs inputs = new WeekPlan.Inputs(1, 0, 0, 0, new TreeMap<>(kept), Optional.empty(), built.gone());
        return new PlanAssembler(book, week, built, choice, packs, Standing.NOTHING).assemble(inputs,
                new WeekPlan.Proof(Optional.empty(), Optional.empty(), "cheapest packs first"));
    }

    /** Slot by slot: the greedy dish, else the first that breaks nothing, else nothing. */
    private void mendMenu() {
        int[] wanted = choice.clone();
        java.util.Arrays.fill(choice, -1);
        for (int s = 0; s < choice.length; s++) {
            int dishes = problem.slots().get(s).candidates().size();
            choice[s] = wanted[s];
            for (int k = 0; k < dishes && !holds(); k++) {
                choice[s] = k;
            }
            if (!holds()) {
                choice[s] = problem.slots().get(s).mayBeEmpty() ? -1 : wanted[s];
            }
        }
    }

    private boolean holds() {
        Workload work = Workload.of(problem, choice);
        if (!work.missed().isEmpty() || work.unitsOver(problem) > 0) {
            return false;
        }
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

    private void buyAll() {
        boolean again = true;
        while (again) {
            fill(Workload.of(problem, choice).needMg());
            raiseToMinimum();
            again = dropWhatIsMissing() || barTooSmall();
        }
    }

    /** Empties the last slot that uses something that cannot be bought. */
    private boolean dropWhatIsMissing() {
        long[][] missing = Buying.of(problem, Workload.of(problem, choice).needMg(), packs).missingMg();
        for (int s = choice.length - 1; s >= 0; s--) {
            boolean uses = choice[s] >= 0 && problem.slots().get(s).mayBeEmpty()
                    && problem.slots().get(s).candidates().get(choice[s]).loose().stream()
                            .anyMatch(n -> java.util.Arrays.stream(missing[n.item()]).sum() > 0);
            if (uses) {
                choice[s] = -1;
                return true;
            }
        }
        return false;
    }

    private boolean barTooSmall() {
        for (int v = 0; v < barred.length; v++) {
            if (!barred[v] && money(v) > 0 && money(v) < problem.deliveries().get(v).minimumCents()) {
                barred[v] = true;
                return true;
            }
        }
        return false;
    }

    private void fill(long[][] needMg) {
        for (int o = 0; o < packs.length; o++) {
            packs[o] = problem.offers().get(o).minPacks();
        }
        boolean bought = true;
        while (bought) {
            bought = false;
            long[][] missing = Buying.of(problem, needMg, packs).missingMg();
            for (int i = 0; i < missing.length; i++) {
                for (int d = 0; d < problem.days() && !bought; d++) {
                    bought = missing[i][d] > 0 && buy(i, d);
                }
            }
        }
    }

    private boolean buy(int item, int day) {
        int best = -1;
        double least = Double.MAX_VALUE;
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            int t = problem.deliveries().get(offer.delivery()).day();
            double each = (double) offer.priceCents(1) / offer.packMg();
            boolean serves = offer.item() == item && packs[o] < offer.maxPacks() && t <= day && !barred[offer.delivery()]
                    && t + problem.items().get(item).lifeDays() >= day;
            if (serves && each < least) {
                best = o;
                least = each;
            }
        }
        if (best >= 0) {
            packs[best]++;
        }
        return best >= 0;
    }

    private void raiseToMinimum() {
        for (int v = 0; v < problem.deliveries().size(); v++) {
            while (money(v) > 0 && money(v) < problem.deliveries().get(v).minimumCents() && addTo(v)) {
                continue;
            }
        }
    }

    private long money(int delivery) {
        long cents = 0;
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            cents += offer.delivery() == delivery ? offer.costCents(packs[o]) : 0;
        }
        return cents;
    }

    private boolean addTo(int delivery) {
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            if (offer.delivery() == delivery && packs[o] < offer.maxPacks()) {
                packs[o]++;
                return true;
            }
        }
        return false;
    }

    private void spill(Random random) {
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            if (random.nextInt(12) == 0 && packs[o] < offer.maxPacks()) {
                packs[o]++;
            }
        }
    }
}
