package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever stands in the files of a book: it is read, or its faults are told, and nothing else happens. */
class FuzzTest {
    @Test
    void damagedFiles_giveABookOrFaults_neverAnythingElse() {
        Damage damage = new Damage(20270816, SmallKitchen.files(SmallKitchen.FOLDER));
        int faulty = 0;
        for (int i = 0; i < 3_000; i++) {
            Damage.Case one = damage.next();
            if (!read(one).faultsFound().isEmpty()) {
                faulty++;
            }
        }
        assertThat(faulty).isBetween(1_500, 2_990);
    }

    private static BookReading read(Damage.Case one) {
        try {
            return BookReader.readFiles(one.files());
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            throw new AssertionError("reading failed at case " + one.name(), e);
        }
    }

    /**
     * The long run: {@code -Dslow -Dcroftboard.fuzz=1000000}. Clock figures are printed, never
     * asserted.
     */
    @Tag("slow")
    @Test
    void damagedFiles_manyOfThem() {
        int count = Integer.getInteger("croftboard.fuzz", 1_000_000);
        int first = Integer.getInteger("croftboard.fuzz.seed", 1);
        Damage damage = new Damage(first, SmallKitchen.files(SmallKitchen.FOLDER));
        long longest = 0;
        long peak = 0;
        List<String> slowest = new ArrayList<>();
        int faulty = 0;
        for (int i = 0; i < count; i++) {
            Damage.Case one = damage.next();
            long start = System.nanoTime();
            faulty += read(one).faultsFound().isEmpty() ? 0 : 1;
            long took = System.nanoTime() - start;
            if (took > longest && i > 1_000) {
                longest = took;
                slowest.add(one.name() + " " + took / 1_000_000 + " ms");
            }
            peak = Math.max(peak, Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory());
        }
        System.out.printf("%d cases, %d faulty; longest read %d ms (%s); most memory in use %d MB%n",
                count, faulty,
                longest / 1_000_000, slowest.isEmpty() ? "" : slowest.get(slowest.size() - 1), peak >> 20);
        assertThat(faulty).isPositive();
    }
}
