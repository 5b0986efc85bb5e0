package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.ListedOffer;
import croftboard.book.Reply;
import croftboard.measure.IsoWeek;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** A grower's answer as availability lists of the book: {@code farms/lists/WEEK.csv}. */
final class ReplyLists {
    private static final String HEADER = "vendor,item,pack,price,packs,delivery,note";
    private final Map<Path, byte[]> files = new LinkedHashMap<>();

    /** @throws WrongUse when the vendor has a list of one of these weeks already: it is newer than an answer */
    ReplyLists(Path folder, Book book, Reply reply, SortedMap<IsoWeek, List<ListedOffer>> lists) {
        List<String> there = lists.keySet().stream().filter(w -> book.lists().getOrDefault(w, List.of()).stream()
                .anyMatch(r -> r.vendor().equals(reply.vendor()))).map(w -> "farms/lists/" + w + ".csv: " + reply.vendor()
                + " has a list of this week already -> take its rows out first, or leave the answer's rows of " + w + " empty").toList();
        if (!there.isEmpty()) {
            throw new WrongUse(there);
        }
        lists.forEach((week, rows) -> {
            Path file = folder.resolve("farms").resolve("lists").resolve(week + ".csv");
            files.put(file, (before(file) + rows(rows)).getBytes(StandardCharsets.UTF_8));
        });
    }

    private static String before(Path file) {
        try {
            String text = Files.exists(file) ? Files.readString(file) : HEADER + "\n";
            if (!text.replace("\uFEFF", "").lines().findFirst().orElse("").equals(HEADER)) {
                throw new WrongUse(file + ": its columns stand in another order -> " + HEADER);
            }
            return text.endsWith("\n") ? text : text + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    private static String rows(List<ListedOffer> rows) {
        StringBuilder text = new StringBuilder();
        rows.forEach(r -> text.append(String.join(",", r.vendor(), r.item(), quoted(r.pack()), r.price().toString(), Integer.toString(r.packs()),
                r.delivery().toString(), quoted(r.note()))).append('\n'));
        return text.toString();
    }

    private static String quoted(String text) {
        return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    List<Path> write() {
        List<Path> written = new ArrayList<>();
        files.forEach((file, content) -> {
            try {
                WholeFile.makeFolder(file.getParent());
                WholeFile.replace(file, content);
                written.add(file);
            } catch (IOException e) {
                throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
            }
        });
        return written;
    }
}
