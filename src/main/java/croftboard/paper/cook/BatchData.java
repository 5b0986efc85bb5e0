package croftboard.paper.cook;

import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.paper.Data;
import croftboard.plan.work.Loads;
import croftboard.plan.work.Making;
import java.util.stream.Collectors;

/** A batch as a table: a row for the batch itself, then one for each thing that goes in. */
final class BatchData {
    private BatchData() { }

    static Data of(CookWeek week, Making m, Loads loads) {
        Data.Building data = Data.of("day", "row", "recipe", "recipe_name", "slot", "batches", "loads", "portions", "id", "name",
                "cut", "standard_amount", "amount", "as_purchased_grams", "edible_grams", "use_by", "got_grams", "made_by");
        String slot = m.service().map(Making.Service::slot).orElse("");
        data.row(m.day(), "batch", m.recipe().id(), m.recipe().name(), slot, m.batches().toDecimal(4), loads.loads().stream()
                .map((Ratio r) -> r.toDecimal(4).stripTrailingZeros().toPlainString()).collect(Collectors.joining(" ")),
                m.portions().map(Object::toString).orElse(""), "", "", "", CookAmounts.of(m.recipe().makes()),
                CookAmounts.mass(m.grams()), "", CookWeek.grams(m.grams()), m.useBy(), "", "");
        for (int i = 0; i < m.items().size(); i++) {
            Making.Item item = m.items().get(i);
            data.row(m.day(), "goods", m.recipe().id(), m.recipe().name(), slot, "", "", "", item.id(),
                    week.called.item(item.id()), item.cut().orElse(""), CookAmounts.of(m.recipe().ingredients().get(i).amount()),
                    CookAmounts.of(item.amount()), item.component() ? "" : CookWeek.grams(item.ap()),
                    CookWeek.grams(item.ep()), "", "", "");
        }
        return data.done();
    }
}
