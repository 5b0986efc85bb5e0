package croftboard.menu;

import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** A slot and the number of the dish chosen for it among the slot's candidates; null: nothing stands there. */
@PlanningEntity
final class SlotChoice {
    @PlanningId
    private Integer slot;
    @ValueRangeProvider(id = "dishes")
    private List<Integer> dishes;
    @PlanningVariable(valueRangeProviderRefs = "dishes", nullable = true)
    private Integer dish;

    SlotChoice() { }

    SlotChoice(int slot, int dishes, int chosen) {
        this.slot = slot;
        this.dishes = java.util.stream.IntStream.range(0, dishes).boxed().toList();
        this.dish = chosen < 0 ? null : Integer.valueOf(chosen);
    }

    int slot() {
        return slot;
    }

    Integer dish() {
        return dish;
    }

    int number() {
        return dish == null ? -1 : dish;
    }

    void choose(Integer to) {
        dish = to;
    }

    @Override
    public String toString() {
        return "slot " + slot;
    }
}
