package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FingerprintTest {
    private static final String OF_ALL = BookReader.readFiles(SmallKitchen.files(SmallKitchen.FOLDER))
            .orElseThrow().fingerprint();

    @Test
    void order_doesNotMatter() {
        Map<String, byte[]> files = SmallKitchen.files(SmallKitchen.FOLDER);
        for (int seed = 0; seed < 20; seed++) {
            List<String> paths = new ArrayList<>(files.keySet());
            Collections.shuffle(paths, new Random(seed));
            Map<String, byte[]> shuffled = new LinkedHashMap<>();
            paths.forEach(p -> shuffled.put(p, files.get(p)));
            assertThat(BookReader.readFiles(shuffled).orElseThrow().fingerprint()).isEqualTo(OF_ALL);
        }
    }

    @Test
    void folderAndMemory_agree() {
        assertThat(SmallKitchen.book().fingerprint()).isEqualTo(OF_ALL).matches("[0-9a-f]{64}");
    }

    @Test
    void anyByteOfAnyFile_matters() {
        for (String path : SmallKitchen.files(SmallKitchen.FOLDER).keySet()) {
            SmallKitchen kitchen = new SmallKitchen();
            kitchen.put(path, kitchen.text(path) + "\n");
            assertThat(kitchen.reading().orElseThrow().fingerprint()).as(path).isNotEqualTo(OF_ALL);
        }
    }

    @Test
    void nameOfAFile_matters() {
        SmallKitchen kitchen = new SmallKitchen();
        String shelf = kitchen.text("kitchen/ingredients/dairy.yaml");
        kitchen.remove("kitchen/ingredients/dairy.yaml").put("kitchen/ingredients/milky.yaml", shelf);
        assertThat(kitchen.reading().orElseThrow().fingerprint()).isNotEqualTo(OF_ALL);
    }
}
