package croftboard.plan;

import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * One week's plan as pure data: names by id, dates as dates, money in cents, masses in milligrams as purchased.
 * It holds no clock figure, so that the same inputs give the same plan, byte for byte.
 *
 * @param fingerprint of the book it was made from
 * @param menu one row a slot, in the order of days and lines; events last
 * @param missing what cannot be had or done: a must is broken, the plan is not complete and cannot be posted
 * @param swaps by dish: ingredients replaced by their declared substitute
 */
public record WeekPlan(IsoWeek week, String fingerprint, Inputs inputs, List<Served> menu, List<Batch> batches,
        List<Order> orders, List<Need> needs, List<Flow> flows, List<Surplus> surplus, Account account,
        List<Promise> promises, Share share, Proof proof, List<Missing> missing,
        SortedMap<String, SortedMap<String, String>> swaps) {

    /** Format of the plan file; a newer one is refused, an older one is read. */
    public static final int FORMAT = 2;

    /**
     * What the plan was made with, enough to make it again.
     *
     * @param tries menus looked at in each search run; 0: limited by the clock
     * @param kept dish by slot id
     * @param from the plan it started from
     * @param gone the last cut-off that was past: deliveries with it or an earlier one could not be ordered; empty: none
     * @param revision empty: planned anew
     */
    public record Inputs(long seed, long tries, int rounds, long nodes, SortedMap<String, String> kept,
            Optional<String> from, Optional<LocalDateTime> gone, Optional<Revision> revision) {
        public Inputs(long seed, long tries, int rounds, long nodes, SortedMap<String, String> kept,
                Optional<String> from, Optional<LocalDateTime> gone) {
            this(seed, tries, rounds, nodes, kept, from, gone, Optional.empty());
        }
    }

    /**
     * A plan that people worked from, changed under way.
     *
     * @param of the version that was changed
     * @param now in the kitchen's zone: what was past then stayed
     * @param changes every fact that differs from what the first version was made with, one sentence each
     * @param fewer by slot id: the share of the portions that a plan made anew would make, where fewer are made
     * @param accepted dishes whose statement a substitute changes, which the manager has accepted
     */
    public record Revision(int of, LocalDateTime now, List<String> changes, SortedMap<String, Ratio> fewer,
            List<String> accepted) {
        public Revision(int of, LocalDateTime now, List<String> changes) {
            this(of, now, changes, new java.util.TreeMap<>(), List.of());
        }
    }

    /**
     * A slot and what stands there.
     *
     * @param recipe empty: nothing
     * @param sales expected, cents
     * @param marks letters of the coverage promises the dish counts for
     */
    public record Served(String slot, String line, List<LocalDate> days, Optional<String> recipe, int portions,
            long sales, long left, long staples, List<Production> productions, String marks, boolean kept) { }

    /** A batch of the dish itself. @param useBy last day it may be served, parts included */
    public record Production(LocalDate made, LocalDate lastServed, LocalDate useBy, Ratio batches, int portions) { }

    /** A batch of a component. @param mg what it yields */
    public record Batch(String recipe, LocalDate made, LocalDate lastServed, LocalDate useBy, Ratio batches, long mg,
            long staples) { }

    /** @param minimum of the vendor, cents. @param toMinimum what is missing to it after other plans' orders */
    public record Order(String vendor, LocalDate delivery, LocalDateTime cutOff, List<OrderLine> lines, long total,
            long minimum, long toMinimum, long fee) { }

    /** @param onList true: rests on this week's list; false: on the calendar */
    public record OrderLine(String item, String pack, int packs, long packMg, long price, long cost,
            WeekProblem.Locality locality, String whyLocal, boolean onList, boolean promised) { }

    /** Needed as purchased on the day it is cut, thawed or cooked. */
    public record Need(String item, LocalDate day, long mg) { }

    /** @param delivery empty: from stock */
    public record Flow(String item, Optional<LocalDate> delivery, LocalDate day, long mg) { }

    public record Surplus(String item, long keptMg, long keptCents, long wastedMg, long wasteCents) { }

    /**
     * A promise kept or broken, in words.
     *
     * @param id of the promise, for example {@code coverage vegan-main}
     * @param day empty: of the whole week
     * @param kept true when it holds
     * @param amount how far it is missed
     * @param cents what that costs
     */
    public record Promise(String id, String say, Optional<LocalDate> day, boolean kept, long amount, long cents) { }

    /** Expected local share: money, cents. local + notLocal + unclassified = total. */
    public record Share(String definition, Ratio target, long local, long notLocal, long unclassified) {
        public long total() {
            return local + notLocal + unclassified;
        }

        /** The low end of the range: unknown never counts as local. */
        public Ratio low() {
            return total() == 0 ? Ratio.ZERO : Ratio.of(local, total());
        }

        public Ratio high() {
            return total() == 0 ? Ratio.ZERO : Ratio.of(local + unclassified, total());
        }
    }

    /**
     * What was proved, in cents of value; empty when nothing was.
     *
     * @param bestForMenu no order for this menu brings the plan above it
     * @param bestAtAll no menu at all brings a plan above it
     * @param how words on how the orders were found
     */
    public record Proof(Optional<Long> bestForMenu, Optional<Long> bestAtAll, String how) { }

    /** A must that is broken. @param mend what would mend it */
    public record Missing(String what, String mend) { }

    public boolean complete() {
        return missing.isEmpty();
    }

    /** The one number: cents. */
    public long value() {
        return account.value();
    }

    public Map<String, String> choices() {
        var all = new java.util.TreeMap<String, String>();
        menu.forEach(s -> s.recipe().ifPresent(r -> all.put(s.slot(), r)));
        return all;
    }
}
