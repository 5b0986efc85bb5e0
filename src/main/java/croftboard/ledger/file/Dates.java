package croftboard.ledger.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The dates of one column, all of one style. Where month and day could be either, all of the column together decide; when they
 * do not, the month comes first, and that is said.
 */
final class Dates {
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})(?:[T ](\\d{1,2})(?::.*)?)?");
    private static final Pattern COMPACT = Pattern.compile("(20\\d{2})(\\d{2})(\\d{2})");
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})([/.-])(\\d{1,2})\\2(\\d{4}|\\d{2})(?: +(\\d{1,2})(?::\\d\\d)*(?: *([AaPp])[Mm])?)?");
    private static final Pattern NAMED = Pattern.compile("(?:([A-Za-z]{3})[a-z]* +(\\d{1,2})|(\\d{1,2})[ -]+([A-Za-z]{3})[a-z]*),?[ -]+(\\d{4}|\\d{2})");
    private static final List<String> MONTHS = List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private final boolean dayFirst;
    private final List<String> guesses = new ArrayList<>();

    private enum Style { ISO, NUMBERS, NAMED, NONE }

    /** @throws Table.Bad when two cells are of styles that contradict each other */
    Dates(List<Table.Row> rows, int column) throws Table.Bad {
        Table.Row[] first = new Table.Row[Style.values().length];
        Table.Row dayOver12 = null;
        Table.Row monthOver12 = null;
        boolean dots = false;
        for (Table.Row row : rows) {
            String cell = row.cells().get(column);
            Style style = style(cell);
            if (first[style.ordinal()] == null) {
                first[style.ordinal()] = row;
            }
            Matcher m = NUMBERS.matcher(cell);
            if (style == Style.NUMBERS && m.matches()) {
                dots |= m.group(2).equals(".");
                dayOver12 = dayOver12 == null && Integer.parseInt(m.group(1)) > 12 ? row : dayOver12;
                monthOver12 = monthOver12 == null && Integer.parseInt(m.group(3)) > 12 ? row : monthOver12;
            }
        }
        oneStyle(first, column);
        if (dayOver12 != null && monthOver12 != null) {
            throw new Table.Bad("dates of two styles: '" + dayOver12.cells().get(column) + "' on line " + dayOver12.line() + ", '"
                    + monthOver12.cells().get(column) + "' on line " + monthOver12.line() + " -> write every date as 2027-08-16");
        }
        dayFirst = dayOver12 != null || monthOver12 == null && dots;
        Table.Row numbers = first[Style.NUMBERS.ordinal()];
        if (numbers != null) {
            String how = numbers.cells().get(column);
            guesses.add("Dates such as " + how + " are read as " + (dayFirst ? "day, month, year" : "month, day, year") + ": "
                    + date(how).map(LocalDate::toString).orElse("?") + (dayOver12 == null && monthOver12 == null ? " (a guess)." : "."));
        }
    }

    private static void oneStyle(Table.Row[] first, int column) throws Table.Bad {
        Table.Row seen = null;
        for (Style style : List.of(Style.ISO, Style.NUMBERS, Style.NAMED)) {
            Table.Row row = first[style.ordinal()];
            if (row != null && seen != null) {
                throw new Table.Bad("dates of two styles: '" + seen.cells().get(column) + "' on line " + seen.line() + ", '"
                        + row.cells().get(column) + "' on line " + row.line() + " -> write every date as 2027-08-16");
            }
            seen = row == null ? seen : row;
        }
    }

    List<String> guesses() {
        return guesses;
    }

    private static Style style(String cell) {
        return ISO.matcher(cell).matches() || COMPACT.matcher(cell).matches() ? Style.ISO : NUMBERS.matcher(cell).matches()
                ? Style.NUMBERS : NAMED.matcher(cell).matches() ? Style.NAMED : Style.NONE;
    }

    Optional<LocalDate> date(String cell) {
        Matcher iso = ISO.matcher(cell);
        Matcher compact = COMPACT.matcher(cell);
        Matcher numbers = NUMBERS.matcher(cell);
        Matcher named = NAMED.matcher(cell);
        if (iso.matches()) {
            return made(iso.group(1), iso.group(2), iso.group(3));
        }
        if (compact.matches()) {
            return made(compact.group(1), compact.group(2), compact.group(3));
        }
        if (numbers.matches()) {
            return made(numbers.group(4), numbers.group(dayFirst ? 3 : 1), numbers.group(dayFirst ? 1 : 3));
        }
        if (named.matches()) {
            String month = named.group(1) == null ? named.group(4) : named.group(1);
            int number = 1 + MONTHS.indexOf(month.toLowerCase(Locale.ROOT));
            return made(named.group(5), Integer.toString(number), named.group(1) == null ? named.group(3) : named.group(2));
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> made(String year, String month, String day) {
        try {
            int y = Integer.parseInt(year);
            LocalDate date = LocalDate.of(y < 100 ? 2000 + y : y, Integer.parseInt(month), Integer.parseInt(day));
            return date.getYear() < 2000 || date.getYear() > 2199 ? Optional.empty() : Optional.of(date);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The hour of a cell that holds a time, alone or behind a date: {@code 13}, {@code 13:40}, {@code 1 pm}. */
    static OptionalInt hour(String cell) {
        Matcher m = Pattern.compile("(?:.*[T ])?(\\d{1,2})(?::\\d\\d){0,2}(?:\\.\\d+)? *(?:([AaPp])\\.?[Mm]\\.?)?").matcher(cell);
        if (!m.matches()) {
            return OptionalInt.empty();
        }
        int hour = Integer.parseInt(m.group(1));
        if (m.group(2) != null) {
            hour = hour % 12 + (m.group(2).equalsIgnoreCase("p") ? 12 : 0);
        }
        return hour < 24 ? OptionalInt.of(hour) : OptionalInt.empty();
    }
}
