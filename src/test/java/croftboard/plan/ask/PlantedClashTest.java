package croftboard.plan.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A clash of three facts planted among twelve kept dishes of a random week of 54 slots is found, and nothing else is named. */
class PlantedClashTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void plantedClash_isFoundAsItIs_andProved(long seed) {
        PlantedClash week = PlantedClash.of(seed);
        Optional<Clashing.Core> core = new Clashing(week.problem(), Optional.empty()).find();
        assertThat(core).as(week.kind()).isPresent();
        assertThat(core.get().facts()).as(week.kind()).containsExactlyInAnyOrderElementsOf(week.planted());
        assertThat(core.get().proved()).as(week.kind()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void plantedClash_isNamed(long seed) {
        PlantedClash week = PlantedClash.of(seed);
        Clashing.Core core = new Clashing(week.problem(), Optional.empty()).find().orElseThrow();
        int[] none = new int[week.problem().slots().size()];
        Arrays.fill(none, -1);
        List<Clash.Told> told = new ClashSearch(week.problem(), Map.of(), List.of(), none).told(core);
        assertThat(told).hasSize(3);
        assertThat(told.stream().filter(Clash.Pinned.class::isInstance)).isNotEmpty();
        assertThat(told.stream().filter(t -> !(t instanceof Clash.Pinned))).isNotEmpty();
    }
}
