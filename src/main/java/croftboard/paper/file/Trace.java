package croftboard.paper.file;

import croftboard.paper.Sheet;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What was printed, as text: {@code printed/SHEET.txt} holds the sheet as it was printed last, {@code SHEET~1.txt},
 * {@code SHEET~2.txt} and so on the ones before that differed. So a page on the wall that no longer holds is found.
 */
final class Trace {
    private static final String HEAD = "printed from ";
    private final Path folder;

    Trace(Path folder) {
        this.folder = folder;
    }

    /** A sheet that is printed again with other lines. @param from plan that the last print came from */
    record Changed(String id, String title, String from, List<String> lines) { }

    /** @return what differs from the print before; empty: nothing, or it was never printed */
    Optional<Changed> differs(Sheet sheet) throws IOException {
        Optional<String> last = last(sheet.id());
        if (last.isEmpty()) {
            return Optional.empty();
        }
        List<String> lines = LineChanges.between(body(last.get()), TextSheet.of(sheet));
        return lines.isEmpty() ? Optional.empty()
                : Optional.of(new Changed(sheet.id(), Visible.line(sheet.title()), from(last.get()), lines));
    }

    /** Sheets of these kinds that were printed before and are no longer made: their pages should come off the wall. */
    Set<String> gone(Set<String> kindWords, Set<String> made) throws IOException {
        Set<String> gone = new TreeSet<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.txt")) {
            for (Path file : files) {
                String id = file.getFileName().toString().replaceFirst("\\.txt$", "");
                boolean last = !id.contains("~");
                if (last && !made.contains(id) && kindWords.contains(body0(file))) {
                    gone.add(id);
                }
            }
        } catch (NoSuchFileException e) {
            return gone;
        }
        return gone;
    }

    private static String body0(Path file) throws IOException {
        String head = Files.readString(file).lines().findFirst().orElse("");
        return head.replaceFirst("^" + HEAD + "\\S+ ", "");
    }

    /** Keeps what is being printed now. @param plan {@code 2027-W33@2} */
    void keep(Sheet sheet, String plan) throws IOException {
        Path file = folder.resolve(sheet.id() + ".txt");
        String now = HEAD + plan + " " + sheet.kind().word() + "\n\n" + TextSheet.of(sheet);
        Optional<String> last = last(sheet.id());
        if (last.isPresent() && !body(last.get()).equals(body(now))) {
            WholeFile.replace(free(sheet.id()), last.get().getBytes(StandardCharsets.UTF_8));
        }
        if (last.isEmpty() || !last.get().equals(now)) {
            WholeFile.replace(file, now.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** The sheet is not made any more. */
    void retire(String id) throws IOException {
        Optional<String> last = last(id);
        if (last.isPresent()) {
            WholeFile.replace(free(id), last.get().getBytes(StandardCharsets.UTF_8));
            Files.deleteIfExists(folder.resolve(id + ".txt"));
        }
    }

    private Path free(String id) {
        int number = 1;
        while (Files.exists(folder.resolve(id + "~" + number + ".txt"))) {
            number++;
        }
        return folder.resolve(id + "~" + number + ".txt");
    }

    private Optional<String> last(String id) throws IOException {
        try {
            return Optional.of(Files.readString(folder.resolve(id + ".txt")));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    private static String body(String text) {
        int at = text.indexOf("\n\n");
        return at < 0 ? text : text.substring(at + 2);
    }

    private static String from(String text) {
        return new ArrayList<>(List.of(text.split("\\s+", 4))).stream().skip(2).findFirst().orElse("an earlier plan");
    }
}
