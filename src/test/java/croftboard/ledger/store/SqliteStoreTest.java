package croftboard.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import croftboard.ledger.Booked;
import croftboard.ledger.RandomLedger;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteStoreTest extends StoreContract {
    @TempDir
    Path folder;
    private int count;

    @Override
    String fresh() {
        return folder.resolve("ledger-" + count++ + ".db").toString();
    }

    /** A limit of pages gives the very answer that a full disk gives. */
    @Test
    void fullDisk_isSaidAndNothingIsLost() {
        String where = fresh();
        RandomLedger random = new RandomLedger(1);
        try (LedgerStore store = LedgerStore.toWrite(where)) {
            assertThat(store.book(random.draft(1, 50, new HashSet<>()))).isInstanceOf(Booked.Done.class);
        }
        try (LedgerStore store = LedgerStore.toWrite(new Door(where, 45))) {
            assertThatThrownBy(() -> store.book(random.draft(2, 5_000, new HashSet<>()))).isInstanceOf(UncheckedIOException.class)
                    .hasMessageContaining("the disk is full").hasMessageContaining("nothing was booked");
        }
        try (LedgerStore store = LedgerStore.toWrite(where)) {
            assertThat(store.everything()).hasSize(50);
            assertThat(store.book(random.draft(2, 5_000, new HashSet<>()))).isInstanceOf(Booked.Done.class);
            assertThat(store.everything()).hasSize(5_050);
        }
    }

    @Test
    void anotherFile_isNoLedger() throws Exception {
        Path file = folder.resolve("menu.txt");
        Files.writeString(file, "Monday: soup\n".repeat(200));
        assertThatThrownBy(() -> LedgerStore.toWrite(file.toString())).hasMessageContaining("is no ledger");
        assertThatThrownBy(() -> LedgerStore.toRead(file.toString())).hasMessageContaining("is no ledger");
        assertThat(Files.readString(file)).startsWith("Monday");
    }

    @Test
    void noFolder_isSaid() {
        assertThatThrownBy(() -> LedgerStore.toWrite(folder.resolve("no/such/ledger.db").toString()))
                .isInstanceOf(UncheckedIOException.class).hasMessageContaining("cannot be opened");
    }

    @Test
    void damagedFile_isSaid() throws Exception {
        String where = fresh();
        try (LedgerStore store = LedgerStore.toWrite(where)) {
            store.book(new RandomLedger(3).draft(1, 2_000, new HashSet<>()));
        }
        byte[] bytes = Files.readAllBytes(Path.of(where));
        java.util.Arrays.fill(bytes, 8_192, bytes.length, (byte) 0x5a);
        Files.write(Path.of(where), bytes);
        assertThatThrownBy(() -> {
            try (LedgerStore store = LedgerStore.toRead(where).orElseThrow()) {
                store.everything();
            }
        }).isInstanceOf(UncheckedIOException.class).hasMessageContaining("restore the last backup");
    }
}
