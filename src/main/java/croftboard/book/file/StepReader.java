package croftboard.book.file;

import croftboard.book.Recipe.Step;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The steps of a recipe: what is done, whose hands, which equipment. */
final class StepReader {
    /** What points to a station from a step. */
    static final String FROM = "a step";
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    StepReader(Values values, Quantities quantities) {
        this.values = values;
        this.quantities = quantities;
        this.notebook = values.notebook();
    }

    /** @param dish only dishes have portions */
    Step read(Node node, boolean dish) {
        int before = notebook.faultCount();
        Fields f = Fields.of(notebook, Form.STEP, "the step", node.spot(), node);
        Optional<String> station = f.maybe("station", values::id);
        station.ifPresent(s -> notebook.points(Pointer.To.STATION, s, f.get("station").spot(), FROM));
        Step step = new Step(f.get("do", values::text), station,
                f.or("active", Ratio.ZERO, quantities::minutes),
                f.or("per_portion", Ratio.ZERO, quantities::minutes),
                f.or("unattended", Ratio.ZERO, quantities::minutes),
                f.or("uses", Map.of(), this::uses));
        boolean hands = step.activeMinutes().signum() > 0 || step.perPortionMinutes().signum() > 0;
        if (hands && station.isEmpty() && node instanceof Node.Mapping) {
            notebook.fault(f.spot(), "active time without a station",
                    "add station: ..., whose hands it takes");
        }
        if (!dish && f.has("per_portion")) {
            notebook.fault(f.get("per_portion").spot(),
                    "time per portion in a component, which has no portions",
                    "put it into active, per standard batch");
        }
        return notebook.wrote(step, f.spot(), before);
    }

    /** Equipment id to units; the unit's word is held against the equipment once the kitchen is read. */
    Map<String, Ratio> uses(Node node) {
        return uses(node, false);
    }

    /** @param orNone zero units may stand too, and are left out */
    Map<String, Ratio> uses(Node node, boolean orNone) {
        Map<String, Ratio> uses = new LinkedHashMap<>();
        values.each(node, "the uses of equipment", (key, value) -> {
            String id = values.checkedId(key.text(), key.spot());
            values.scalar(value, "units like 4 pans")
                    .ifPresent(s -> uses.put(id, units(id, key.spot(), s, orNone)));
        });
        uses.values().removeIf(units -> units.signum() == 0);
        return Collections.unmodifiableMap(uses);
    }

    private Ratio units(String equipment, Spot keySpot, Node.Scalar s, boolean orNone) {
        String[] parts = s.text().length() > Values.LONGEST_ID ? new String[0] : s.text().strip()
                .split(" +");
        Optional<Ratio> number = parts.length == 2 ? croftboard.measure.Amount.number(parts[0])
                : Optional.empty();
        boolean fits = number.isPresent() && number.get().signum() >= (orNone ? 0 : 1)
                && number.get().compareTo(Ratio.of(KitchenReader.MOST_UNITS)) <= 0;
        if (!fits) {
            String wrong = parts.length == 1 && croftboard.measure.Amount.number(parts[0]).isPresent()
                    ? " has no unit" : " is no number of units" + (orNone ? "" : " above zero");
            notebook.fault(s.spot(), Notebook.show(s.text()) + wrong,
                    "write number and unit of the equipment, like 4 pans");
        }
        notebook.uses(new EquipmentUse(equipment, keySpot, fits ? Optional.of(parts[1]) : Optional.empty(),
                s.spot()));
        return fits ? number.get() : Ratio.ONE;
    }

    /** @param unit its word, when number and unit could be read */
    record EquipmentUse(String equipment, Spot spot, Optional<String> unit, Spot unitSpot) {
        /**
         * Whether the word is the equipment's unit: equal, singular for plural, or another spelling
         * of the same measure.
         */
        boolean matches(String equipmentUnit) {
            String word = unit.orElse(equipmentUnit);
            return forms(word).stream().anyMatch(forms(equipmentUnit)::contains)
                    || Unit.named(word).isPresent() && Unit.named(word).equals(Unit.named(equipmentUnit));
        }

        private static List<String> forms(String word) {
            if (word.endsWith("es")) {
                return List.of(word, word.substring(0, word.length() - 1),
                        word.substring(0, word.length() - 2));
            }
            return word.length() > 1 && word.endsWith("s")
                    ? List.of(word, word.substring(0, word.length() - 1)) : List.of(word);
        }
    }
}
