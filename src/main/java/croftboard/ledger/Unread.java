package croftboard.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What came instead of something else and whose label nobody has read yet: its allergens are unknown. */
public final class Unread {
    private Unread() { }

    /** Of the deliveries from {@code from} to {@code to}, both included. */
    public static List<Receipt> labels(Ledger ledger, LocalDate from, LocalDate to) {
        Set<Long> read = ledger.entries(LabelRead.class, from, LocalDate.of(9999, 12, 31)).stream().map(LabelRead::receipt)
                .collect(Collectors.toSet());
        return ledger.entries(Receipt.class, from, to).stream().filter(r -> r.insteadOf().isPresent() && r.came().signum() > 0)
                .filter(r -> ledger.history(r.stamp().id()).stream().noneMatch(e -> read.contains(e.stamp().id()))).toList();
    }
}
