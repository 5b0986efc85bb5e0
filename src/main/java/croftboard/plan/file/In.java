package croftboard.plan.file;

import com.fasterxml.jackson.databind.JsonNode;
import croftboard.measure.Ratio;
import java.math.BigInteger;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads one JSON object strictly: every key that is asked for must be there, and no other; every value of its own kind. */
final class In {
    private static final Pattern RATIO = Pattern.compile("-?\\d{1,4000}(/\\d{1,4000})?");
    private final JsonNode node;
    private final String path;
    private final Set<String> asked = new LinkedHashSet<>();

    private In(JsonNode node, String path) {
        this.node = node;
        this.path = path;
    }

    /** Turns an object into a record. */
    interface Form<T> {
        T read(In in) throws Unreadable;
    }

    static In of(JsonNode node, String path) throws Unreadable {
        if (!node.isObject()) {
            throw new Unreadable(path, "there is " + shown(node) + " where {...} belongs");
        }
        return new In(node, path);
    }

    <T> T whole(Form<T> form) throws Unreadable {
        T value = form.read(this);
        for (String key : names()) {
            if (!asked.contains(key)) {
                throw new Unreadable(path, "the key \"" + key + "\" is not known; known are "
                        + String.join(", ", asked));
            }
        }
        return value;
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private JsonNode at(String key) throws Unreadable {
        asked.add(key);
        JsonNode value = node.get(key);
        if (value == null) {
            throw new Unreadable(path, "the key \"" + key + "\" is missing; there are "
                    + (node.isEmpty() ? "none" : String.join(", ", names())));
        }
        return value;
    }

    private Unreadable wrong(String key, String wanted) {
        return new Unreadable(path + "." + key, "there is " + shown(node.get(key)) + " where " + wanted + " belongs");
    }

    private static String shown(JsonNode value) {
        String text = value.toString();
        return text.length() <= 40 ? text : text.substring(0, 37) + "...";
    }

    String text(String key) throws Unreadable {
        if (!at(key).isTextual()) {
            throw wrong(key, "text in quotes");
        }
        return node.get(key).textValue();
    }

    Optional<String> maybeText(String key) throws Unreadable {
        return at(key).isNull() ? Optional.empty() : Optional.of(text(key));
    }

    long number(String key) throws Unreadable {
        JsonNode value = at(key);
        if (!value.isIntegralNumber() || !value.canConvertToLong()) {
            throw wrong(key, "a whole number");
        }
        return value.longValue();
    }

    Optional<Long> maybeNumber(String key) throws Unreadable {
        return at(key).isNull() ? Optional.empty() : Optional.of(number(key));
    }

    int small(String key) throws Unreadable {
        long value = number(key);
        if (value != (int) value) {
            throw wrong(key, "a whole number of ordinary size");
        }
        return (int) value;
    }

    boolean yes(String key) throws Unreadable {
        if (!at(key).isBoolean()) {
            throw wrong(key, "true or false");
        }
        return node.get(key).booleanValue();
    }

    Ratio ratio(String key) throws Unreadable {
        String text = text(key);
        if (!RATIO.matcher(text).matches()) {
            throw wrong(key, "a ratio such as \"7/4\"");
        }
        String[] parts = text.split("/");
        BigInteger den = parts.length == 1 ? BigInteger.ONE : new BigInteger(parts[1]);
        Ratio ratio = den.signum() == 0 ? Ratio.ZERO : new Ratio(new BigInteger(parts[0]), den);
        if (!ratio.toString().equals(text)) {
            throw wrong(key, "a ratio in lowest terms such as \"7/4\"");
        }
        return ratio;
    }

    LocalDate date(String key) throws Unreadable {
        return date(text(key), path + "." + key);
    }

    Optional<LocalDate> maybeDate(String key) throws Unreadable {
        return at(key).isNull() ? Optional.empty() : Optional.of(date(key));
    }

    private static LocalDate date(String text, String path) throws Unreadable {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new Unreadable(path, "there is \"" + text + "\" where a date such as 2027-08-19 belongs");
        }
    }

    Optional<LocalDateTime> maybeMoment(String key) throws Unreadable {
        return maybeText(key).isEmpty() ? Optional.empty() : Optional.of(moment(key));
    }

    LocalDateTime moment(String key) throws Unreadable {
        String text = text(key);
        try {
            LocalDateTime moment = LocalDateTime.parse(text);
            if (moment.toString().equals(text)) {
                return moment;
            }
        } catch (DateTimeException e) {
            // said below, as for a form that is not ours
        }
        throw wrong(key, "a date and time such as 2027-08-17T17:00");
    }

    <E extends Enum<E>> E name(String key, Class<E> type) throws Unreadable {
        String text = text(key);
        for (E value : type.getEnumConstants()) {
            if (Out.nameOf(value).equals(text)) {
                return value;
            }
        }
        throw wrong(key, "one of " + Arrays.stream(type.getEnumConstants()).map(Out::nameOf)
                .collect(Collectors.joining(", ")));
    }

    <T> T object(String key, Form<T> form) throws Unreadable {
        return of(at(key), path + "." + key).whole(form);
    }

    <T> List<T> rows(String key, Form<T> form) throws Unreadable {
        List<T> rows = new ArrayList<>();
        for (JsonNode row : list(key)) {
            rows.add(of(row, path + "." + key + "[" + rows.size() + "]").whole(form));
        }
        return List.copyOf(rows);
    }

    List<String> words(String key) throws Unreadable {
        List<String> words = new ArrayList<>();
        for (JsonNode row : list(key)) {
            if (!row.isTextual()) {
                throw new Unreadable(path + "." + key + "[" + words.size() + "]", "there is " + shown(row)
                        + " where text in quotes belongs");
            }
            words.add(row.textValue());
        }
        return List.copyOf(words);
    }

    List<LocalDate> dates(String key) throws Unreadable {
        List<LocalDate> dates = new ArrayList<>();
        for (JsonNode row : list(key)) {
            String place = path + "." + key + "[" + dates.size() + "]";
            if (!row.isTextual()) {
                throw new Unreadable(place, "there is " + shown(row) + " where a date such as 2027-08-19 belongs");
            }
            dates.add(date(row.textValue(), place));
        }
        return List.copyOf(dates);
    }

    private JsonNode list(String key) throws Unreadable {
        if (!at(key).isArray()) {
            throw wrong(key, "a list [...]");
        }
        return node.get(key);
    }

    /** One value of an object whose keys are data. */
    interface Value<T> {
        T read(String key) throws Unreadable;
    }

    /** Every key of this object with its value. */
    <T> SortedMap<String, T> all(Value<T> value) throws Unreadable {
        SortedMap<String, T> map = new TreeMap<>();
        for (String key : names()) {
            map.put(key, value.read(key));
        }
        return map;
    }

    /** An object of texts whose keys are data. */
    SortedMap<String, String> texts(String key) throws Unreadable {
        return object(key, in -> in.all(in::text));
    }
}
