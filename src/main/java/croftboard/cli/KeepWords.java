package croftboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a manager asks to keep: {@code mon/hot-main-1=lentil-shepherds-pie}. */
final class KeepWords {
    private KeepWords() { }

    /** Dish by slot. @throws WrongUse with every word that is none */
    static SortedMap<String, String> read(List<String> words) {
        SortedMap<String, String> kept = new TreeMap<>();
        List<String> faults = new ArrayList<>();
        for (String word : words) {
            String[] parts = word.split("=", -1);
            if (parts.length != 2 || parts[0].isBlank() || parts[1].isBlank()) {
                faults.add("--keep " + word + " -> DAY/LINE=DISH, such as mon/hot-main-1=lentil-shepherds-pie");
            } else if (kept.put(parts[0].trim(), parts[1].trim()) != null) {
                faults.add("--keep " + parts[0] + " is there twice -> one dish for one place");
            }
        }
        if (!faults.isEmpty()) {
            throw new WrongUse(faults);
        }
        return kept;
    }
}
