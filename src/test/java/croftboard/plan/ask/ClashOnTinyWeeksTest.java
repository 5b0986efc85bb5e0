package croftboard.plan.ask;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.need.Enumeration;
import croftboard.need.TinyWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.Natives;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Clashes of tiny weeks in which dishes are kept, held against every menu with every order. */
class ClashOnTinyWeeksTest {
    private static final int WEEKS = 24;

    @BeforeAll
    static void exactSolverIsThere() {
        Assumptions.assumeTrue(Natives.available());
    }

    /** The week with one dish kept in each slot. */
    private static WeekProblem kept(WeekProblem p, long seed) {
        Random g = new Random(seed);
        List<WeekProblem.Slot> slots = new ArrayList<>();
        for (WeekProblem.Slot s : p.slots()) {
            slots.add(new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), true, s.emptyCents(), false,
                    List.of(s.candidates().get(g.nextInt(s.candidates().size())))));
        }
        return croftboard.plan.change.Problems.withSlots(p, slots);
    }

    private static WeekProblem holding(WeekProblem p, List<Fact> facts) {
        return Facts.without(p, Facts.of(p).stream().filter(f -> !facts.contains(f)).toList());
    }

    @Test
    void clash_isFoundWhereEnumerationFindsNoPlan_andEveryFactOfItIsNeeded() {
        int clashes = 0;
        int free = 0;
        for (long seed = 1; seed <= WEEKS; seed++) {
            WeekProblem p = kept(TinyWeek.of(seed), seed);
            Optional<Clashing.Core> core = new Clashing(p, Optional.empty()).find();
            assertThat(core.isEmpty()).as("tiny week %d", seed).isEqualTo(Enumeration.best(p).isPresent());
            if (core.isEmpty()) {
                free++;
                continue;
            }
            clashes++;
            List<Fact> facts = core.get().facts();
            assertThat(core.get().proved()).as("tiny week %d", seed).isTrue();
            assertThat(Enumeration.best(holding(p, facts))).as("tiny week %d, all of %s", seed, facts).isEmpty();
            for (Fact f : facts) {
                List<Fact> fewer = new ArrayList<>(facts);
                fewer.remove(f);
                assertThat(Enumeration.best(holding(p, fewer))).as("tiny week %d without %s", seed, f).isPresent();
            }
        }
        assertThat(clashes).isGreaterThan(2);
        assertThat(free).isGreaterThan(2);
    }

    @Test
    void eachMend_isWorthWhatEnumerationFinds() {
        int mended = 0;
        for (long seed = 1; seed <= WEEKS; seed++) {
            WeekProblem week = TinyWeek.of(seed);
            WeekProblem p = kept(week, seed);
            Map<Integer, WeekProblem.Slot> opened = new TreeMap<>();
            for (int s = 0; s < p.slots().size(); s++) {
                WeekProblem.Slot o = week.slots().get(s);
                opened.put(s, new WeekProblem.Slot(o.id(), o.line(), o.serviceDays(), true, o.emptyCents(), true, o.candidates()));
            }
            int[] none = new int[p.slots().size()];
            Arrays.fill(none, -1);
            List<Clash> all = new ClashSearch(p, opened, List.of(), none).all();
            Optional<Clashing.Core> core = new Clashing(p, Optional.empty()).find();
            if (core.isEmpty()) {
                assertThat(all).isEmpty();
                continue;
            }
            Relaxed relaxed = new Relaxed(p, opened);
            List<Optional<Long>> expected = core.get().facts().stream().map(relaxed::of).map(e -> Enumeration.best(e.problem())
                    .stream().mapToObj(v -> v - e.cents()).findFirst()).toList();
            List<Optional<Long>> found = all.get(0).mends().stream().map(Clash.Mend::worth).toList();
            assertThat(found).as("tiny week %d", seed).containsExactlyInAnyOrderElementsOf(expected);
            mended += (int) found.stream().filter(Optional::isPresent).count();
        }
        assertThat(mended).isGreaterThan(4);
    }
}
