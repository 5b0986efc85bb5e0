package croftboard.plan.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How much of several demands can be met from several sources at most, when only some source may serve a demand. */
final class Transport {
    private final List<Long> sources = new ArrayList<>();
    private final List<Long> demands = new ArrayList<>();
    private final List<int[]> ways = new ArrayList<>();

    int source(long mg) {
        sources.add(mg);
        return sources.size() - 1;
    }

    int demand(long mg) {
        demands.add(mg);
        return demands.size() - 1;
    }

    void way(int source, int demand) {
        ways.add(new int[] {source, demand});
    }

    /** Met by shortest paths on which something can still be moved, until there is none. */
    long met() {
        int n = sources.size() + demands.size() + 2;
        long[][] room = new long[n][n];
        int from = n - 2;
        int to = n - 1;
        for (int s = 0; s < sources.size(); s++) {
            room[from][s] = sources.get(s);
        }
        for (int d = 0; d < demands.size(); d++) {
            room[sources.size() + d][to] = demands.get(d);
        }
        for (int[] way : ways) {
            room[way[0]][sources.size() + way[1]] = Long.MAX_VALUE / 4;
        }
        long met = 0;
        for (int[] before = path(room, from); before[to] >= 0; before = path(room, from)) {
            long most = Long.MAX_VALUE;
            for (int v = to; v != from; v = before[v]) {
                most = Math.min(most, room[before[v]][v]);
            }
            for (int v = to; v != from; v = before[v]) {
                room[before[v]][v] -= most;
                room[v][before[v]] += most;
            }
            met += most;
        }
        return met;
    }

    /** The node before each on a shortest path with room; -1 where none leads. */
    private static int[] path(long[][] room, int from) {
        int[] before = new int[room.length];
        Arrays.fill(before, -1);
        before[from] = from;
        List<Integer> queue = new ArrayList<>(List.of(from));
        for (int at = 0; at < queue.size(); at++) {
            int u = queue.get(at);
            for (int v = 0; v < room.length; v++) {
                if (before[v] < 0 && room[u][v] > 0) {
                    before[v] = u;
                    queue.add(v);
                }
            }
        }
        return before;
    }
}
