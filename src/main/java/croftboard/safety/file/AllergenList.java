package croftboard.safety.file;

import java.util.List;
import java.util.Map;

/**
 * The nine major allergens and the tree nuts among them, by the edition of the guidance in force.
 *
 * @param edition {@code guidance-5-2025}: FDA, 6 January 2025
 * @param word the book's
 * @param group one of the nine
 * @param spoken as a Contains line says it
 */
public record AllergenList(String edition, String word, String group, String spoken, String source) {

    public static List<AllergenList> all() {
        return Rows.of("allergens").stream().map(r -> new AllergenList(r.get("edition"), r.get("word"), r.get("group"),
                r.get("spoken"), r.get("source"))).toList();
    }

    /** Nuts that the edition dropped: they stand in the ingredients, never in a Contains line. */
    public static List<String> droppedNuts() {
        return Rows.of("nuts-dropped").stream().map(r -> r.get("nut")).toList();
    }

    /** Address of every source key. */
    public static Map<String, String> sources() {
        return Rows.of("sources").stream().collect(java.util.stream.Collectors.toMap(r -> r.get("key"), r -> r.get("where")));
    }
}
