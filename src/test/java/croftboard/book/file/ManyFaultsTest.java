package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Fault;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** One hundred faults are one hundred lines, in the order of the files. */
class ManyFaultsTest {
    @Test
    void hundredFaults_areHundredLines() {
        SmallKitchen kitchen = new SmallKitchen();
        StringBuilder crops = new StringBuilder();
        List<String> expected = new ArrayList<>();
        for (int i = 1; i <= 50; i++) {
            crops.append("- {crop: x, item: carrot, weeks: W9, region: y, source: z}\n");
            expected.add("seasons/crops.yaml:" + i + ":34");
        }
        kitchen.put("seasons/crops.yaml", crops.toString());
        StringBuilder lines = new StringBuilder(kitchen.text("kitchen/on-hand.csv"));
        for (int i = 6; i <= 35; i++) {
            lines.append("carrot,-").append(i).append(" lb,2027-08-12,,,,,\n");
            expected.add("kitchen/on-hand.csv:" + i + ":8");
        }
        kitchen.put("kitchen/on-hand.csv", lines.toString());
        StringBuilder recipe = new StringBuilder(kitchen.text("recipes/components.yaml"));
        int line = (int) recipe.chars().filter(c -> c == '\n').count();
        recipe.append("broth: {name: x, kind: component, makes: 1 lb, batch_step: 1, life: 1 day, hold: "
                + "cold, ingredients: [1 lb salt], steps: [\n");
        for (int i = 2; i <= 21; i++) {
            recipe.append("  {do: x, station: hut},\n");
            expected.add("recipes/components.yaml:" + (line + i) + ":20");
        }
        kitchen.put("recipes/components.yaml", recipe + "]}\n");
        List<String> places = kitchen.faults().stream()
                .map(f -> new Spot(f.file(), f.line(), f.column()).toString()).toList();
        assertThat(places).hasSize(100).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(kitchen.faults()).isSortedAccordingTo(java.util.Comparator.comparing(Fault::file)
                .thenComparingInt(Fault::line).thenComparingInt(Fault::column));
    }

    @Test
    void faultsOfEveryFile_atOnce() {
        SmallKitchen kitchen = new SmallKitchen();
        for (String path : new TreeMap<>(kitchen.files()).keySet()) {
            kitchen.put(path, (kitchen.text(path) + (path.endsWith(".csv") ? "x\n" : "\n? [x]\n: y\n"))
                    .getBytes(StandardCharsets.UTF_8));
        }
        assertThat(kitchen.faults()).extracting(Fault::file)
                .contains(kitchen.files().keySet().toArray(String[]::new));
    }

    @Test
    void theSameFilesTwice_theSameFaults() {
        Damage damage = new Damage(3, SmallKitchen.files(SmallKitchen.FOLDER));
        for (int i = 0; i < 30; i++) {
            Damage.Case one = damage.next();
            List<String> paths = new ArrayList<>(one.files().keySet());
            java.util.Collections.shuffle(paths, new Random(i));
            java.util.Map<String, byte[]> shuffled = new java.util.LinkedHashMap<>();
            paths.forEach(p -> shuffled.put(p, one.files().get(p).clone()));
            assertThat(BookReader.readFiles(shuffled).faultsFound()).as(one.name())
                    .isEqualTo(BookReader.readFiles(one.files()).faultsFound());
        }
    }
}
