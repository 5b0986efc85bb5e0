package croftboard.paper.file;

import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.When;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What stands on every page beside the sheet itself: what is wrong with it first, where it comes from last. */
final class Foot implements Imprint {
    private static final int LONGEST_TITLE = 46;
    private static final int LONGEST_NAME = 40;
    private static final int FINGERPRINT = 8;
    private static final int NAMED = 3;
    private final PaperContext context;

    Foot(PaperContext context) {
        this.context = context;
    }

    @Override
    public Optional<String> told(Sheet sheet) {
        List<String> told = new ArrayList<>();
        int missing = context.plan().missing().size();
        if (missing > 0) {
            told.add("NOT COMPLETE: " + missing + (missing == 1 ? " thing" : " things")
                    + " of this plan cannot be had or done. Do not work from it.");
        }
        List<String> orders = sheet.behind().stream().filter(context.notSent()::contains).sorted()
                .map(k -> Visible.shortened(context.called().vendor(k.vendor()), LONGEST_NAME) + ", " + When.day(k.delivery()))
                .toList();
        if (!orders.isEmpty()) {
            told.add("NOT SENT BEFORE CUT-OFF: " + orders.stream().limit(NAMED).collect(Collectors.joining("; "))
                    + (orders.size() > NAMED ? " and " + (orders.size() - NAMED) + " more" : "") + ". Nothing comes of it.");
        }
        return told.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", told));
    }

    /** {@code 2027-W33@2}, and whether people work from it. */
    @Override
    public String plan() {
        return context.planName() + (context.posted() ? "" : " draft, not posted");
    }

    @Override
    public String title(Sheet sheet) {
        return Visible.shortened(sheet.title(), LONGEST_TITLE);
    }

    @Override
    public String origin() {
        return "Croftboard \u00b7 " + Visible.shortened(context.book().kitchen().name(), LONGEST_NAME) + " \u00b7 plan "
                + fingerprint() + " \u00b7 printed " + When.printed(context.printed());
    }

    /** First letters of the book's fingerprint that the plan was made from. */
    private String fingerprint() {
        String whole = context.plan().fingerprint();
        return whole.substring(0, Math.min(FINGERPRINT, whole.length()));
    }
}
