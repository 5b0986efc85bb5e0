package croftboard.ledger.file;

import croftboard.ledger.Booking;
import croftboard.ledger.Contents;
import croftboard.ledger.Entry;
import croftboard.ledger.Form;
import croftboard.ledger.Forms;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A whole ledger as CSV files: {@code booking.csv}, a file for each kind of entry, and {@code contents.csv} with the digest of
 * each of them. Read back it is the same ledger, and written again the same bytes.
 */
public final class Archive {
    public static final String CONTENTS = "contents.csv";
    static final String BOOKING = "booking.csv";
    static final List<String> BOOKING_HEAD = List.of("number", "booked_at", "who", "command", "name", "fingerprint");
    static final List<String> ENTRY_HEAD = List.of("id", "booking", "line", "day", "corrects", "why");

    private Archive() { }

    /** What reading came to. */
    public sealed interface Reading {
        record Read(Contents contents) implements Reading { }

        /** @param faults all that were found, each with its file */
        record Refused(List<String> faults) implements Reading { }
    }

    /** Names of all files of an export. */
    public static List<String> names() {
        List<String> names = new ArrayList<>(List.of(CONTENTS, BOOKING));
        Forms.ALL.forEach(f -> names.add(f.table() + ".csv"));
        return names;
    }

    /** Name of a file to its content. */
    public static Map<String, byte[]> files(Contents contents) {
        Map<String, byte[]> files = new TreeMap<>();
        List<List<String>> bookings = new ArrayList<>(List.of(BOOKING_HEAD));
        for (Booking b : contents.bookings()) {
            bookings.add(List.of(Long.toString(b.number()), b.at().toString(), b.who(), b.by(), b.name(), b.fingerprint()));
        }
        files.put(BOOKING, utf8(ExactCsv.of(bookings)));
        for (Form<?> form : Forms.ALL) {
            List<List<String>> rows = new ArrayList<>(List.of(head(form)));
            contents.entries().stream().filter(form.kind()::isInstance).forEach(e -> rows.add(row(form, e)));
            files.put(form.table() + ".csv", utf8(ExactCsv.of(rows)));
        }
        files.put(CONTENTS, utf8(ExactCsv.of(index(files))));
        return files;
    }

    private static List<List<String>> index(Map<String, byte[]> files) {
        List<List<String>> rows = new ArrayList<>(List.of(List.of("file", "sha256")));
        files.forEach((name, bytes) -> rows.add(List.of(name, digest(bytes))));
        return rows;
    }

    static List<String> head(Form<?> form) {
        List<String> head = new ArrayList<>(ENTRY_HEAD);
        form.columns().forEach(c -> head.add(c.name()));
        return head;
    }

    private static List<String> row(Form<?> form, Entry e) {
        List<String> row = new ArrayList<>(List.of(Long.toString(e.stamp().id()), Long.toString(e.stamp().booking().number()),
                Integer.toString(e.stamp().line()), e.date().toString(),
                e.stamp().corrects().map(c -> Long.toString(c.entry())).orElse(""), e.stamp().corrects().map(c -> c.why()).orElse("")));
        row.addAll(form.cells(e));
        return row;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** @param files name to content, as many of {@link #names} as are there */
    public static Reading read(Map<String, byte[]> files) {
        List<String> faults = new ArrayList<>();
        if (!files.containsKey(CONTENTS)) {
            return new Reading.Refused(List.of(CONTENTS + " is missing -> the folder that ledger export has made"));
        }
        Map<String, String> digests = new TreeMap<>();
        rows(CONTENTS, files.get(CONTENTS), List.of("file", "sha256"), faults)
                .forEach(row -> digests.put(row.cells().get(0), row.cells().get(1)));
        for (String name : names()) {
            if (!files.containsKey(name)) {
                faults.add(name + " is missing -> copy the whole folder");
            } else if (!name.equals(CONTENTS) && !digest(files.get(name)).equals(digests.get(name))) {
                faults.add(name + ": changed since it was exported -> take the untouched folder");
            }
        }
        if (!faults.isEmpty()) {
            return new Reading.Refused(List.copyOf(faults));
        }
        Contents contents = new ArchiveRows(files, faults).contents();
        return faults.isEmpty() ? new Reading.Read(contents) : new Reading.Refused(List.copyOf(faults));
    }

    /** The rows below a header that must be this one. */
    static List<Table.Row> rows(String name, byte[] content, List<String> head, List<String> faults) {
        try {
            List<Table.Row> all = ExactCsv.rows(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString());
            if (all.isEmpty() || !all.get(0).cells().equals(head)) {
                faults.add(name + ": the first line must be " + String.join(",", head));
                return List.of();
            }
            for (Table.Row row : all) {
                if (row.cells().size() != head.size()) {
                    faults.add(name + ": line " + row.line() + " has " + row.cells().size() + " cells, wanted " + head.size());
                    return List.of();
                }
            }
            return all.subList(1, all.size());
        } catch (Table.Bad e) {
            faults.add(name + ": " + e.getMessage());
        } catch (CharacterCodingException e) {
            faults.add(name + ": this is no UTF-8 text -> take the untouched folder");
        }
        return List.of();
    }

    static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
