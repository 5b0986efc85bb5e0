package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Turns chosen dishes and packs, which are numbers, into a plan that names things. */
final class PlanAssembler {
    private final Book book;
    private final IsoWeek week;
    private final ProblemBuilder.Built built;
    private final WeekProblem problem;
    private final int[] choice;
    private final int[] packs;
    private final Workload work;
    private final Buying buying;
    private final Account account;
    private final UseByDates dates;
    private final Standing standing;

    PlanAssembler(Book book, IsoWeek week, ProblemBuilder.Built built, int[] choice, int[] packs, Standing standing) {
        this.book = book;
        this.standing = standing;
        this.week = week;
        this.built = built;
        this.problem = built.problem();
        this.choice = choice;
        this.packs = packs;
        work = Workload.of(problem, choice);
        buying = Buying.of(problem, work.needMg(), packs);
        account = Account.of(problem, choice, packs, work);
        dates = new UseByDates(problem, choice, work);
    }

    WeekPlan assemble(WeekPlan.Inputs inputs, WeekPlan.Proof proof) {
        List<WeekPlan.Missing> missing = new MissingMusts(Names.of(book), problem, choice, packs, work, buying).list();
        return new WeekPlan(week, book.fingerprint(), inputs, menu(), batches(), orders(), needs(), flows(), surplus(),
                account, new PromiseWords(book, problem, account).all(), share(), proof, missing, swaps());
    }

    private LocalDate date(int day) {
        return problem.firstDay().plusDays(day);
    }

    private List<LocalDate> dates(int[] days) {
        return java.util.Arrays.stream(days).mapToObj(this::date).toList();
    }

    private List<WeekPlan.Served> menu() {
        List<WeekPlan.Served> rows = new ArrayList<>();
        for (int s = 0; s < choice.length; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            if (standing.hidden().contains(slot.id())) {
                continue;
            }
            String line = slot.id().substring(slot.id().indexOf('/') + 1);
            if (choice[s] < 0) {
                rows.add(new WeekPlan.Served(slot.id(), line, dates(slot.serviceDays()), Optional.empty(), 0, 0, 0, 0,
                        List.of(), "", false));
                continue;
            }
            WeekProblem.Candidate dish = slot.candidates().get(choice[s]);
            List<WeekPlan.Production> made = new ArrayList<>();
            for (int p = 0; p < dish.productions().size(); p++) {
                WeekProblem.Production x = dish.productions().get(p);
                WeekPlan.Production now = new WeekPlan.Production(date(x.day()), date(x.lastDay()),
                        date(dates.ofProduction(s, p)), x.batches(), x.portions());
                made.add(standing.made(slot.id(), now).orElse(now));
            }
            rows.add(new WeekPlan.Served(slot.id(), line, dates(slot.serviceDays()), Optional.of(dish.recipe()),
                    dish.portions(), dish.salesCents(), dish.leftCents(), dish.stapleCents(), made, marks(dish),
                    standing.rows().containsKey(slot.id()) ? standing.rows().get(slot.id()).kept()
                            : !slot.mayBeEmpty() && slot.free()));
        }
        return rows;
    }

    private String marks(WeekProblem.Candidate dish) {
        StringBuilder marks = new StringBuilder();
        for (int k = 0; k < problem.prices().coverage().size(); k++) {
            if ((dish.covers() >> k & 1) == 1) {
                marks.append(book.kitchen().promises().coverage().get(k).mark());
            }
        }
        return marks.toString();
    }

    private List<WeekPlan.Batch> batches() {
        List<WeekPlan.Batch> rows = new ArrayList<>(standing.batches());
        for (int b = 0; b < work.batches().size(); b++) {
            Workload.Batch x = work.batches().get(b);
            WeekProblem.Component made = problem.components().get(x.component());
            Ratio count = made.step().times(x.steps());
            rows.add(new WeekPlan.Batch(made.recipe(), date(x.day()), date(x.lastDay()), date(dates.ofBatch(b)), count,
                    made.stepMg() * x.steps(), made.stapleCents(x.steps())));
        }
        rows.sort(Comparator.comparing(WeekPlan.Batch::made).thenComparing(WeekPlan.Batch::recipe)
                .thenComparing(WeekPlan.Batch::lastServed));
        return rows;
    }

