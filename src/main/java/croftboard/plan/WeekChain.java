package croftboard.plan;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.measure.IsoWeek;
import croftboard.need.Buying;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Weeks that are settled one after the other: food that one leaves is dated stock of the next, and its dishes keep their
 * gap. Remembers what was bought and went bad on the way.
 */
final class WeekChain {
    /** Food for a Sunday's work may be thawed or cut some days before. */
    private static final int DAYS_BEFORE = 7;
    private final Book book;
    private List<Lot> lots = new ArrayList<>();
    private final List<Given.Served> served = new ArrayList<>();
    private final Map<String, Long> wastedMg = new TreeMap<>();
    private final Map<String, Long> shelfMg = new TreeMap<>();

    WeekChain(Book book) {
        this.book = book;
    }

    /** @param bought in one of these weeks: its surplus counts */
    private record Lot(Given.Lot lot, boolean bought) { }

    /** @param outside what plans outside these weeks have decided for it */
    Given given(IsoWeek week, Given outside) {
        List<Given.Lot> all = new ArrayList<>(outside.lots());
        useful(week).forEach(l -> all.add(l.lot));
        List<Given.Served> dishes = new ArrayList<>(outside.served());
        LocalDate since = week.monday().minusDays(Math.max(2 * DAYS_BEFORE, book.kitchen().gapDays()));
        served.stream().filter(s -> !s.start().isBefore(since)).forEach(dishes::add);
        dishes.sort(Comparator.comparing(Given.Served::start).thenComparing(Given.Served::recipe));
        return new Given(outside.orders(), List.copyOf(all), List.copyOf(dishes));
    }

    private List<Lot> useful(IsoWeek week) {
        LocalDate first = week.monday().minusDays(DAYS_BEFORE);
        return lots.stream().filter(l -> !l.lot.until().isBefore(first)).toList();
    }

    /** One week is decided. @param given as {@link #given} told */
    void settle(WeekProblem problem, IsoWeek week, Given given, Given outside, int[] choice, int[] packs) {
        Buying buying = Buying.of(problem, Workload.of(problem, choice).needMg(), packs);
        long[] stock = problem.stock().stream().mapToLong(WeekProblem.ItemStock::mg).toArray();
        long[][] left = new long[problem.items().size()][problem.days()];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = problem.offers().get(o);
            left[offer.item()][problem.deliveries().get(offer.delivery()).day()] += packs[o] * offer.packMg();
        }
        for (Buying.Flow f : buying.flows()) {
            if (f.delivery() < 0) {
                stock[f.stockLot()] -= f.mg();
            } else {
                left[f.item()][f.delivery()] -= f.mg();
            }
        }
        List<Lot> then = new ArrayList<>();
        carry(problem, week, given, outside, stock, then);
        bring(problem, left, then);
        then.sort(Comparator.comparing((Lot l) -> l.lot.item()).thenComparing(l -> l.lot.from())
                .thenComparing(l -> l.lot.mg()).thenComparing(l -> l.bought));
        lots = then;
        drop(week.plusWeeks(1));
        serve(problem, choice);
    }

    /** Stock that is still there. */
    private void carry(WeekProblem problem, IsoWeek week, Given given, Given outside, long[] stock, List<Lot> then) {
        int counted = stock.length - given.lots().size();
        List<Lot> own = useful(week);
        for (int k = 0; k < stock.length; k++) {
            WeekProblem.ItemStock lot = problem.stock().get(k);
            int chained = k - counted - outside.lots().size();
            if (stock[k] > 0) {
                then.add(new Lot(new Given.Lot(problem.items().get(lot.item()).id(), problem.firstDay().plusDays(lot.from()),
                        problem.firstDay().plusDays(lot.until()), stock[k]), chained >= 0 && own.get(chained).bought));
            }
        }
    }

    private void bring(WeekProblem problem, long[][] left, List<Lot> then) {
        for (int i = 0; i < left.length; i++) {
            Ingredient item = book.ingredient(problem.items().get(i).id());
            for (int d = 0; d < left[i].length; d++) {
                LocalDate date = problem.firstDay().plusDays(d);
                if (left[i][d] > 0 && item.isStaple()) {
                    shelfMg.merge(item.id(), left[i][d], Long::sum);
                } else if (left[i][d] > 0) {
                    then.add(new Lot(new Given.Lot(item.id(), date, date.plusDays(item.keepsDays()), left[i][d]), true));
                }
            }
        }
    }

    private void drop(IsoWeek next) {
        List<Lot> good = useful(next);
        lots.stream().filter(l -> l.bought && !good.contains(l)).forEach(this::waste);
        lots = new ArrayList<>(good);
    }

    private void waste(Lot l) {
        wastedMg.merge(l.lot.item(), l.lot.mg(), Long::sum);
    }

    private void serve(WeekProblem problem, int[] choice) {
        for (int s = 0; s < choice.length; s++) {
            WeekProblem.Slot slot = problem.slots().get(s);
            if (choice[s] >= 0 && slot.free()) {
                served.add(new Given.Served(slot.candidates().get(choice[s]).recipe(),
                        problem.firstDay().plusDays(slot.startDay())));
            }
        }
    }

    /** @param keptMg surplus that is still good on the day, by item. @param wastedMg the rest that was bought and not used */
    record Left(Map<String, Long> keptMg, Map<String, Long> wastedMg) { }

    /** What is left of all that was bought. @param day surplus good until then keeps */
    Left left(LocalDate day) {
        Map<String, Long> kept = new TreeMap<>(shelfMg);
        Map<String, Long> wasted = new TreeMap<>(wastedMg);
        lots.stream().filter(Lot::bought).map(Lot::lot).forEach(l -> (l.until().isBefore(day) ? wasted : kept)
                .merge(l.item(), l.mg(), Long::sum));
        return new Left(kept, wasted);
    }
}
