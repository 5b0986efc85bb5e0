package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.ledger.Booked;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.Ledger;
import croftboard.ledger.EntryList;
import croftboard.ledger.file.Memory;
import croftboard.ledger.file.Table;
import croftboard.ledger.file.Tables;
import croftboard.ledger.store.LedgerStore;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What all commands share that take something into the ledger. */
final class TakingIn {
    @Option(names = "--dry-run", description = "show what would be booked; book nothing")
    private boolean dryRun;

    @Option(names = "--by", paramLabel = "WHO", defaultValue = "kitchen", description = "who books it: a role or initials, no names"
            + " (default: kitchen)")
    private String who;

    @Option(names = "--column", paramLabel = "WHAT=NAME", description = "this column holds that; remembered for the next file")
    private Map<String, String> columns = new LinkedHashMap<>();

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print what was booked (default: text)")
    private Format format;

    @Mixin
    private LedgerAt ledgerAt;

    boolean dryRun() {
        return dryRun;
    }

    Format format() {
        return format;
    }

    Map<String, String> columns() {
        return columns;
    }

    /** A file that somebody gave us. @throws WrongUse when it cannot be read */
    static byte[] content(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                throw new WrongUse(file + ": there is no such file -> check its name");
            }
            if (Files.size(file) > Table.MOST_BYTES) {
                throw new WrongUse(file + ": larger than " + Table.MOST_BYTES / 1_000_000 + " MB -> export a shorter time");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new WrongUse(file + " cannot be read: " + e.getMessage() + " -> check its permissions");
        }
    }

    static Table table(Path file, byte[] content) {
        Table.Reading reading = Tables.read(content);
        if (reading instanceof Table.Reading.Refused refused) {
            throw new WrongUse(file + ": " + refused.why());
        }
        return ((Table.Reading.Read) reading).table();
    }

    /** The same bytes by the same command. */
    static String fingerprint(String command, byte[] content) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update((command + "\n").getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest.digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    static Memory memory(Path book) {
        List<String> faults = new ArrayList<>();
        Memory memory = Memory.read(bytes(book.resolve(Memory.COLUMNS)), bytes(book.resolve(Memory.NAMES)), faults);
        if (!faults.isEmpty()) {
            throw new WrongUse(faults);
        }
        return memory;
    }

    private static byte[] bytes(Path file) {
        return Files.exists(file) ? content(file) : new byte[0];
    }

    /** Written after the booking: a file that is given again is not booked again, but remembered. */
    static void remember(Path book, Memory memory) {
        write(book.resolve(Memory.COLUMNS), memory.columnsCsv());
        write(book.resolve(Memory.NAMES), memory.namesCsv());
    }

    private static void write(Path file, String text) {
        byte[] now = text.getBytes(StandardCharsets.UTF_8);
        try {
            if (text.lines().count() > 1 && !java.util.Arrays.equals(now, bytes(file))) {
                WholeFile.makeFolder(file.toAbsolutePath().getParent());
                WholeFile.replace(file, now);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
        }
    }

    LocalDateTime now(Book book, Setting setting) {
        return LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone()).withNano(0);
    }

    Draft draft(Book book, Setting setting, String by, String name, String fingerprint, List<Entry> entries) {
        String plain = Page.plain(who);
        if (plain.isBlank() || plain.length() > 20) {
            throw new WrongUse("--by: a role or initials of at most 20 letters -> such as desk");
        }
        return new Draft(now(book, setting), plain, by, Page.plain(name), fingerprint, entries);
    }

    /** Asks the ledger, an empty one when there is none yet. */
    <T> T asking(Path book, Setting setting, Function<Ledger, T> question) {
        var there = ledgerAt.ifThere(book, setting);
        if (there.isEmpty()) {
            return question.apply(new EntryList(List.of()));
        }
        try (LedgerStore store = there.get()) {
            return question.apply(store);
        }
    }

    /** Books it, or only says what would come of it. @throws WrongUse when it corrects what cannot be corrected */
    Booked book(Path book, Setting setting, Draft draft) {
        if (dryRun) {
            return asking(book, setting, ledger -> ledger.bookings().stream().filter(b -> b.fingerprint().equals(draft.fingerprint()))
                    .findFirst().map(b -> (Booked) new Booked.Already(b)).orElseGet(() -> {
                        long last = ledger.everything().stream().mapToLong(e -> e.stamp().id()).max().orElse(0);
                        var booking = new croftboard.ledger.Booking(0, draft.at(), draft.who(), draft.by(), draft.name(), draft.fingerprint());
                        return new Booked.Done(booking, draft.numbered(booking, last + 1));
                    }));
        }
        try (LedgerStore store = ledgerAt.toWrite(book, setting)) {
            Booked booked = store.book(draft);
            if (booked instanceof Booked.Refused refused) {
                throw new WrongUse(refused.why() + "; nothing was booked");
            }
            return booked;
        }
    }
}
