package croftboard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A document of which the parts between two marks are written by a program and the rest by people. */
final class Sections {
    private final Path file;

    Sections(Path file) {
        this.file = file;
    }

    /** Puts a text in place of what stands between the marks of a part. */
    void put(String part, String text) throws IOException {
        String begin = "<!-- measured: " + part + " -->";
        String end = "<!-- end: " + part + " -->";
        String all = Files.readString(file);
        int from = all.indexOf(begin);
        int to = all.indexOf(end);
        if (from < 0 || to < from) {
            throw new IllegalStateException(file + " lacks the marks " + begin + " and " + end);
        }
        String before = all.substring(0, from + begin.length());
        Files.writeString(file, before + "\n" + text.strip() + "\n" + all.substring(to));
    }
}
