package croftboard.paper.file;

import croftboard.paper.Origin;
import croftboard.paper.Sheet;
import croftboard.paper.When;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What stands on every page beside the sheet itself: what is wrong with it first, where it comes from last. */
final class Foot {
    private static final int LONGEST_TITLE = 46;
    private static final int LONGEST_NAME = 40;
    private static final int FINGERPRINT = 8;
    private static final int NAMED = 3;
    private final Origin from;

    Foot(Origin from) {
        this.from = from;
    }

    /** The first line of the page; empty when all is well. */
    Optional<String> told(Sheet sheet) {
        List<String> told = new ArrayList<>();
        int missing = from.missing();
        if (missing > 0) {
            told.add("NOT COMPLETE: " + missing + (missing == 1 ? " thing" : " things")
                    + " of this plan cannot be had or done. Do not work from it.");
        }
        List<String> orders = sheet.behind().stream().filter(from.notSent()::contains).sorted()
                .map(k -> Visible.shortened(from.called().vendor(k.vendor()), LONGEST_NAME) + ", " + When.day(k.delivery()))
                .toList();
        if (!orders.isEmpty()) {
            told.add("NOT SENT BEFORE CUT-OFF: " + orders.stream().limit(NAMED).collect(Collectors.joining("; "))
                    + (orders.size() > NAMED ? " and " + (orders.size() - NAMED) + " more" : "") + ". Nothing comes of it.");
        }
        return told.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", told));
    }

    /** {@code 2027-W33@2}, and whether people work from it. */
    String plan() {
        return from.name() + from.state();
    }

    String title(Sheet sheet) {
        return Visible.shortened(sheet.title(), LONGEST_TITLE);
    }

    String origin() {
        return "Croftboard \u00b7 " + Visible.shortened(from.book().kitchen().name(), LONGEST_NAME) + " \u00b7 plan "
                + fingerprint() + " \u00b7 printed " + When.printed(from.printed());
    }

    /** First letters of the book's fingerprint that the plan was made from. */
    private String fingerprint() {
        String whole = from.fingerprint();
        return whole.substring(0, Math.min(FINGERPRINT, whole.length()));
    }
}
