package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.Contents;
import croftboard.ledger.RandomLedger;
import croftboard.ledger.store.LedgerStore;
import croftboard.ledger.store.RealPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups, restores, exports and imports as typed, with a file and with a server. */
class LedgerCommandTest {
    private static RealPostgres server;
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeAll
    static void start() throws Exception {
        server = RealPostgres.start();
    }

    @AfterAll
    static void stop() throws Exception {
        server.close();
    }

    @BeforeEach
    void layOut() {
        desk = new Desk(folder, Desk.always(true));
    }

    private static Contents made(String where, long seed) {
        try (LedgerStore store = LedgerStore.toWrite(where)) {
            new RandomLedger(seed).book(store::book, 3, 40);
            return store.everythingAtOnce();
        }
    }

    private static Contents held(String where) {
        try (LedgerStore store = LedgerStore.toRead(where).orElseThrow()) {
            return store.everythingAtOnce();
        }
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private Desk.Run done(String... args) {
        Desk.Run run = desk.run(args);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    private void refused(String words, String... args) {
        Desk.Run run = desk.run(args);
        assertThat(run.code()).isEqualTo(Exit.WRONG_USE);
        assertThat(run.err()).contains(words);
    }

    @Test
    void backedUpAndRestored_fileToServerAndBack() throws Exception {
        List<String> ways = List.of(file("one.db"), server.fresh(), file("two.db"));
        Contents contents = made(ways.get(0), 1);
        for (int n = 1; n < ways.size(); n++) {
            String backup = file("backup-" + n + ".db");
            assertThat(done("ledger", "backup", backup, "--ledger", ways.get(n - 1)).out()).contains("3 bookings", "the same");
            done("ledger", "restore", backup, "--ledger", ways.get(n));
            assertThat(held(ways.get(n))).isEqualTo(contents);
        }
    }

    @Test
    void exportedAndImported_serverToFileAndBack_theSameBytes() throws Exception {
        List<String> ways = List.of(server.fresh(), file("one.db"), server.fresh());
        made(ways.get(0), 2);
        for (int n = 0; n < ways.size(); n++) {
            done("ledger", "export", file("export-" + n), "--ledger", ways.get(n));
            if (n + 1 < ways.size()) {
                done("ledger", "import", file("export-" + n), "--ledger", ways.get(n + 1));
            }
        }
        try (Stream<Path> files = Files.list(folder.resolve("export-0"))) {
            for (Path file : files.toList()) {
                assertThat(folder.resolve("export-2").resolve(file.getFileName())).hasSameBinaryContentAs(file);
            }
        }
    }

    @Test
    void ledgerThatHoldsSomething_isReplacedOnlyWhenSaid_andKept() throws Exception {
        for (String where : List.of(file("one.db"), server.fresh())) {
            Contents before = made(where, 3);
            Contents other = made(file("other" + where.length() + ".db"), 4);
            String backup = file("other" + where.length() + ".db");
            refused("--overwrite", "ledger", "restore", backup, "--ledger", where);
            assertThat(held(where)).isEqualTo(before);
            String said = done("ledger", "restore", backup, "--overwrite", "--ledger", where).out();
            assertThat(held(where)).isEqualTo(other);
            try (Stream<Path> kept = Files.list(desk.book)) {
                Path saved = kept.filter(f -> f.getFileName().toString().startsWith("ledger-before-")).findFirst().orElseThrow();
                assertThat(said).contains("is kept in");
                assertThat(held(saved.toString())).isEqualTo(before);
                Files.delete(saved);
            }
        }
    }

    @Test
    void damagedLedger_isPutAsideWhenSaid() throws IOException {
        made(file("good.db"), 5);
        String where = file("bad.db");
        made(where, 5);
        byte[] bytes = Files.readAllBytes(Path.of(where));
        java.util.Arrays.fill(bytes, 8_192, bytes.length, (byte) 0x5a);
        Files.write(Path.of(where), bytes);
        refused("damaged", "ledger", "restore", file("good.db"), "--ledger", where);
        assertThat(Path.of(where)).hasBinaryContent(bytes);
        done("ledger", "restore", file("good.db"), "--overwrite", "--ledger", where);
        assertThat(held(where)).isEqualTo(held(file("good.db")));
    }

    @Test
    void wrongUse_changesNothing() throws IOException {
        String where = file("one.db");
        refused("no ledger yet", "ledger", "backup", file("b.db"), "--ledger", where);
        Contents contents = made(where, 6);
        refused("is the ledger itself", "ledger", "backup", where, "--overwrite", "--ledger", where);
        refused("is the ledger itself", "ledger", "restore", where, "--ledger", where);
        refused("no such file", "ledger", "restore", file("none.db"), "--ledger", file("new.db"));
        refused("no such folder", "ledger", "import", file("none"), "--ledger", file("new.db"));
        refused("cannot be written", "ledger", "backup", file("no/such/b.db"), "--ledger", where);
        refused("contents.csv is missing", "ledger", "import", folder.toString(), "--ledger", file("new.db"));
        Files.writeString(folder.resolve("mine.txt"), "mine");
        refused("is there already", "ledger", "export", folder.toString(), "--ledger", where);
        refused("is there already", "ledger", "backup", file("mine.txt"), "--ledger", where);
        Desk.Run run = desk.run("ledger", "restore", file("mine.txt"), "--ledger", file("new.db"));
        assertThat(run.code()).isNotZero();
        assertThat(run.err()).contains("is no ledger").hasLineCount(1);
        assertThat(Path.of(file("new.db"))).doesNotExist();
        assertThat(held(where)).isEqualTo(contents);
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all.map(f -> f.getFileName().toString())).noneMatch(f -> f.contains(".tmp-"));
        }
    }

    /** Whoever may write everywhere cannot be shown a file that may not be written. */
    @Test
    void readOnlyLedger_isOneClearLine_andNothingIsLost() throws IOException {
        String where = file("one.db");
        Contents contents = made(where, 7);
        java.io.File db = new java.io.File(where);
        org.junit.jupiter.api.Assumptions.assumeTrue(db.setReadOnly() && !db.canWrite());
        Files.writeString(folder.resolve("register.csv"), "Date,Item,Units,Money\n2027-08-02,soup,3,15.75\n");
        Desk.Run run = desk.run("sold", file("register.csv"), "--ledger", where);
        assertThat(run.code()).isEqualTo(Exit.OUR_FAULT);
        assertThat(run.err()).contains("read-only", "nothing was booked").hasLineCount(1);
        assertThat(held(where)).isEqualTo(contents);
        assertThat(db.setWritable(true)).isTrue();
        done("sold", file("register.csv"), "--ledger", where);
        assertThat(held(where).entries()).hasSize(contents.entries().size() + 1);
    }
}
