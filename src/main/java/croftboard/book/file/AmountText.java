package croftboard.book.file;

import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * {@code NUMBER UNIT} to an amount, with the fault that helps: no unit, no space, unknown unit, the
 * wrong kind of unit.
 */
final class AmountText {
    static final Amount PLACEHOLDER = new Amount(Ratio.ONE, Unit.POUND);
    private static final int LONGEST = 40;
    private final Notebook notebook;

    AmountText(Notebook notebook) {
        this.notebook = notebook;
    }

    /** An amount above zero of one of the kinds; a fault and {@link #PLACEHOLDER} otherwise. */
    Amount read(String text, Spot spot, String wanted, Unit.Kind... kinds) {
        return read(text, spot, wanted, false, kinds);
    }

    /** An amount of zero or more. */
    Amount readZero(String text, Spot spot, String wanted, Unit.Kind... kinds) {
        return read(text, spot, wanted, true, kinds);
    }

    private Amount read(String text, Spot spot, String wanted, boolean zeroToo, Unit.Kind... kinds) {
        String[] parts = text.length() > LONGEST ? new String[0] : text.strip().split(" +", 3);
        if (parts.length == 2) {
            return both(parts[0], parts[1], spot, spot, wanted, zeroToo, kinds).orElse(PLACEHOLDER);
        }
        notebook.fault(spot, Notebook.show(text)
                + (parts.length == 1 ? alone(parts[0]) : " is not " + wanted),
                "write " + wanted);
        return PLACEHOLDER;
    }

    private static String alone(String text) {
        if (Amount.number(text).isPresent()) {
            return " has no unit";
        }
        int end = 0;
        while (end < text.length() && ("0123456789./-".indexOf(text.charAt(end)) >= 0)) {
            end++;
        }
        boolean glued = end > 0 && Unit.named(text.substring(end)).isPresent();
        return glued ? " needs a space between number and unit" : " is no amount";
    }

    /**
     * Number and unit from two words, each with its own spot; empty when either is wrong, with the
     * faults noted.
     */
    Optional<Amount> both(String number, String unit, Spot numberSpot, Spot unitSpot, String wanted,
            boolean zeroToo,
            Unit.Kind... kinds) {
        Optional<Ratio> value = number(number, numberSpot, zeroToo);
        Optional<Unit> found = unit(unit, unitSpot, wanted, List.of(kinds));
        return value.isPresent() && found.isPresent() ? Optional.of(new Amount(value.get(), found.get()))
                : Optional.empty();
    }

    private Optional<Ratio> number(String text, Spot spot, boolean zeroToo) {
        Optional<Ratio> value = Amount.number(text);
        if (value.isEmpty()) {
            notebook.fault(spot, Notebook.show(text) + numberFault(text),
                    "write it like 6, 2.5, 1/2 or 1-1/2");
            return value;
        }
        if (value.get().signum() == 0 && !zeroToo) {
            notebook.fault(spot, "an amount of zero",
                    "write an amount above zero, or leave the whole line out");
            return Optional.empty();
        }
        if (value.get().compareTo(Ratio.of(Quantities.MOST)) > 0) {
            notebook.fault(spot, Notebook.show(text) + " is more than a kitchen handles",
                    "check the number and its unit");
            return Optional.empty();
        }
        return value;
    }

    private static String numberFault(String text) {
        if (text.startsWith("-") || text.startsWith("\u2212")) {
            return " is negative";
        }
        if (text.matches("[0-9]{1,3}(,[0-9]{3}){1,5}")) {
            return " has a thousands separator";
        }
        return " is no number";
    }

    private Optional<Unit> unit(String text, Spot spot, String wanted, List<Unit.Kind> kinds) {
        Optional<Unit> unit = Unit.named(text);
        if (unit.isEmpty()) {
            Optional<String> meant = notebook.nearest().of(text, Unit.names());
            notebook.fault(spot, Notebook.show(text) + " is no unit",
                    meant.map(m -> "did you mean [" + m + "]?").orElse("units here: " + unitsOf(kinds)));
            return unit;
        }
        if (!kinds.contains(unit.get().kind())) {
            notebook.fault(spot, "[" + text + "] is " + kindOf(unit.get()) + ", not " + wanted,
                    "units here: " + unitsOf(kinds));
            return Optional.empty();
        }
        return unit;
    }

    static String kindOf(Unit unit) {
        return switch (unit.kind()) {
            case MASS -> "a weight";
            case VOLUME -> "a volume";
            case COUNT -> "a count";
            case TIME -> "a time";
        };
    }

    private static String unitsOf(List<Unit.Kind> kinds) {
        return Unit.names().stream().filter(n -> kinds.contains(Unit.named(n).orElseThrow().kind()))
                .collect(Collectors.joining(" "));
    }

    static Unit.Kind[] food() {
        return Arrays.copyOf(new Unit.Kind[] {Unit.Kind.MASS, Unit.Kind.VOLUME, Unit.Kind.COUNT}, 3);
    }
}
