package croftboard.ledger.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Which column of a table holds what.
 *
 * @param by index of the column, by what it holds
 * @param chosen name of the column, by what it holds, to be remembered
 * @param guesses sentences on what was guessed
 */
public record Columns(Map<String, Integer> by, Map<String, String> chosen, List<String> guesses) {
    /**
     * What a column may hold.
     *
     * @param name the word for it
     * @param needed a file without it cannot be read
     * @param called names by which such a column is known, in lower case; the first ones win
     */
    public record Field(String name, boolean needed, List<String> called) {
        static Field needed(String name, String... called) {
            return new Field(name, true, List.of(called));
        }

        static Field maybe(String name, String... called) {
            return new Field(name, false, List.of(called));
        }
    }

    public sealed interface Answer {
        record Found(Columns columns) implements Answer { }

        /** @param why all that is wrong, a sentence each */
        record Unclear(List<String> why) implements Answer { }
    }

    /**
     * @param told what the caller says, by field: it must be there
     * @param remembered from an earlier file: what is not there any more is looked for anew
     */
    public static Answer find(List<String> header, List<Field> fields, Map<String, String> told, Map<String, String> remembered) {
        Map<String, Integer> by = new LinkedHashMap<>();
        Map<String, String> chosen = new LinkedHashMap<>();
        List<String> guesses = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (Field field : fields) {
            Optional<Integer> at = field(header, field, told, remembered, by, guesses, wrong);
            at.ifPresent(i -> {
                by.put(field.name(), i);
                chosen.put(field.name(), header.get(i));
            });
        }
        told.keySet().stream().filter(t -> fields.stream().noneMatch(f -> f.name().equals(t))).forEach(t -> wrong.add(
                "there is nothing called '" + t + "' in such a file -> " + String.join(", ", fields.stream().map(Field::name).toList())));
        return wrong.isEmpty() ? new Answer.Found(new Columns(by, chosen, guesses)) : new Answer.Unclear(wrong);
    }

    private static Optional<Integer> field(List<String> header, Field field, Map<String, String> told, Map<String, String> remembered,
            Map<String, Integer> taken, List<String> guesses, List<String> wrong) {
        if (told.containsKey(field.name())) {
            Optional<Integer> at = named(header, told.get(field.name()));
            if (at.isEmpty()) {
                wrong.add("no column '" + told.get(field.name()) + "' -> one of " + String.join(", ", header));
            }
            return at;
        }
        Optional<Integer> kept = Optional.ofNullable(remembered.get(field.name())).flatMap(c -> named(header, c));
        if (kept.isPresent()) {
            return kept;
        }
        for (String name : field.called()) {
            Optional<Integer> at = named(header, name).filter(i -> !taken.containsValue(i));
            if (at.isPresent()) {
                if (!header.get(at.get()).equalsIgnoreCase(field.name())) {
                    guesses.add("Column '" + header.get(at.get()) + "' is read as " + field.name() + ".");
                }
                return at;
            }
        }
        if (field.needed()) {
            wrong.add("no column for " + field.name() + " -> say which: --column " + field.name() + "=NAME, one of "
                    + String.join(", ", header));
        }
        return Optional.empty();
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}#%]+", " ").strip();
    }

    private static Optional<Integer> named(List<String> header, String name) {
        for (int i = 0; i < header.size(); i++) {
            if (plain(header.get(i)).equals(plain(name)) && !plain(name).isEmpty()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    boolean has(String field) {
        return by.containsKey(field);
    }

    /** The cell of a row; empty text when there is no such column. */
    String cell(Table.Row row, String field) {
        Integer at = by.get(field);
        return at == null ? "" : row.cells().get(at);
    }

    /** Indexes of those of the fields that are there. */
    List<Integer> at(String... fields) {
        List<Integer> all = new ArrayList<>();
        for (String field : fields) {
            if (by.containsKey(field)) {
                all.add(by.get(field));
            }
        }
        return all;
    }
}
