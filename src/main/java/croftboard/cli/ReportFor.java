package croftboard.cli;

import java.util.Locale;

/** Who reads a report. */
enum ReportFor {
    MEMBERS, BOARD;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
