package croftboard.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.Booked;
import croftboard.ledger.Booking;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.EntryList;
import croftboard.ledger.Form;
import croftboard.ledger.Forms;
import croftboard.ledger.Ledger;
import croftboard.ledger.Quantity;
import croftboard.ledger.RandomLedger;
import croftboard.ledger.Sale;
import croftboard.ledger.Stamp;
import croftboard.ledger.Withdrawal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** What a store must do, whatever database holds it. */
abstract class StoreContract {
    private static final LocalDate DAY = LocalDate.of(2027, 8, 16);

    /** Where a ledger that nobody has used can be made. */
    abstract String fresh() throws Exception;

    private static Draft draft(String fingerprint, Entry... entries) {
        return new Draft(LocalDateTime.of(2027, 8, 17, 6, 5, 3, 999), "desk", "sold", "monday.csv", fingerprint, List.of(entries));
    }

    private static Sale sale(Stamp stamp, long units) {
        return new Sale(stamp, DAY, OptionalInt.of(12), "4011", "soup", Optional.of("leek-soup"), true, Quantity.of(units), units * 650);
    }

    private static List<Sale> sales(Ledger ledger) {
        return ledger.entries(Sale.class, DAY, DAY);
    }

    @Test
    void noLedger_isNotMadeByReading() throws Exception {
        assertThat(LedgerStore.toRead(fresh())).isEmpty();
    }

    @Test
    void booked_isReadBackBySomeoneElse() throws Exception {
        String where = fresh();
        try (LedgerStore store = LedgerStore.toWrite(where)) {
            assertThat(store.book(draft("a", sale(Draft.line(2), 3)))).isInstanceOf(Booked.Done.class);
        }
        try (LedgerStore store = LedgerStore.toRead(where).orElseThrow()) {
            Booking booking = new Booking(1, LocalDateTime.of(2027, 8, 17, 6, 5, 3), "desk", "sold", "monday.csv", "a");
            assertThat(sales(store)).containsExactly(sale(new Stamp(1, booking, 2, Optional.empty()), 3));
            assertThat(store.bookings()).containsExactly(booking);
        }
    }

    @Test
    void sameFingerprint_booksOnce() throws Exception {
        try (LedgerStore store = LedgerStore.toWrite(fresh())) {
            store.book(draft("a", sale(Draft.line(1), 3)));
            Booked again = store.book(draft("a", sale(Draft.line(1), 3)));
            assertThat(again).isInstanceOfSatisfying(Booked.Already.class, a -> assertThat(a.booking().number()).isEqualTo(1));
            assertThat(sales(store)).hasSize(1);
        }
    }

    @Test
    void correction_takesThePlaceAndKeepsWhatWas() throws Exception {
        try (LedgerStore store = LedgerStore.toWrite(fresh())) {
            store.book(draft("a", sale(Draft.line(1), 3), sale(Draft.line(2), 4)));
            store.book(draft("b", sale(Draft.correction(1, 1, "thirteen"), 13)));
            assertThat(sales(store)).extracting(s -> s.stamp().id()).containsExactly(2L, 3L);
            assertThat(store.history(3)).extracting(e -> e.stamp().id()).containsExactly(1L, 3L);
            assertThat(store.history(1)).isEqualTo(store.history(3));
            store.book(draft("c", new Withdrawal(Draft.correction(1, 3, "another shop's"), DAY)));
            assertThat(sales(store)).extracting(s -> s.stamp().id()).containsExactly(2L);
            assertThat(store.everything()).hasSize(4);
        }
    }

    @Test
    void whatIsCorrectedAlready_isNotCorrectedTwice() throws Exception {
        try (LedgerStore store = LedgerStore.toWrite(fresh())) {
            store.book(draft("a", sale(Draft.line(1), 3)));
            store.book(draft("b", sale(Draft.correction(1, 1, "x"), 4)));
            Booked twice = store.book(draft("c", sale(Draft.line(1), 9), sale(Draft.correction(2, 1, "x"), 5)));
            assertThat(twice).isEqualTo(new Booked.Refused("entry 1 has been corrected already: correct entry 2 instead"));
            assertThat(store.book(draft("d", sale(Draft.correction(2, 77, "x"), 5))))
                    .isEqualTo(new Booked.Refused("there is no entry 77 to correct"));
            assertThat(store.bookings()).hasSize(2);
            assertThat(sales(store)).hasSize(1);
        }
    }

