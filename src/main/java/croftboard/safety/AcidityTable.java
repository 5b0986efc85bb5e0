package croftboard.safety;

import croftboard.measure.Ratio;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Whether measured acidity and water activity take food out of temperature control (Food Code 1-201.10, tables A and B).
 * Without measured numbers nothing is ever derived here. Copies of the tables differ: food is out of control only when
 * every copy says so.
 */
public record AcidityTable(List<Row> rows) {

    /** HEATED_AND_PACKED: table A, heat-treated and then packaged. OTHER: table B. */
    public enum Treatment { HEATED_AND_PACKED, OTHER }

    /** NOT_CONTROLLED: needs no temperature control. ASSESS: treat as food that does until a product assessment. */
    public enum Verdict { NOT_CONTROLLED, ASSESS }

    /** @param copy where the table was read */
    public record Row(String copy, Treatment treatment, Range waterActivity, Range acidity, Verdict verdict, String source) { }

    /** Ends may belong to it or not. */
    public record Range(Ratio from, boolean fromIn, Ratio to, boolean toIn) {
        boolean holds(Ratio value) {
            int low = value.compareTo(from);
            int high = value.compareTo(to);
            return (low > 0 || low == 0 && fromIn) && (high < 0 || high == 0 && toIn);
        }
    }

    public AcidityTable {
        rows = List.copyOf(rows);
    }

    /** @param ph measured. @param waterActivity measured, 0 to 1 */
    public Verdict of(Treatment treatment, Ratio ph, Ratio waterActivity) {
        Set<String> copies = new TreeSet<>();
        Set<String> out = new TreeSet<>();
        for (Row row : rows) {
            copies.add(row.copy());
            if (row.treatment() == treatment && row.verdict() == Verdict.NOT_CONTROLLED
                    && row.waterActivity().holds(waterActivity) && row.acidity().holds(ph)) {
                out.add(row.copy());
            }
        }
        return !copies.isEmpty() && out.equals(copies) ? Verdict.NOT_CONTROLLED : Verdict.ASSESS;
    }
}
