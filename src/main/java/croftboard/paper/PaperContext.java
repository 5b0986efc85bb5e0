package croftboard.paper;

import croftboard.book.Book;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What sheets are made from.
 *
 * @param version of the plan
 * @param posted people work from this version
 * @param printed local time of the kitchen; the only thing that comes from a clock, and only a page's foot shows it
 * @param notSent orders whose cut-off is past and that were not sent: nothing comes of them
 * @param doubtful orders that may come otherwise than planned: nobody recorded that they were sent, or they were changed since
 */
public record PaperContext(Book book, WeekPlan plan, int version, boolean posted, LocalDateTime printed, Filters filters,
        Set<OrderKey> notSent, Doubtful doubtful) {

    public PaperContext {
        notSent = Set.copyOf(notSent);
    }

    /** Without doubts. */
    public PaperContext(Book book, WeekPlan plan, int version, boolean posted, LocalDateTime printed, Filters filters,
            Set<OrderKey> notSent) {
        this(book, plan, version, posted, printed, filters, notSent, Doubtful.NONE);
    }

    /** @param notRecorded past the cut-off, and of the whole week nothing is recorded. @param changed since they were sent */
    public record Doubtful(Set<OrderKey> notRecorded, Set<OrderKey> changed) {
        public static final Doubtful NONE = new Doubtful(Set.of(), Set.of());

        public Doubtful {
            notRecorded = Set.copyOf(notRecorded);
            changed = Set.copyOf(changed);
        }
    }

    /** @param day only this day's sheets. @param vendor only this vendor's */
    public record Filters(Optional<LocalDate> day, Optional<String> vendor) {
        public static final Filters NONE = new Filters(Optional.empty(), Optional.empty());

        public boolean wants(LocalDate date) {
            return day.isEmpty() || day.get().equals(date);
        }

        public boolean wantsVendor(String id) {
            return vendor.isEmpty() || vendor.get().equals(id);
        }
    }

    public Called called() {
        return new Called(book);
    }

    /** {@code 2027-W33@2}. */
    public String planName() {
        return plan.week() + "@" + version;
    }

    /** The orders that bring what these uses take: every order of the flow's delivery that holds the item. */
    public Set<OrderKey> behind(Predicate<WeekPlan.Flow> uses) {
        Set<OrderKey> keys = new TreeSet<>();
        plan.flows().stream().filter(uses).filter(f -> f.delivery().isPresent()).forEach(f -> plan.orders().stream()
                .filter(o -> o.delivery().equals(f.delivery().get()))
                .filter(o -> o.lines().stream().anyMatch(l -> l.item().equals(f.item())))
                .forEach(o -> keys.add(OrderKey.of(o))));
        return keys;
    }
}
