package croftboard.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TransportTest {
    /** What can be met is the least over all sets of demands of: demands outside the set + sources that reach into it. */
    @Test
    void met_isTheLeastCut() {
        Random g = new Random(3);
        for (int n = 0; n < 500; n++) {
            int sources = g.nextInt(5);
            int demands = g.nextInt(7);
            long[] have = g.longs(sources, 0, 20).toArray();
            long[] want = g.longs(demands, 0, 20).toArray();
            boolean[][] way = new boolean[sources][demands];
            Transport transport = new Transport();
            for (long mg : have) {
                transport.source(mg);
            }
            for (long mg : want) {
                transport.demand(mg);
            }
            for (int s = 0; s < sources; s++) {
                for (int d = 0; d < demands; d++) {
                    way[s][d] = g.nextInt(3) == 0;
                    if (way[s][d]) {
                        transport.way(s, d);
                    }
                }
            }
            assertThat(transport.met()).isEqualTo(leastCut(have, want, way));
        }
    }

    private static long leastCut(long[] have, long[] want, boolean[][] way) {
        long least = Long.MAX_VALUE;
        for (int set = 0; set < 1 << want.length; set++) {
            long cut = 0;
            for (int d = 0; d < want.length; d++) {
                cut += (set >> d & 1) == 0 ? want[d] : 0;
            }
            for (int s = 0; s < have.length; s++) {
                boolean reaches = false;
                for (int d = 0; d < want.length; d++) {
                    reaches |= (set >> d & 1) == 1 && way[s][d];
                }
                cut += reaches ? have[s] : 0;
            }
            least = Math.min(least, cut);
        }
        return least;
    }
}
