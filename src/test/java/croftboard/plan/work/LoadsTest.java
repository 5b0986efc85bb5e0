package croftboard.plan.work;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.cli.SamplePlan;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LoadsTest {
    private static final Book BOOK = SamplePlan.book();

    private static Loads loads(int perBatch, int atOnce, Ratio step, Ratio batches) {
        Recipe r = BOOK.recipe("lentil-bake");
        Recipe made = new Recipe("r", "R", r.sale(), r.makes(), r.cup(), step, r.lifeDays(), r.hold(), r.leadDays(), r.loss(),
                r.ingredients(), List.of(step(perBatch), step(1), new Recipe.Step("shelve", Optional.empty(), Ratio.ZERO,
                Ratio.ZERO, Ratio.ZERO, Map.of("walk-in", Ratio.of(1000)))), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty());
        Kitchen k = BOOK.kitchen();
        Kitchen kitchen = new Kitchen(k.name(), k.place(), k.zone(), k.paper(), k.open(), k.prepDays(), k.lines(), k.gapDays(),
                k.stations(), k.cooks(), k.receiving(), List.of(new Kitchen.Equipment("kettle", "Kettle", "L",
                Optional.of(1000), Optional.empty(), false, Optional.of(atOnce)), new Kitchen.Equipment("walk-in", "Shelves",
                "pans", Optional.of(1), Optional.empty(), true, Optional.of(1))), k.surplusWorth(), k.leftWorth(), k.goodwill(),
                k.wastePerPound(), k.promises(), k.local(), k.healthCodeEdition(), k.healthAuthority());
        LocalDate day = LocalDate.of(2027, 8, 16);
        return Loads.of(kitchen, new Making(made, day, day, day, batches, Optional.of(1), Optional.empty(), List.of()));
    }

    private static Recipe.Step step(int litres) {
        return new Recipe.Step("boil", Optional.empty(), Ratio.ZERO, Ratio.ZERO, Ratio.ZERO, Map.of("kettle", Ratio.of(litres)));
    }

    @ParameterizedTest
    @CsvSource({"20,60,5/2,5/2", "20,40,7/2,2 3/2", "20,25,3,1 1 1", "20,25,7/4,1 3/4", "20,35,7/2,7/4 7/4", "20,15,3/2,3/4 3/4",
        "20,15,1,1/2 1/2"})
    void split_isAsFewAsFit_wholeBatchesWhereTheyDo(int perBatch, int atOnce, String batches, String wanted) {
        Loads loads = loads(perBatch, atOnce, Ratio.of(1, 4), ratio(batches));
        assertThat(loads.loads()).isEqualTo(java.util.Arrays.stream(wanted.split(" ")).map(LoadsTest::ratio).toList());
        assertThat(loads.tooBig()).isFalse();
    }

    private static Ratio ratio(String text) {
        String[] parts = text.split("/");
        return parts.length == 1 ? Ratio.of(Long.parseLong(text)) : Ratio.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void loads_sumToTheBatches_areWholeSteps_andFit(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            Ratio step = Ratio.of(1, 1 + random.nextInt(8));
            Ratio batches = step.times(1 + random.nextInt(40));
            int perBatch = 1 + random.nextInt(50);
            int atOnce = 1 + random.nextInt(60);
            Loads loads = loads(perBatch, atOnce, step, batches);
            assertThat(loads.loads().stream().reduce(Ratio.ZERO, Ratio::plus)).isEqualTo(batches);
            assertThat(loads.tooBig()).isEqualTo(step.times(perBatch).compareTo(Ratio.of(atOnce)) > 0);
            for (Ratio load : loads.loads()) {
                assertThat(load.over(step).isWhole()).isTrue();
                assertThat(loads.tooBig() || load.times(perBatch).compareTo(Ratio.of(atOnce)) <= 0).isTrue();
            }
        }
    }
}
