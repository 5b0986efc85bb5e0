package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;

/** Which week is meant when none is named. */
final class Weeks {
    private static final int LOOKED_AT = 3;

    private Weeks() { }

    /**
     * The next week whose first cut-off is not past: no order for its own deliveries (Monday to Sunday) has been missed.
     *
     * @param now in the kitchen's zone
     */
    static IsoWeek next(Book book, LocalDateTime now) {
        IsoWeek week = IsoWeek.of(now.toLocalDate()).plusWeeks(1);
        for (int i = 0; i < LOOKED_AT && anyCutOffPast(book, week, now); i++) {
            week = week.plusWeeks(1);
        }
        return week;
    }

    private static boolean anyCutOffPast(Book book, IsoWeek week, LocalDateTime now) {
        for (Vendor vendor : book.vendors().values()) {
            for (Vendor.Delivery delivery : vendor.deliveries()) {
                LocalDate date = week.day(delivery.day());
                if (delivery.cutOffFor(date).isBefore(now)) {
                    return true;
                }
            }
        }
        return false;
    }
}
