package croftboard.paper.file;

import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.When;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What stands on every page beside the sheet itself: what is wrong with it first, where it comes from last. */
final class Foot {
    private static final int LONGEST_TITLE = 46;
    private static final int LONGEST_NAME = 40;
    private static final int FINGERPRINT = 8;
    private static final int NAMED = 3;
    /** What guests read tells them what is so, not what the kitchen has yet to find out. */
    private static final Set<SheetKind> GUESTS = EnumSet.of(SheetKind.LABEL, SheetKind.CASE_CARD, SheetKind.MEMBERS,
            SheetKind.HOME_CARD);
    private final PaperContext context;

    Foot(PaperContext context) {
        this.context = context;
    }

    /** The first line of the page; empty when all is well. */
    Optional<String> told(Sheet sheet) {
        List<String> told = new ArrayList<>();
        int missing = context.plan().missing().size();
        if (missing > 0) {
            told.add("NOT COMPLETE: " + missing + (missing == 1 ? " thing" : " things")
                    + " of this plan cannot be had or done. Do not work from it.");
        }
        orders(sheet, context.notSent()).ifPresent(o -> told.add("NOT SENT BEFORE CUT-OFF: " + o + ". Nothing comes of it."));
        if (!GUESTS.contains(sheet.kind())) {
            orders(sheet, context.doubtful().notRecorded()).ifPresent(o -> told.add("NOT RECORDED AS SENT, past the cut-off: " + o
                    + ". If it was not sent, nothing comes."));
            orders(sheet, context.doubtful().changed()).ifPresent(o -> told.add("CHANGED SINCE IT WAS SENT: " + o
                    + ". Until it is sent again, the old order comes."));
        }
        return told.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", told));
    }

    private Optional<String> orders(Sheet sheet, Set<OrderKey> which) {
        List<String> orders = sheet.behind().stream().filter(which::contains).sorted()
                .map(k -> Visible.shortened(context.called().vendor(k.vendor()), LONGEST_NAME) + ", " + When.day(k.delivery()))
                .toList();
        return orders.isEmpty() ? Optional.empty() : Optional.of(orders.stream().limit(NAMED).collect(Collectors.joining("; "))
                + (orders.size() > NAMED ? " and " + (orders.size() - NAMED) + " more" : ""));
    }

    /** {@code 2027-W33@2}, and whether people work from it. */
    String plan() {
        return context.planName() + (context.posted() ? "" : " draft, not posted");
    }

    String title(Sheet sheet) {
        return Visible.shortened(sheet.title(), LONGEST_TITLE);
    }

    String origin() {
        return "Croftboard \u00b7 " + Visible.shortened(context.book().kitchen().name(), LONGEST_NAME) + " \u00b7 plan "
                + fingerprint() + " \u00b7 printed " + When.printed(context.printed());
    }

    /** First letters of the book's fingerprint that the plan was made from. */
    private String fingerprint() {
        String whole = context.plan().fingerprint();
        return whole.substring(0, Math.min(FINGERPRINT, whole.length()));
    }
}
