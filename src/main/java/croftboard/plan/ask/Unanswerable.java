package croftboard.plan.ask;

import java.util.List;

/** What was asked makes no sense of this plan: each line says what is wrong and what would be right. */
public final class Unanswerable extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<String> lines;

    Unanswerable(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    Unanswerable(String line) {
        this(List.of(line));
    }

    public List<String> lines() {
        return lines;
    }
}
