package croftboard.bench;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.ledger.store.LedgerStore;
import croftboard.ledger.store.RealPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** How long two years of files take into the ledger, and its copies, by the real commands from the shell. */
final class Ledgers {
    private static final int SALES = 50_000;
    private static final int RECEIPTS = 10_000;
    private final Path tool;
    private final Path book;
    private final Path folder;
    private final Map<String, Path> files;

    private Ledgers(Path tool, Path book, Path folder, Map<String, Path> files) {
        this.tool = tool;
        this.book = book;
        this.folder = folder;
        this.files = files;
    }

    static String measure(Request request) throws IOException, InterruptedException {
        Path temp = Files.createTempDirectory("croftboard-bench");
        try (RealPostgres server = RealPostgres.start()) {
            Path copy = temp.resolve("book");
            for (String part : List.of("kitchen", "recipes", "farms", "seasons")) {
                copy(request.folder().resolve(part), copy.resolve(part));
            }
            Book book = BookReader.read(copy).orElseThrow();
            Map<String, Path> files = new MadeFiles(book, 7).write(temp, SALES, RECEIPTS);
            return new Ledgers(request.folder().resolve("croftboard"), copy, temp, files).run(server);
        } catch (IOException | InterruptedException | RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        } finally {
            try (Stream<Path> all = Files.walk(temp)) {
                all.sorted(Comparator.reverseOrder()).forEach(p -> p.toFile().delete());
            }
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }

    private String run(RealPostgres server) throws Exception {
        List<Double> file = column("file", folder.resolve("ledger.db").toString());
        List<Double> real = column("server", server.fresh());
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%,d lines of sales in one file, %,d invoice lines in %d files, made by"
                + " seed (invented), 728 days; wall clock from the shell, once, each file a start of the program. Wanted: 20 s for all of it.%n%n",
                SALES, RECEIPTS, files.size() - 1));
        text.append(Figures.head("", "SQLite file, s", "PostgreSQL, s"));
        String[] names = {"`sold`, " + SALES + " lines", "`receive`, " + RECEIPTS + " lines", "**both: 60000 lines**", "`ledger backup`", "`ledger export`",
            "`ledger restore` into a new ledger", "`ledger import` into a new ledger"};
        for (int n = 0; n < names.length; n++) {
            text.append(Figures.row(names[n], two(file.get(n)), two(real.get(n))));
        }
        return text.toString();
    }

    private List<Double> column(String name, String where) throws IOException, InterruptedException {
        Bench.tell("ledger: " + name);
        double sold = seconds(where, "sold", files.get("register").toString());
        double received = 0;
        for (Map.Entry<String, Path> file : files.entrySet()) {
            received += file.getKey().equals("register") ? 0 : seconds(where, "receive", file.getValue().toString(), "--vendor", file.getKey());
        }
        try (LedgerStore store = LedgerStore.toRead(where).orElseThrow()) {
            int booked = store.everything().size();
            if (booked != SALES + RECEIPTS) {
                throw new IllegalStateException(booked + " lines were booked");
            }
        }
        String backup = folder.resolve(name + "-backup.db").toString();
        String export = folder.resolve(name + "-export").toString();
        List<Double> all = new ArrayList<>(List.of(sold, received, sold + received));
        all.add(seconds(where, "ledger", "backup", backup));
        all.add(seconds(where, "ledger", "export", export));
        all.add(seconds(folder.resolve(name + "-restored.db").toString(), "ledger", "restore", backup));
        all.add(seconds(folder.resolve(name + "-imported.db").toString(), "ledger", "import", export));
        return all;
    }

    private static String two(double seconds) {
        return String.format(Locale.ROOT, "%.2f", seconds);
    }

    private double seconds(String where, String... words) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of(tool.toString()));
        all.addAll(List.of(words));
        all.addAll(List.of("--book", book.toString(), "--ledger", where));
        long t0 = System.nanoTime();
        Process process = new ProcessBuilder(all).redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        int code = process.waitFor();
        if (code != 0) {
            throw new IllegalStateException(all + " ended with exit code " + code);
        }
        return (System.nanoTime() - t0) / 1e9;
    }
}
