package croftboard.paper;

import java.util.EnumSet;
import java.util.Optional;

/** The kinds of sheets, in the order in which a week works through them. */
public enum SheetKind {
    ORDER("order", "Purchase orders"),
    ORDER_CALENDAR("order-calendar", "Order calendar"),
    PREP("prep", "Prep lists"),
    PULL("pull", "Pull and thaw lists"),
    BATCH("batch", "Batch sheets"),
    PRODUCTION("production", "Production sheets"),
    LABEL("label", "Labels"),
    CASE_CARD("case-card", "Case cards"),
    COVERAGE("coverage", "Coverage grid, for the staff only"),
    MEMBERS("members", "Members' sheet"),
    HOME_CARD("home-card", "Home cards"),
    LOG("log", "Logs"),
    FUNCTION("function", "Function sheets"),
    /** Of a rotation, as those that follow. */
    WALL("wall", "Wall sheet"),
    CROPS("crops", "Crop use by week"),
    NOTICE("notice", "Notice to growers"),
    SEASON("season", "The season ahead"),
    /** Of the ledger, not of a plan: {@code paper} does not make it. */
    REPORT("report", "Reports");

    private final String word;
    private final String title;

    SheetKind(String word, String title) {
        this.word = word;
        this.title = title;
    }

    /** By which it is asked for, and named on disk. */
    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    /** Whether it is made of several weeks. */
    public boolean ofARotation() {
        return compareTo(WALL) >= 0 && this != REPORT;
    }

    /** The kinds that a week's plan has. */
    public static EnumSet<SheetKind> ofAWeek() {
        return EnumSet.range(ORDER, FUNCTION);
    }

    public static Optional<SheetKind> of(String word) {
        for (SheetKind kind : values()) {
            if (kind.word.equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    @Override
    public String toString() {
        return word;
    }
}
