package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.Contents;
import croftboard.ledger.store.LedgerStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real program is killed at random moments of {@code sold} and {@code receive} while this process reads the ledger: every
 * booked file is whole or absent, and the same command again completes it. How often the slow test kills: {@code -Dcroftboard.kills=N}.
 */
class LedgerKillTest {
    private static final Path SMALL = Path.of("src/test/resources/kitchens/small");
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final int LINES = 1_500;
    @TempDir
    private Path folder;
    private Path book;
    private final Map<String, Integer> finished = new TreeMap<>();
    private int hitWhileWriting;
    private int killedBefore;

    @BeforeEach
    void layOut() throws IOException {
        book = folder.resolve("book");
        try (Stream<Path> all = Files.walk(SMALL)) {
            for (Path from : all.toList()) {
                Files.copy(from, book.resolve(SMALL.relativize(from).toString()));
            }
        }
    }

    @Test
    void killedAtTenMoments_everyFileIsWholeOrAbsent() throws Exception {
        killed(10, 31);
    }

    @Test
    @Tag("slow")
    void killedAtManyMoments_everyFileIsWholeOrAbsent() throws Exception {
        killed(Integer.getInteger("croftboard.kills", 500), 32);
    }

    private void killed(int times, long seed) throws Exception {
        Random g = new Random(seed);
        long whole = completed(file(0), 0);
        AtomicBoolean over = new AtomicBoolean();
        AtomicReference<Throwable> wrong = new AtomicReference<>();
        Thread reader = new Thread(() -> {
            try {
                while (!over.get()) {
                    check();
                    Thread.sleep(20);
                }
            } catch (Exception | Error e) {
                wrong.set(e);
            }
        });
        reader.start();
        for (int n = 1; n <= times && wrong.get() == null; n++) {
            Path file = file(n);
            Process process = start(file, n);
            if (n % 3 == 0) {
                process.waitFor(g.nextInt((int) whole) + 1, TimeUnit.MILLISECONDS);
            } else {
                awaitWriting(process);
                Thread.sleep(g.nextInt(60));
            }
            boolean writing = Files.exists(book.resolve("ledger.db-journal"));
            process.destroyForcibly().waitFor();
            hitWhileWriting += writing ? 1 : 0;
            killedBefore += check().bookings().stream().noneMatch(b -> b.name().equals(file.getFileName().toString())) ? 1 : 0;
            completed(file, n);
        }
        over.set(true);
        reader.join();
        assertThat(wrong.get()).isNull();
        System.out.println("killed " + times + " times, " + hitWhileWriting + " of them while the ledger was written; " + killedBefore + " files were absent");
        assertThat(hitWhileWriting).isPositive();
        assertThat(killedBefore).isPositive();
        Contents all = check();
        assertThat(all.bookings()).hasSize(times + 1);
        assertThat(all.entries()).hasSize((times + 1) * LINES);
        try (Stream<Path> left = Files.walk(book)) {
            assertThat(left.map(f -> f.getFileName().toString())).noneMatch(f -> f.endsWith("-journal"));
        }
    }

    /** The database's own sign that something is being written. */
    private void awaitWriting(Process process) throws InterruptedException {
        while (process.isAlive() && !Files.exists(book.resolve("ledger.db-journal"))) {
            Thread.sleep(1);
        }
    }

    /** The ledger as another process sees it: each booking with all its lines. */
    private Contents check() {
        Optional<LedgerStore> there = LedgerStore.toRead(book.resolve("ledger.db").toString());
        if (there.isEmpty()) {
            return new Contents(List.of(), List.of());
        }
        try (LedgerStore store = there.get()) {
            Contents all = store.everythingAtOnce();
            Map<Long, Long> lines = all.entries().stream().collect(Collectors.groupingBy(e -> e.stamp().booking().number(), Collectors.counting()));
            assertThat(lines.keySet()).hasSize(all.bookings().size());
            assertThat(lines.values()).allMatch(n -> n == LINES);
            return all;
        }
    }

    private Path file(int n) throws IOException {
        StringBuilder text = new StringBuilder(sold(n) ? "Date,Hour,Item,Units,Money\n" : "Date,Item,Pack,Qty,Price\n");
        for (int line = 0; line < LINES; line++) {
            text.append(FIRST.plusDays(n)).append(sold(n) ? "," + (10 + line % 8) + ",soup " + line + ",1,5.25\n" : ",leek " + line + ",sack,2,18.50\n");
        }
        Path file = folder.resolve((sold(n) ? "register-" : "hollow-brook-") + n + ".csv");
        return Files.writeString(file, text);
    }

    private static boolean sold(int n) {
        return n % 2 == 0;
    }

    /** @return milliseconds that it took */
    private long completed(Path file, int n) throws IOException, InterruptedException {
        long t0 = System.nanoTime();
        Process process = start(file, n);
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).isZero();
        finished.merge(file.getFileName().toString(), 1, Integer::sum);
        assertThat(check().bookings()).extracting(b -> b.name()).containsOnlyOnceElementsOf(finished.keySet());
        return (System.nanoTime() - t0) / 1_000_000;
    }

    private Process start(Path file, int n) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> words = new ArrayList<>(List.of(java, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"),
                Main.class.getName(), sold(n) ? "sold" : "receive", file.toString(), "--book", book.toString()));
        return new ProcessBuilder(words).redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }
}
