package croftboard.ledger;

import java.time.LocalDate;

/** One thing that happened, kept for ever. */
public sealed interface Entry permits Receipt, Sale, Left, Waste, StockCount, BatchYield, Credit, Overriding, Transfer, LabelRead,
        Withdrawal {
    Stamp stamp();

    /** The day on which it happened (not the day of booking). */
    LocalDate date();

    /** The same entry with another stamp. */
    Entry stamped(Stamp stamp);
}
