package croftboard.paper.cook;

import croftboard.book.Ingredient;
import croftboard.measure.Amount;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.plan.work.Making;
import croftboard.plan.work.WorkingOrder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is cut or weighed at one station on one day: the same cut of the same ingredient for the same day of use is one line,
 * whatever it is for. A making's ingredients belong to the first of its stations. Staples that are not cut are weighed from
 * the batch sheet, water is on tap.
 */
final class PrepLines {
    private final CookWeek week;

    PrepLines(CookWeek week) {
        this.week = week;
    }

    /** One ingredient of one making. @param place of the making in the station's order */
    record Piece(Making making, Making.Item item, WorkingOrder.Urgency urgency, int place) { }

    /**
     * @param useOn day of the makings it is for
     * @param pieces at least one, in working order
     */
    record Line(String item, Optional<String> cut, LocalDate useOn, List<Piece> pieces) {
        Ratio ap() {
            return pieces.stream().map(p -> p.item.ap()).reduce(Ratio.ZERO, Ratio::plus);
        }

        Ratio ep() {
            return pieces.stream().map(p -> p.item.ep()).reduce(Ratio.ZERO, Ratio::plus);
        }

        List<Making> users() {
            return pieces.stream().map(Piece::making).toList();
        }

        WorkingOrder.Urgency urgency() {
            return pieces.stream().map(Piece::urgency).min(Comparator.naturalOrder()).orElseThrow();
        }

        /** Days on which the plan needs it, with grams as purchased: the day it is cut, or taken from the freezer. */
        Map<LocalDate, Ratio> needs() {
            Map<LocalDate, Ratio> needs = new LinkedHashMap<>();
            pieces.forEach(p -> needs.merge(p.making.day().minusDays(p.item.ahead()), p.item.ap(), Ratio::plus));
            return needs;
        }

        /** {@code 36 cloves}, where every recipe counts or measures it alike. */
        Optional<String> measured() {
            Unit unit = pieces.get(0).item.amount().unit();
            boolean alike = unit.kind() != Unit.Kind.MASS && pieces.stream().allMatch(p -> p.item.amount().unit().equals(unit));
            return alike ? Optional.of(CookAmounts.of(new Amount(pieces.stream().map(p -> p.item.amount().value())
                    .reduce(Ratio.ZERO, Ratio::plus), unit))) : Optional.empty();
        }

        Optional<String> insteadOf() {
            return pieces.stream().flatMap(p -> p.item.insteadOf().stream()).findFirst();
        }

        boolean thawed() {
            return pieces.stream().anyMatch(p -> p.item.frozen());
        }
    }

    /** In the order in which the makings ask for them; what is for a later day last. */
    List<Line> of(LocalDate day, String station) {
        record Key(String item, Optional<String> cut, LocalDate useOn) { }
        Map<Key, List<Piece>> gathered = new LinkedHashMap<>();
        for (LocalDate useOn = day; !useOn.isAfter(day.plusDays(DAYS_AHEAD)); useOn = useOn.plusDays(1)) {
            int place = 0;
            for (WorkingOrder.Task t : week.orderOn(useOn)) {
                place += t.making().stations().contains(station) ? 1 : 0;
                for (Making.Item i : t.making().items()) {
                    if (t.making().stations().get(0).equals(station) && isPrepared(i)
                            && t.making().day().minusDays(i.cutAhead()).equals(day)) {
                        WorkingOrder.Urgency urgency = useOn.equals(day) ? t.urgency() : WorkingOrder.Urgency.LATER;
                        gathered.computeIfAbsent(new Key(i.id(), i.cut(), useOn), k -> new ArrayList<>())
                                .add(new Piece(t.making(), i, urgency, place));
                    }
                }
            }
        }
        return gathered.entrySet().stream().map(e -> new Line(e.getKey().item, e.getKey().cut, e.getKey().useOn, e.getValue()))
                .sorted(Comparator.comparing(Line::useOn).thenComparingInt(l -> l.pieces.get(0).place)
                        .thenComparing(l -> week.called.item(l.item)).thenComparing(l -> l.cut.orElse(""))).toList();
    }

    /** No recipe cuts anything earlier. */
    private static final int DAYS_AHEAD = 3;

    private boolean isPrepared(Making.Item item) {
        if (item.component()) {
            return false;
        }
        Ingredient ingredient = week.context.book().ingredient(item.id());
        return !ingredient.free() && (item.cut().isPresent() || !ingredient.isStaple());
    }
}
