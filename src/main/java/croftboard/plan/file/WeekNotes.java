package croftboard.plan.file;

import croftboard.measure.IsoWeek;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What people have done and decided about a week, beside its plans: which orders were sent and confirmed
 * ({@code plans/2027-W33/orders.json}), and what is kept though a search would choose otherwise ({@code kept.json}). Each file
 * is versioned and written whole; rows are only added, so that nothing said is lost. All methods throw
 * {@link UncheckedIOException} with a sentence when the disk fails.
 */
public final class WeekNotes {
    private static final int FORMAT = 1;
    private static final String ORDERS = "orders.json";
    private static final String KEPT = "kept.json";
    private final Path folder;

    /** @param book the book's folder */
    public WeekNotes(Path book) {
        folder = book.resolve("plans");
    }

    public OrderLife orders(IsoWeek week) {
        return new OrderLife(rows(week, ORDERS, OrderLife::row));
    }

    public Overrides kept(IsoWeek week) {
        return new Overrides(rows(week, KEPT, Overrides::row));
    }

    public void add(IsoWeek week, OrderLife.Step step) {
        append(week, ORDERS, List.of(step), OrderLife::row, OrderLife::form);
    }

    public void add(IsoWeek week, List<Overrides.Row> rows) {
        append(week, KEPT, rows, Overrides::row, Overrides::form);
    }

    /** Keeps a vendor's reply whole. @return its name in the week's folder */
    public String keepReply(IsoWeek week, String vendor, String text) {
        Path of = folder.resolve(week.toString());
        try {
            WholeFile.makeFolder(of);
            int n = 1;
            while (!WholeFile.create(of.resolve("reply-" + vendor + "-" + n + ".txt"), text)) {
                n++;
            }
            return "reply-" + vendor + "-" + n + ".txt";
        } catch (IOException e) {
            throw failed(of, "written", e);
        }
    }

    private <T> List<T> rows(IsoWeek week, String name, In.Form<T> form) {
        Path file = folder.resolve(week.toString()).resolve(name);
        try {
            In in = Json.object(Files.readString(file));
            Json.checkFormat(in, FORMAT);
            return in.whole(all -> {
                all.number("format");
                return all.rows("rows", form);
            });
        } catch (NoSuchFileException e) {
            return List.of();
        } catch (Unreadable e) {
            throw new IllegalStateException(file + " cannot be understood: " + e.getMessage());
        } catch (IOException e) {
            throw failed(file, "read", e);
        }
    }

    private <T> void append(IsoWeek week, String name, List<T> more, In.Form<T> read, java.util.function.Function<T, Out> write) {
        Path of = folder.resolve(week.toString());
        try {
            WholeFile.makeFolder(of);
            StoreLock lock = StoreLock.on(folder);
            try {
                List<T> all = new ArrayList<>(rows(week, name, read));
                all.addAll(more);
                WholeFile.replace(of.resolve(name), Layout.of(new Out().whole("format", FORMAT).rows("rows", all, write).node()));
            } finally {
                lock.free();
            }
        } catch (IOException e) {
            throw failed(of, "written", e);
        }
    }

    private static UncheckedIOException failed(Path path, String what, IOException e) {
        return new UncheckedIOException(path + " cannot be " + what + ": " + e.getMessage(), e);
    }
}
