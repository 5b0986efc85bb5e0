package croftboard.cli;

import java.util.Locale;

/** How a result is written. */
enum Format {
    TEXT, CSV, JSON;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
