package croftboard.plan.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What one more of each scarce thing would be worth.
 *
 * @param value of the plan, cents
 * @param betterAnyway what the same searches gained without any more of anything: the plan is not the best there is
 * @param things worth most first
 * @param looked how many scarce things there are
 * @param exact the week is so small that every menu was tried
 */
public record Worth(long value, long betterAnyway, List<Thing> things, int looked, boolean exact) {

    /** Something scarce. */
    public sealed interface Scarce { }

    /** @param limit packs offered, all of them ordered */
    public record Pack(String vendor, LocalDate delivery, String item, String pack, int limit) implements Scarce { }

    /** An hour at a station. */
    public record Hour(String station, LocalDate day) implements Scarce { }

    /** One unit of equipment: an oven shelf, a litre of kettle. @param day empty: in the week */
    public record Unit(String equipment, Optional<LocalDate> day) implements Scarce { }

    /** A recipe that might stand on one more line. */
    public record Line(String recipe, String line) implements Scarce { }

    /**
     * @param cents for one more
     * @param upTo for so many each is worth at least nine tenths of it; 1 where only one more can be asked for
     * @param minutes of an hour that bring all of it, or nearly; 60 where it is not asked by the hour
     * @param otherMenu other dishes make it worth that much; else the menu stays and only orders and overtime change
     */
    public record Thing(Scarce what, long cents, int upTo, int minutes, boolean otherMenu) { }
}
