package croftboard.cli;

import java.time.LocalDate;
import picocli.CommandLine.Option;

/** Days from the one to the other, both included. */
final class Span {
    @Option(names = "--from", paramLabel = "DATE", converter = Typed.Date.class,
            description = "first day, such as 2027-07-01 (default: 1 January of the last day's year)")
    private LocalDate from;

    @Option(names = "--to", paramLabel = "DATE", converter = Typed.Date.class, description = "last day (default: today)")
    private LocalDate to;

    LocalDate to(LocalDate today) {
        return to == null ? today : to;
    }

    /** @throws WrongUse when the first day is behind the last */
    LocalDate from(LocalDate today) {
        LocalDate first = from == null ? to(today).withDayOfYear(1) : from;
        if (first.isAfter(to(today))) {
            throw new WrongUse("--from " + first + " is after --to " + to(today) + " -> the first day, then the last one");
        }
        return first;
    }
}