    @Test
    void everyKindWithCorrections_readsAsThePlainLedger() throws Exception {
        for (long seed = 1; seed <= 5; seed++) {
            try (LedgerStore store = LedgerStore.toWrite(fresh())) {
                List<Entry> all = new ArrayList<>();
                new RandomLedger(seed).book(d -> kept(store.book(d), all), 6, 40);
                EntryList plain = new EntryList(all);
                assertThat(store.everything()).as("seed " + seed).isEqualTo(plain.everything());
                for (Form<?> form : Forms.ALL) {
                    LocalDate from = LocalDate.of(2026, 1, 20);
                    assertThat(store.entries(form.kind(), from, from.plusDays(20))).as("seed " + seed + ", " + form.table())
                            .isEqualTo(plain.entries(form.kind(), from, from.plusDays(20)));
                }
                assertThat(store.history(7)).isEqualTo(plain.history(7));
                assertThat(store.entry(9)).isEqualTo(plain.entry(9));
            }
        }
    }

    private static Booked kept(Booked booked, List<Entry> all) {
        assertThat(booked).isInstanceOf(Booked.Done.class);
        all.addAll(((Booked.Done) booked).entries());
        return booked;
    }

    @Test
    void writersAtOnce_bookOneAfterTheOther() throws Exception {
        String where = fresh();
        LedgerStore.toWrite(where).close();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Booked>> work = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                Draft draft = draft("f" + i % 6, sale(Draft.line(1), i), sale(Draft.line(2), i));
                work.add(() -> {
                    try (LedgerStore store = LedgerStore.toWrite(where)) {
                        return store.book(draft);
                    }
                });
            }
            for (Future<Booked> done : threads.invokeAll(work)) {
                assertThat(done.get()).isNotInstanceOf(Booked.Refused.class);
            }
        } finally {
            threads.shutdownNow();
        }
        try (LedgerStore store = LedgerStore.toRead(where).orElseThrow()) {
            assertThat(store.bookings()).hasSize(6);
            assertThat(store.everything()).extracting(e -> e.stamp().id())
                    .containsExactly(1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L, 9L, 10L, 11L, 12L);
        }
    }

    @Test
    void wordsOfAnyKind_surviveTheStore() throws Exception {
        try (LedgerStore store = LedgerStore.toWrite(fresh())) {
            String words = "'; DROP TABLE entry; -- \"\\ % _ \u202e \uD83E\uDD55";
            store.book(draft("a", new Sale(Draft.line(1), DAY, OptionalInt.empty(), words, words, Optional.of(words), true, Quantity.ZERO, 0)));
            assertThat(sales(store).get(0).words()).isEqualTo(words);
        }
    }

    @Test
    void exportedAndImported_isTheSameLedgerAndTheSameBytes() throws Exception {
        for (int seed = 1; seed <= 12; seed++) {
            String from = fresh();
            RandomLedger random = new RandomLedger(seed);
            try (LedgerStore store = LedgerStore.toWrite(from); LedgerStore other = LedgerStore.toWrite(fresh())) {
                random.book(store::book, 1 + seed % 4, 40);
                var files = croftboard.ledger.file.Archive.files(store.everythingAtOnce());
                var read = (croftboard.ledger.file.Archive.Reading.Read) croftboard.ledger.file.Archive.read(files);
                assertThat(read.contents()).isEqualTo(store.everythingAtOnce());
                assertThat(other.fill(read.contents())).isTrue();
                var again = croftboard.ledger.file.Archive.files(other.everythingAtOnce());
                assertThat(again.keySet()).isEqualTo(files.keySet());
                again.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(files.get(name)));
                assertThat(other.fill(read.contents())).as("a ledger that holds something is not filled").isFalse();
            }
        }
    }

    @Test
    void replaced_onlyWhenNobodyHasBookedSince() throws Exception {
        try (LedgerStore store = LedgerStore.toWrite(fresh()); LedgerStore other = LedgerStore.toWrite(fresh())) {
            new RandomLedger(5).book(store::book, 3, 30);
            new RandomLedger(6).book(other::book, 2, 30);
            var seen = store.everythingAtOnce();
            store.book(draft("later", sale(Draft.line(1), 3)));
            var later = store.everythingAtOnce();
            assertThat(store.replace(seen, other.everythingAtOnce())).isFalse();
            assertThat(store.everythingAtOnce()).isEqualTo(later);
            assertThat(store.replace(later, other.everythingAtOnce())).isTrue();
            assertThat(store.everythingAtOnce()).isEqualTo(other.everythingAtOnce());
        }
    }
}
