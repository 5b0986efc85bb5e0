package croftboard.ledger;

import croftboard.measure.Ratio;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/** The cells of one row, read one after the other. */
public final class Cells {
    private final List<String> names;
    private final List<String> values;
    private int at;

    Cells(List<String> names, List<String> values) {
        this.names = names;
        this.values = values;
    }

    /** A cell that is not what its column holds. The message is for people. */
    public static final class Wrong extends RuntimeException {
        private static final long serialVersionUID = 1;

        Wrong(String message) {
            super(message);
        }
    }

    String text() {
        return values.get(at++);
    }

    Optional<String> maybe() {
        return Optional.of(text()).filter(t -> !t.isEmpty());
    }

    private <T> T read(String what, Function<String, Optional<T>> reader) {
        String text = text();
        return reader.apply(text).orElseThrow(() -> new Wrong(names.get(at - 1) + ": '" + text + "' is no " + what));
    }

    private <T> Optional<T> optional(String what, Function<String, Optional<T>> reader) {
        if (values.get(at).isEmpty()) {
            at++;
            return Optional.empty();
        }
        return Optional.of(read(what, reader));
    }

    private static Optional<Long> whole(String text) {
        return text.matches("-?\\d{1,18}") ? Optional.of(Long.valueOf(text)) : Optional.empty();
    }

    long number() {
        return read("whole number", Cells::whole);
    }

    Optional<Long> maybeNumber() {
        return optional("whole number", Cells::whole);
    }

    int small() {
        return read("whole number", t -> whole(t).filter(n -> Math.abs(n) < Integer.MAX_VALUE)).intValue();
    }

    OptionalInt maybeSmall() {
        Optional<Long> n = optional("whole number", t -> whole(t).filter(v -> Math.abs(v) < Integer.MAX_VALUE));
        return n.isPresent() ? OptionalInt.of(n.get().intValue()) : OptionalInt.empty();
    }

    Quantity quantity() {
        return new Quantity(number());
    }

    Optional<Quantity> maybeQuantity() {
        return maybeNumber().map(Quantity::new);
    }

    Ratio ratio() {
        return read("number", Cells::ratio);
    }

    Optional<Ratio> maybeRatio() {
        return optional("number", Cells::ratio);
    }

    private static Optional<Ratio> ratio(String text) {
        String[] parts = text.split("/", -1);
        boolean fits = parts.length <= 2 && Arrays.stream(parts).allMatch(p -> p.matches("-?\\d{1,18}"))
                && (parts.length == 1 || !parts[1].matches("-?0+"));
        return fits ? Optional.of(Ratio.of(Long.parseLong(parts[0]), parts.length == 1 ? 1 : Long.parseLong(parts[1])))
                : Optional.empty();
    }

    boolean yes() {
        return read("yes or no", t -> t.equals("yes") || t.equals("no") ? Optional.of(t.equals("yes")) : Optional.empty());
    }

    Optional<LocalTime> maybeTime() {
        return optional("time", t -> {
            try {
                return Optional.of(LocalTime.parse(t));
            } catch (DateTimeException e) {
                return Optional.empty();
            }
        });
    }

    <K extends Enum<K>> K oneOf(K[] all) {
        return read("word of " + Arrays.toString(all), t -> Arrays.stream(all).filter(k -> k.name().equals(t)).findFirst());
    }

    SortedSet<String> words() {
        String text = text();
        return text.isEmpty() ? new TreeSet<>() : new TreeSet<>(Arrays.asList(text.split("; ")));
    }

    Origin origin() {
        return new Origin(read("origin", Origin::parse), read("origin", Origin::parse), maybeRatio());
    }
}
