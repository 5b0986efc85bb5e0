package croftboard.plan.change;

import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * The plan's order lines found again among the offers of a problem. What was ordered of a delivery that is closed now, and
 * what nothing offers any more (it comes on another day, or at a price of its own), becomes an offer of its own.
 */
final class PlannedLines {
    private final WeekProblem problem;
    final List<WeekProblem.Offer> offers;
    final List<WeekProblem.Delivery> deliveries;
    private final List<Integer> packs = new ArrayList<>();

    /** @param closed whether an order can no longer be changed */
    PlannedLines(WeekProblem problem, WeekPlan plan, Predicate<WeekPlan.Order> closed) {
        this.problem = problem;
        this.offers = new ArrayList<>(problem.offers());
        this.deliveries = new ArrayList<>(problem.deliveries());
        offers.forEach(o -> packs.add(0));
        for (WeekPlan.Order order : plan.orders()) {
            order.lines().forEach(line -> find(order, line, closed.test(order)));
        }
    }

    /** Packs that the plan orders of an offer. */
    int of(int offer) {
        return packs.get(offer);
    }

    void set(int offer, int count) {
        packs.set(offer, count);
    }

    /** @return its number */
    int add(WeekProblem.Offer offer, int count) {
        offers.add(offer);
        packs.add(count);
        return offers.size() - 1;
    }

    /** The vendor's delivery of that day, made when there is none. */
    int delivery(WeekProblem.Delivery like) {
        for (int v = 0; v < deliveries.size(); v++) {
            if (deliveries.get(v).vendor().equals(like.vendor()) && deliveries.get(v).day() == like.day()) {
                return v;
            }
        }
        deliveries.add(like);
        return deliveries.size() - 1;
    }

    private LocalDate date(WeekProblem.Offer o) {
        return problem.firstDay().plusDays(deliveries.get(o.delivery()).day());
    }

    private void find(WeekPlan.Order order, WeekPlan.OrderLine line, boolean closed) {
        int loose = -1;
        for (int o = offers.size() - 1; o >= 0; o--) {
            WeekProblem.Offer offer = offers.get(o);
            boolean same = packs.get(o) == 0 && offer.vendor().equals(order.vendor()) && offer.pack().equals(line.pack())
                    && problem.items().get(offer.item()).id().equals(line.item()) && date(offer).equals(order.delivery());
            if (same && offer.priceCents(line.packs()) == line.price() && offer.maxPacks() >= line.packs()) {
                packs.set(o, line.packs());
                return;
            }
            loose = same ? o : loose;
        }
        if (closed) {
            own(order, line);
        } else if (loose >= 0) {
            packs.set(loose, line.packs());
        }
    }

    private void own(WeekPlan.Order order, WeekPlan.OrderLine line) {
        int day = Math.toIntExact(java.time.temporal.ChronoUnit.DAYS.between(problem.firstDay(), order.delivery()));
        int v = delivery(new WeekProblem.Delivery(order.vendor(), day, order.cutOff(), 0, order.fee(), false));
        for (int i = 0; i < problem.items().size(); i++) {
            if (problem.items().get(i).id().equals(line.item())) {
                add(new WeekProblem.Offer(order.vendor(), i, v, line.pack(), line.packMg(),
                        List.of(new WeekProblem.Tier(1, line.price())), line.packs(), line.packs(), line.locality(),
                        line.whyLocal(), line.onList()), line.packs());
            }
        }
    }
}
