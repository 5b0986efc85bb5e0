package croftboard.menu.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Groups of slots that share no limit with other groups, as days do when equipment is counted by the day. */
final class Apart {
    private final Choices choices;
    private final int[] root;

    private Apart(Choices choices) {
        this.choices = choices;
        root = IntStream.range(0, choices.slots() + choices.limits()).toArray();
    }

    /** Numbers of slots, group by group, in the order of the first slot. */
    static List<int[]> slots(Choices choices) {
        Apart apart = new Apart(choices);
        Map<Integer, List<Integer>> groups = new TreeMap<>();
        for (int s = 0; s < choices.slots(); s++) {
            for (int r : apart.touched(s)) {
                apart.root[apart.rootOf(choices.slots() + r)] = apart.rootOf(s);
            }
        }
        int[] firstOf = new int[apart.root.length];
        Arrays.fill(firstOf, -1);
        for (int s = 0; s < choices.slots(); s++) {
            int group = apart.rootOf(s);
            firstOf[group] = firstOf[group] < 0 ? s : firstOf[group];
            groups.computeIfAbsent(firstOf[group], g -> new ArrayList<>()).add(s);
        }
        return groups.values().stream().map(g -> g.stream().mapToInt(s -> s).toArray()).toList();
    }

    /** Limits that some slot of the group uses. */
    static int[] limits(Choices choices, int[] slots) {
        Apart apart = new Apart(choices);
        return Arrays.stream(slots).flatMap(s -> Arrays.stream(apart.touched(s))).distinct().sorted().toArray();
    }

    private int[] touched(int s) {
        return IntStream.range(0, choices.limits())
                .filter(r -> Arrays.stream(choices.units()[s]).anyMatch(own -> own[r] > 0)).toArray();
    }

    private int rootOf(int n) {
        int at = n;
        while (root[at] != at) {
            at = root[at];
        }
        return at;
    }
}
