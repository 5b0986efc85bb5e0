package croftboard.cli;

import java.util.List;

/** What was asked makes no sense, or the book has faults: told on stderr, exit 2, nothing written. */
final class WrongUse extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<String> lines;

    WrongUse(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    WrongUse(String line) {
        this(List.of(line));
    }

    List<String> lines() {
        return lines;
    }
}
