package croftboard.paper.file;

import java.util.Locale;

/** How sheets are written. */
public enum PaperFormat {
    PDF, HTML, CSV, TEXT;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
