package croftboard.book.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The fixed words of the book's format and what they stand for. */
final class Words {
    static final String NONE = "none";
    static final String UNKNOWN = "unknown";
    static final String ALL = "all";
    static final String HERE = "here";
    /** The words for allergens: nine groups, tree nuts, fish and crustaceans by kind. */
    static final Map<String, String> ALLERGENS =
            same("milk", "milk-goat", "milk-sheep", "egg", "egg-duck", "egg-quail", "wheat", "soy", "peanut", "sesame", "almond",
            "cashew", "hazelnut", "macadamia", "pecan", "pine-nut", "pistachio", "walnut", "black-walnut",
            "california-walnut", "heartnut", "brazil-nut",
            "fish-cod",
            "fish-tuna", "fish-salmon", "fish-trout", "fish-anchovy", "shellfish-shrimp", "shellfish-crab",
            "shellfish-lobster");
    static final Map<String, String> GLUTEN_GRAINS = same("wheat", "rye", "barley", "oats");
    /** Words that name a group; a book names the kind. */
    static final Map<String, String> GROUPS = Map.of("fish", "fish-", "shellfish", "shellfish-", "nuts",
            "tree-nut",
            "tree-nut", "tree-nut", "tree-nuts", "tree-nut", "crustacean", "shellfish-", "crustaceans",
            "shellfish-");

    private Words() { }

    /** Words that stand for themselves, in that order. */
    static Map<String, String> same(String... words) {
        Map<String, String> out = new LinkedHashMap<>();
        for (String word : words) {
            out.put(word, word);
        }
        return Collections.unmodifiableMap(out);
    }

    /** {@code walk-in} for WALK_IN, and so on, in the order of the enum. */
    static <E extends Enum<E>> Map<String, E> of(E[] values) {
        Map<String, E> out = new LinkedHashMap<>();
        for (E value : List.of(values)) {
            out.put(value.name().toLowerCase(Locale.ROOT).replace('_', '-'), value);
        }
        return Collections.unmodifiableMap(out);
    }
}
