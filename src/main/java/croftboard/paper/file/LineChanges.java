package croftboard.paper.file;

import java.util.ArrayList;
import java.util.List;

/** Which lines of a text differ from an earlier one: the longest common run of lines stays, the rest is gone or new. */
final class LineChanges {
    private static final int MOST = 3_000;

    private LineChanges() { }

    /** Lines that are gone as {@code - text}, new ones as {@code + text}, in the order of the page; blanks do not count. */
    static List<String> between(String before, String after) {
        List<String> old = lines(before);
        List<String> now = lines(after);
        int same = 0;
        while (same < Math.min(old.size(), now.size()) && old.get(same).equals(now.get(same))) {
            same++;
        }
        return changes(old.subList(same, old.size()), now.subList(same, now.size()));
    }

    private static List<String> lines(String text) {
        return text.lines().map(l -> l.strip().replaceAll(" {2,}", "  ")).filter(l -> !l.matches("-*|=*")).limit(MOST).toList();
    }

    private static List<String> changes(List<String> old, List<String> now) {
        int[][] common = new int[old.size() + 1][now.size() + 1];
        for (int i = old.size() - 1; i >= 0; i--) {
            for (int j = now.size() - 1; j >= 0; j--) {
                common[i][j] = old.get(i).equals(now.get(j)) ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        List<String> changes = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < old.size() || j < now.size()) {
            if (i < old.size() && j < now.size() && old.get(i).equals(now.get(j))) {
                i++;
                j++;
            } else if (j >= now.size() || i < old.size() && common[i + 1][j] >= common[i][j + 1]) {
                changes.add("- " + old.get(i++));
            } else {
                changes.add("+ " + now.get(j++));
            }
        }
        return changes;
    }
}
