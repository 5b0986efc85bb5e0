package croftboard.plan.check;

import croftboard.book.Recipe;
import croftboard.plan.WeekPlan;
import java.util.ArrayList;
import java.util.List;

/** Productions of dishes that were lost whole and stand in no row any more: what they took is gone all the same. */
record LostMakings(Recipe dish, WeekPlan.Production production, long staples) {
    static List<LostMakings> of(Subject of) {
        List<LostMakings> lost = new ArrayList<>();
        of.revised().ifPresent(r -> r.base().menu().forEach(row -> row.productions().stream()
                .filter(p -> row.recipe().isPresent() && r.lost(row.recipe().get(), p.made()))
                .filter(p -> of.plan().menu().stream().noneMatch(n -> n.slot().equals(row.slot())
                        && n.recipe().equals(row.recipe()) && n.productions().stream().anyMatch(x -> x.made().equals(p.made()))))
                .forEach(p -> of.dish(row).ifPresent(d -> lost.add(new LostMakings(d, p,
                        of.making().stapleCents(d).times(p.batches()).round()))))));
        return lost;
    }
}
