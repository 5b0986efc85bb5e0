package croftboard.ledger.file;

import croftboard.ledger.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** The numbers of one file: whether a comma or a dot parts the cents is decided by all of them together. */
final class Figures {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}(?:[,.' ]?\\d{3}){0,3}(?:[.,]\\d{1,9})?|\\d{1,12}(?:[.,]\\d{1,9})?|[.,]\\d{1,9}");
    private static final Pattern COMMA_CENTS = Pattern.compile(".*\\d\\.\\d{3},\\d*|\\d*,(?:\\d{1,2}|\\d{4,})|\\d{4,},\\d+");
    private static final Pattern DOT_CENTS = Pattern.compile(".*\\d,\\d{3}\\.\\d*|\\d*\\.(?:\\d{1,2}|\\d{4,})|\\d{4,}\\.\\d+");
    private static final BigDecimal MOST = new BigDecimal("1000000000");
    private final boolean comma;

    /** @throws Table.Bad when some numbers have decimal commas, others decimal dots */
    Figures(List<Table.Row> rows, List<Integer> columns) throws Table.Bad {
        Table.Row commas = null;
        Table.Row dots = null;
        for (Table.Row row : rows) {
            for (int column : columns) {
                String plain = bare(row.cells().get(column)).replaceFirst("^-", "");
                commas = commas == null && COMMA_CENTS.matcher(plain).matches() ? row : commas;
                dots = dots == null && DOT_CENTS.matcher(plain).matches() ? row : dots;
            }
        }
        if (commas != null && dots != null) {
            throw new Table.Bad("numbers with decimal commas (line " + commas.line() + ") and with decimal dots (line " + dots.line()
                    + ") -> write all of them alike");
        }
        comma = commas != null;
    }

    boolean comma() {
        return comma;
    }

    /** Without currency sign; a minus in front whatever way it was written. */
    private static String bare(String cell) {
        String plain = cell.replaceFirst("(?i)^(-?) *(?:US)?[$] *", "$1").replaceFirst("(?i)^USD *| *(?:USD|[$])$", "").strip();
        if (plain.startsWith("(") && plain.endsWith(")")) {
            return "-" + plain.substring(1, plain.length() - 1).replace("$", "").strip();
        }
        return plain.endsWith("-") ? "-" + plain.substring(0, plain.length() - 1).strip() : plain;
    }

    /** A number of dollars or of things; empty when the cell is none, or beyond a thousand million. */
    Optional<BigDecimal> number(String cell) {
        String plain = bare(cell);
        boolean minus = plain.startsWith("-");
        String digits = minus ? plain.substring(1) : plain;
        if (!NUMBER.matcher(digits).matches()) {
            return Optional.empty();
        }
        String ungrouped = digits.replaceAll(comma ? "[.' ]" : "[,' ]", "").replace(',', '.');
        try {
            BigDecimal value = new BigDecimal(ungrouped.startsWith(".") ? "0" + ungrouped : ungrouped);
            return value.compareTo(MOST) > 0 ? Optional.empty() : Optional.of(minus ? value.negate() : value);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** Whole cents, halves away from zero. */
    OptionalLong cents(String cell) {
        return number(cell).map(n -> OptionalLong.of(n.movePointRight(2).setScale(0, RoundingMode.HALF_UP).longValueExact()))
                .orElse(OptionalLong.empty());
    }

    Optional<Quantity> quantity(String cell) {
        return number(cell).map(n -> new Quantity(n.movePointRight(3).setScale(0, RoundingMode.HALF_UP).longValueExact()));
    }
}
