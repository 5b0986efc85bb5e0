package croftboard.cli;

import croftboard.ledger.Contents;
import croftboard.ledger.file.Archive;
import croftboard.ledger.store.LedgerStore;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Copies of a ledger and the way back, each whole or not at all. A backup is a ledger file, whatever database it came from. */
final class Keeping {
    private static final String SERVER = "jdbc:";
    private final String where;
    private final Path book;
    private final Clock clock;

    Keeping(String where, Path book, Clock clock) {
        this.where = where;
        this.book = book;
        this.clock = clock;
    }

    /** What became of a restore. @param saved where the ledger's former contents lie */
    record Filled(Contents now, Optional<Path> saved) { }

    Contents backup(Path file, boolean overwrite) {
        if (Files.exists(file) && !overwrite) {
            throw new WrongUse(file + " is there already -> another name, or --overwrite; nothing was changed");
        }
        needFolder(file);
        notItself(file);
        Contents all = held();
        copy(all, file);
        return all;
    }

    private void needFolder(Path path) {
        if (Files.isDirectory(path) && !isEmpty(path) || !Files.isDirectory(path.toAbsolutePath().normalize().getParent())) {
            throw new WrongUse(path + " cannot be written -> a new name in a folder that is there; nothing was changed");
        }
    }

    private static boolean isEmpty(Path folder) {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        } catch (IOException e) {
            throw failed(folder, e);
        }
    }

    private void notItself(Path file) {
        if (!where.startsWith(SERVER) && Path.of(where).toAbsolutePath().normalize().equals(file.toAbsolutePath().normalize())) {
            throw new WrongUse(file + " is the ledger itself -> the name of a backup; nothing was changed");
        }
    }

    private Contents held() {
        return contents(where).orElseThrow(() -> new WrongUse("there is no ledger yet -> croftboard receive, croftboard sold"));
    }

    private static Optional<Contents> contents(String where) {
        Optional<LedgerStore> there = LedgerStore.toRead(where);
        if (there.isEmpty()) {
            return Optional.empty();
        }
        try (LedgerStore store = there.get()) {
            return Optional.of(store.everythingAtOnce());
        }
    }

    /** Made beside it under another name, read back, and only then given its name. */
    private static void copy(Contents all, Path file) {
        Path temp = beside(file);
        try {
            try (LedgerStore copy = LedgerStore.toWrite(temp.toString())) {
                copy.fill(all);
            }
            if (!contents(temp.toString()).equals(Optional.of(all))) {
                throw new IllegalStateException("the copy differs from the ledger");
            }
            Files.move(temp, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw failed(file, e);
        } finally {
            delete(temp);
            delete(Path.of(temp + "-journal"));
        }
    }

    private static Path beside(Path file) {
        return file.toAbsolutePath().resolveSibling(file.getFileName() + ".tmp-" + ProcessHandle.current().pid() + "-0");
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw failed(file, e);
        }
    }

    private static UncheckedIOException failed(Path path, IOException e) {
        return new UncheckedIOException(path + " cannot be written or read: " + e.getMessage() + "; nothing was changed", e);
    }

    Contents export(Path folder) {
        if (Files.exists(folder) && (!Files.isDirectory(folder) || !isEmpty(folder))) {
            throw new WrongUse(folder + " is there already and not empty -> a new folder; nothing was changed");
        }
        needFolder(folder);
        Contents all = held();
        Path temp = beside(folder);
        try {
            Files.createDirectories(temp);
            for (Map.Entry<String, byte[]> file : Archive.files(all).entrySet()) {
                WholeFile.replace(temp.resolve(file.getKey()), file.getValue());
            }
            Files.deleteIfExists(folder);
            Files.move(temp, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw failed(folder, e);
        } finally {
            Archive.names().forEach(name -> delete(temp.resolve(name)));
            delete(temp);
        }
        return all;
    }

    Contents fromBackup(Path file) {
        notItself(file);
        if (!Files.isRegularFile(file)) {
            throw new WrongUse(file + ": there is no such file -> a file that ledger backup has made");
        }
        return contents(file.toString()).orElseThrow(() -> new WrongUse(file + " is no backup -> a file that ledger backup has made"));
    }

    Contents fromExport(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new WrongUse(folder + ": there is no such folder -> a folder that ledger export has made");
        }
        Map<String, byte[]> files = new TreeMap<>();
        try {
            for (String name : Archive.names()) {
                if (Files.isRegularFile(folder.resolve(name))) {
                    files.put(name, Files.readAllBytes(folder.resolve(name)));
                }
            }
        } catch (IOException e) {
            throw failed(folder, e);
        }
        if (Archive.read(files) instanceof Archive.Reading.Read read) {
            return read.contents();
        }
        List<String> faults = ((Archive.Reading.Refused) Archive.read(files)).faults();
        throw new WrongUse(faults.stream().limit(50).map(f -> folder.resolve(f).toString()).toList());
    }

    /** Makes these the contents of the ledger. */
    Filled filled(String from, Contents contents, boolean overwrite) {
        Optional<Contents> before = Optional.empty();
        Optional<Path> saved = Optional.empty();
        try {
            before = contents(where);
        } catch (UncheckedIOException e) {
            if (!LedgerStore.damaged(e) || !overwrite) {
                throw LedgerStore.damaged(e) ? new WrongUse(e.getMessage() + ". To put " + from + " in its place -> --overwrite") : e;
            }
            saved = Optional.of(putAside());
        }
        if (before.isPresent() && !before.get().isEmpty() && !overwrite) {
            throw new WrongUse("the ledger holds " + before.get().bookings().size() + " bookings already -> --overwrite saves them in a file"
                    + " and puts " + from + " in their place; nothing was changed");
        }
        try (LedgerStore store = LedgerStore.toWrite(where)) {
            boolean empty = before.isEmpty() || before.get().isEmpty();
            if (!empty) {
                saved = Optional.of(aside("before"));
                copy(before.get(), saved.get());
            }
            if (!(empty ? store.fill(contents) : store.replace(before.get(), contents))) {
                throw new WrongUse("somebody has booked into the ledger meanwhile -> run the command again; nothing was changed");
            }
            return new Filled(contents, saved);
        }
    }

    private Path aside(String why) {
        String time = LocalDateTime.now(clock).format(DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss"));
        Path file = book.resolve("ledger-" + why + "-" + time + ".db");
        for (int n = 2; Files.exists(file); n++) {
            file = book.resolve("ledger-" + why + "-" + time + "-" + n + ".db");
        }
        return file;
    }

    /** A damaged file is kept too: somebody may read more out of it. */
    private Path putAside() {
        Path file = aside("damaged");
        try {
            Path journal = Path.of(where + "-journal");
            if (Files.exists(journal)) {
                Files.move(journal, Path.of(file + "-journal"));
            }
            Files.move(Path.of(where), file);
        } catch (IOException e) {
            throw failed(file, e);
        }
        return file;
    }
}
