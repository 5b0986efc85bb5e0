package croftboard.ledger;

import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/**
 * One kind of entry as columns: the same in the tables of the store and in the exported files.
 *
 * @param <E> the kind
 */
public final class Form<E extends Entry> {
    private final String table;
    private final Class<E> kind;
    private final Maker<E> maker;
    private final List<Column<E>> columns = new ArrayList<>();
    private List<String> names = List.of();

    /** Makes an entry from its day, its stamp and the cells of its columns. */
    interface Maker<E extends Entry> {
        E make(Stamp stamp, java.time.LocalDate date, Cells cells);
    }

    /**
     * @param number holds a whole number, or nothing
     * @param text the value; empty text: nothing
     */
    public record Column<E>(String name, boolean number, Function<E, String> text) { }

    Form(String table, Class<E> kind, Maker<E> maker) {
        this.table = table;
        this.kind = kind;
        this.maker = maker;
    }

    private Form<E> column(String name, boolean number, Function<E, String> text) {
        columns.add(new Column<>(name, number, text));
        names = columns.stream().map(Column::name).toList();
        return this;
    }

    Form<E> text(String name, Function<E, String> text) {
        return column(name, false, text);
    }

    Form<E> maybe(String name, Function<E, Optional<?>> value) {
        return column(name, false, e -> value.apply(e).map(Object::toString).orElse(""));
    }

    Form<E> number(String name, ToLongFunction<E> value) {
        return column(name, true, e -> Long.toString(value.applyAsLong(e)));
    }

    Form<E> maybeNumber(String name, Function<E, Optional<Long>> value) {
        return column(name, true, e -> value.apply(e).map(Object::toString).orElse(""));
    }

    Form<E> maybeSmall(String name, Function<E, OptionalInt> value) {
        return column(name, true, e -> value.apply(e).isPresent() ? Integer.toString(value.apply(e).getAsInt()) : "");
    }

    /** In thousandths. */
    Form<E> quantity(String name, Function<E, Quantity> value) {
        return number(name, e -> value.apply(e).thousandths());
    }

    /** In thousandths. */
    Form<E> maybeQuantity(String name, Function<E, Optional<Quantity>> value) {
        return maybeNumber(name, e -> value.apply(e).map(Quantity::thousandths));
    }

    /** {@code 3} or {@code 3/4}. */
    static String ratio(Ratio ratio) {
        return ratio.toString();
    }

    public String table() {
        return table;
    }

    public Class<E> kind() {
        return kind;
    }

    public List<Column<E>> columns() {
        return columns;
    }

    public List<String> cells(Entry entry) {
        E mine = kind.cast(entry);
        return columns.stream().map(c -> c.text().apply(mine)).toList();
    }

    /** @throws Cells.Wrong when a cell is not what its column holds */
    public E entry(Stamp stamp, java.time.LocalDate date, List<String> cells) {
        return maker.make(stamp, date, new Cells(names, cells));
    }
}
