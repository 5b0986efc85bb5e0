package croftboard.plan.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Facts of a week that cannot all hold.
 *
 * @param of the promise that cannot be kept beside them; empty: the week itself is impossible
 * @param facts each of them needed
 * @param proved that they clash whatever else is planned
 * @param mends each fact given up alone, cheapest first
 */
public record Clash(Optional<Told> of, List<Told> facts, boolean proved, List<Mend> mends) {

    /** A fact with its figures; ids as in the book. */
    public sealed interface Told { }

    /** @param standing the line always holds it, or an event's menu names it; else somebody has kept it there */
    public record Pinned(String slot, String dish, boolean standing) implements Told { }

    public record Comeback(int days) implements Told { }

    /** @param day empty: in the week. @param minutes else units. @param there overtime counted. @param needed by what has to stand */
    public record Hands(String name, Optional<LocalDate> day, boolean minutes, long there, long needed) implements Told { }

    /** @param needed milligrams as purchased that what has to stand takes, @param missing of it when all that is offered is bought */
    public record Supply(String item, long needed, long missing, List<Offered> offers) implements Told { }

    public record Offered(String vendor, LocalDate delivery, int packs, String pack) { }

    public record Minimum(String vendor, LocalDate delivery, long cents) implements Told { }

    public record Promised(String vendor, LocalDate delivery, String item, int packs) implements Told { }

    public record Life(String recipe, int days) implements Told { }

    public record Promise(String say, LocalDate day) implements Told { }

    /**
     * A fact given up.
     *
     * @param least by how much: minutes, units, milligrams; 0: wholly
     * @param worth the best week found then, cents; empty: none was found, the week clashes elsewhere too
     * @param price what it costs against the week in which none of the facts was asked for, as far as short searches find
     * @param exact the week is so small that every menu was tried
     */
    public record Mend(Told fact, long least, Optional<Long> worth, long price, boolean priced, boolean exact) { }
}
