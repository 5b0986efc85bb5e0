package croftboard.book.file;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Texts, ids, words, lists, dates: reads a node as what the book asks for, or notes a fault and
 * gives a placeholder.
 */
final class Values {
    static final int LONGEST_ID = 60;
    /** Placeholder for a name that could not be read. */
    static final String NOTHING = "";
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]*");
    private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
    private static final Pattern CLOCK = Pattern.compile("(\\d{2}):(\\d{2})");
    static final Map<String, DayOfWeek> DAYS = days();
    private static final Map<String, Boolean> YES_NO = Map.of("yes", true, "no", false);
    private final Notebook notebook;

    Values(Notebook notebook) {
        this.notebook = notebook;
    }

    Notebook notebook() {
        return notebook;
    }

    private static Map<String, DayOfWeek> days() {
        Map<String, DayOfWeek> days = new LinkedHashMap<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            days.put(day.name().substring(0, 3).toLowerCase(Locale.ROOT), day);
        }
        return Collections.unmodifiableMap(days);
    }

    /** The scalar text of a node; empty when it is none (a fault) or gone (reported before). */
    java.util.Optional<Node.Scalar> scalar(Node node, String wanted) {
        if (node instanceof Node.Gone) {
            return java.util.Optional.empty();
        }
        if (!(node instanceof Node.Scalar scalar)) {
            notebook.fault(node.spot(), "a list or a group of keys where " + wanted + " belongs", "write "
                    + wanted);
            return java.util.Optional.empty();
        }
        if (scalar.isEmpty() || scalar.text().isBlank()) {
            notebook.fault(node.spot(), "nothing is written here", "write " + wanted);
            return java.util.Optional.empty();
        }
        return java.util.Optional.of(scalar);
    }

    /** Reads a scalar by {@code read}, which notes its own faults and may give null for the placeholder. */
    <T> T value(Node node, String wanted, T placeholder, Function<Node.Scalar, T> read) {
        return scalar(node, wanted).map(read).orElse(placeholder);
    }

    /** Any text. */
    String text(Node node) {
        return value(node, "a text", "", s -> s.text().strip());
    }

    /** {@code lower-case-with-hyphens}. */
    String id(Node node) {
        return value(node, "a name like lower-case-with-hyphens", NOTHING, s ->
                checkedId(s.text(), s.spot()));
    }

    /** Whether the text is {@code lower-case-with-hyphens}. */
    static boolean isId(String text) {
        return text.length() <= LONGEST_ID && ID.matcher(text).matches();
    }

    /**
     * Notes a fault when the text is no id; gives it back as it is, so that what uses it is still
     * understood.
     */
    String checkedId(String text, Spot spot) {
        if (text.length() > LONGEST_ID) {
            notebook.fault(spot, "the name " + Notebook.show(text) + " is longer than 60 characters",
                    "shorten it");
        } else if (!ID.matcher(text).matches()) {
            notebook.fault(spot, "the name " + Notebook.show(text) + " is not lower-case-with-hyphens",
                    idLike(text));
        }
        return text;
    }

    private static String idLike(String text) {
        String tame = text.toLowerCase(Locale.ROOT).strip().replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^[-0-9]+|-+$", "");
        return tame.isEmpty() ? "start with a letter; use letters, digits and hyphens" : "write " + tame;
    }

    /** One of the words of {@code known}. */
    <T> T word(Node node, Map<String, T> known, T placeholder) {
        String wanted = "one of " + String.join(", ", known.keySet());
        return value(node, wanted, placeholder, s -> {
            T found = known.get(s.text());
            if (found == null) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is not " + wanted,
                        meant(s.text(), known, wanted));
            }
            return found;
        });
    }

    private String meant(String text, Map<String, ?> known, String wanted) {
        return notebook.meant(text, known.keySet(), "write " + wanted);
    }

    boolean yesNo(Node node) {
        return value(node, "yes or no", false, s -> {
            Boolean found = YES_NO.get(s.text());
            if (found == null) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is neither yes nor no",
                        "write yes or no");
            }
            return found;
        });
    }

    List<Node> list(Node node) {
        if (node instanceof Node.Sequence sequence) {
            return sequence.items();
        }
        if (!(node instanceof Node.Gone)) {
            notebook.fault(node.spot(), "a list belongs here",
                    "write [one, two], or a line - ... for each");
        }
        return List.of();
    }

    /** A list of different words. */
    Set<String> ids(Node node) {
        Set<String> out = new java.util.LinkedHashSet<>();
        for (Node item : list(node)) {
            String id = id(item);
            if (!id.equals(NOTHING) && !out.add(id)) {
                notebook.fault(item.spot(), Notebook.show(id) + " stands twice in the list",
                        "keep one of them");
            }
        }
        return Collections.unmodifiableSet(out);
    }

    DayOfWeek day(Node node) {
        return word(node, DAYS, DayOfWeek.MONDAY);
    }

    /** A list of different weekdays, Monday first. */
    Set<DayOfWeek> days(Node node) {
        EnumSet<DayOfWeek> out = EnumSet.noneOf(DayOfWeek.class);
        for (Node item : list(node)) {
            int before = notebook.faultCount();
            DayOfWeek day = day(item);
            if (notebook.faultCount() == before && !(item instanceof Node.Gone) && !out.add(day)) {
                notebook.fault(item.spot(), "a day stands twice in the list", "keep one of them");
            }
        }
        return Collections.unmodifiableSet(out);
    }

    LocalDate date(Node node) {
        return value(node, "a date like 2027-08-19", LocalDate.EPOCH, s -> date(s.text(), s.spot()));
    }

    /** A date of the years 1900 to 2199; a placeholder and a fault for anything else. */
    LocalDate date(String text, Spot spot) {
        var m = DATE.matcher(text);
        if (m.matches()) {
            int year = Integer.parseInt(m.group(1));
            try {
                LocalDate date = LocalDate.of(year, Integer.parseInt(m.group(2)),
                        Integer.parseInt(m.group(3)));
                if (year >= 1901 && year <= 2198) {
                    return date;
                }
            } catch (DateTimeException e) {
                notebook.fault(spot, Notebook.show(text) + " is a day that no calendar has",
                        "write a date like 2027-08-19");
                return LocalDate.EPOCH;
            }
        }
        notebook.fault(spot, Notebook.show(text) + " is no date", "write a date like 2027-08-19");
        return LocalDate.EPOCH;
    }

    LocalTime clock(Node node) {
        return value(node, "a time like 18:00", LocalTime.NOON, s -> clock(s.text(), s.spot()));
    }

    LocalTime clock(String text, Spot spot) {
        var m = CLOCK.matcher(text);
        if (m.matches() && Integer.parseInt(m.group(1)) < 24 && Integer.parseInt(m.group(2)) < 60) {
            return LocalTime.of(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)));
        }
        notebook.fault(spot, Notebook.show(text) + " is no time of the day",
                "write a time like 09:30 or 18:00");
        return LocalTime.NOON;
    }

    /**
     * A mapping whose keys are names of the book's own; each is handed over once, a name given
     * twice is a fault.
     */
    void each(Node node, String what, java.util.function.BiConsumer<Node.Scalar, Node> take) {
        if (!(node instanceof Node.Mapping mapping)) {
            if (!(node instanceof Node.Gone)) {
                notebook.fault(node.spot(), what + " are not written as name: ... lines",
                        "write name: and what belongs to it");
            }
            return;
        }
        Set<String> seen = new HashSet<>();
        for (Node.Pair pair : mapping.pairs()) {
            if (!seen.add(pair.key().text())) {
                notebook.fault(pair.key().spot(), Notebook.show(pair.key().text())
                        + " stands twice in this file or group",
                        "keep one of them, or give the other a name of its own");
            } else {
                take.accept(pair.key(), pair.value());
            }
        }
    }

    static <T> Map<DayOfWeek, T> byDay() {
        return new EnumMap<>(DayOfWeek.class);
    }
}