    private List<WeekPlan.Order> orders() {
        List<WeekPlan.Order> rows = new ArrayList<>();
        for (int v = 0; v < problem.deliveries().size(); v++) {
            WeekProblem.Delivery d = problem.deliveries().get(v);
            Optional<WeekPlan.Order> before = standing.order(d.vendor(), date(d.day()));
            List<WeekPlan.OrderLine> lines = new ArrayList<>();
            for (int o = 0; o < packs.length; o++) {
                WeekProblem.Offer offer = problem.offers().get(o);
                if (offer.delivery() == v && packs[o] > 0) {
                    lines.add(new WeekPlan.OrderLine(problem.items().get(offer.item()).id(), offer.pack(), packs[o],
                            offer.packMg(), offer.priceCents(packs[o]), offer.costCents(packs[o]), offer.locality(),
                            offer.whyLocal(), offer.onList(), promised(before, offer)));
                }
            }
            if (!lines.isEmpty()) {
                Vendor vendor = book.vendor(d.vendor());
                rows.add(new WeekPlan.Order(d.vendor(), date(d.day()), d.cutOff(), lines,
                        lines.stream().mapToLong(WeekPlan.OrderLine::cost).sum(), vendor.minimum().value(),
                        before.map(WeekPlan.Order::toMinimum).orElse(d.minimumCents()), d.feeCents()));
            }
        }
        rows.sort(Comparator.comparing(WeekPlan.Order::cutOff).thenComparing(WeekPlan.Order::vendor)
                .thenComparing(WeekPlan.Order::delivery));
        return rows;
    }

    /** In a changed plan a line is promised when it was before; what is past its cut-off is not promised for that. */
    private boolean promised(Optional<WeekPlan.Order> before, WeekProblem.Offer offer) {
        String item = problem.items().get(offer.item()).id();
        return standing.orders().isEmpty() ? offer.minPacks() > 0 : before.stream().flatMap(o -> o.lines().stream())
                .anyMatch(l -> l.item().equals(item) && l.pack().equals(offer.pack()) && l.promised());
    }

    private List<WeekPlan.Need> needs() {
        List<WeekPlan.Need> rows = new ArrayList<>();
        for (int i = 0; i < work.needMg().length; i++) {
            for (int d = 0; d < problem.days(); d++) {
                if (work.needMg()[i][d] > 0) {
                    rows.add(new WeekPlan.Need(problem.items().get(i).id(), date(d), work.needMg()[i][d]));
                }
            }
        }
        return rows;
    }

    private List<WeekPlan.Flow> flows() {
        return buying.flows().stream().map(f -> new WeekPlan.Flow(problem.items().get(f.item()).id(),
                f.delivery() < 0 ? Optional.<LocalDate>empty() : Optional.of(date(f.delivery())), date(f.day()), f.mg()))
                .sorted(Comparator.comparing(WeekPlan.Flow::item).thenComparing(WeekPlan.Flow::day)
                        .thenComparing(f -> f.delivery().orElse(LocalDate.MIN)).thenComparing(WeekPlan.Flow::mg))
                .toList();
    }

    private List<WeekPlan.Surplus> surplus() {
        List<WeekPlan.Surplus> rows = new ArrayList<>();
        for (int i = 0; i < problem.items().size(); i++) {
            WeekProblem.Item item = problem.items().get(i);
            long kept = buying.keptMg()[i];
            long wasted = buying.wastedMg()[i];
            if (kept + wasted > 0) {
                rows.add(new WeekPlan.Surplus(item.id(), kept, item.keptCentsPerMg().times(kept).floor(), wasted,
                        item.wasteCentsPerMg().times(wasted).round()));
            }
        }
        return rows;
    }

    private WeekPlan.Share share() {
        String say = book.kitchen().local().map(l -> l.definition().say()).orElse("no definition of local in force");
        long local = account.localPurchases();
        return new WeekPlan.Share(say, problem.prices().localTarget(), local,
                account.purchases() - local - account.unclassified(), account.unclassified());
    }

    private SortedMap<String, SortedMap<String, String>> swaps() {
        SortedMap<String, SortedMap<String, String>> used = new TreeMap<>();
        for (int s = 0; s < choice.length; s++) {
            if (choice[s] >= 0 && !standing.hidden().contains(problem.slots().get(s).id())) {
                String recipe = problem.slots().get(s).candidates().get(choice[s]).recipe();
                Map<String, String> own = built.swaps().get(recipe);
                if (own != null) {
                    used.put(recipe, new TreeMap<>(own));
                }
            }
        }
        return used;
    }
}
