package croftboard.cli;

import croftboard.book.Book;
import croftboard.ledger.Ledger;
import croftboard.ledger.Sale;
import croftboard.measure.IsoWeek;
import croftboard.plan.file.PlanStore;
import croftboard.plan.look.SoldDays;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the ledger and the posted plans say of days that are over. */
final class Seen {
    /** Three years: what is older says little of next week. */
    private static final int WEEKS = 156;
    private static final LocalDate EVER = LocalDate.of(1900, 1, 1);

    private Seen() { }

    static SoldDays until(Ledger ledger, Book book, PlanStore plans, IsoWeek last) {
        return SoldDays.of(ledger, book, plans::posted, last.plusWeeks(-WEEKS).monday(), last.plusWeeks(1).monday().minusDays(1));
    }

    /** The last week of which a sale or a sheet is booked. */
    static Optional<IsoWeek> last(Ledger ledger) {
        LocalDate end = LocalDate.of(9999, 12, 31);
        List<LocalDate> dates = Stream.concat(ledger.entries(Sale.class, EVER, end).stream().map(Sale::date),
                ledger.entries(croftboard.ledger.Left.class, EVER, end).stream().map(croftboard.ledger.Left::date)).toList();
        return dates.stream().max(LocalDate::compareTo).map(IsoWeek::of);
    }

    static IsoWeek lastOrNone(Ledger ledger) {
        return last(ledger).orElseThrow(() -> new WrongUse("the ledger holds no sale and no production sheet yet -> croftboard sold FILE,"
                + " croftboard left FILE"));
    }
}
