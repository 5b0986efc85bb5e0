package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.WeekPlan;

/** The first lines over a plan: whose, which week, which version, what it is worth, and what is missing to it. */
public final class Headline {
    private Headline() { }

    public static void print(Shown shown, Page page) {
        WeekPlan plan = shown.plan();
        notSent(shown, page);
        page.heading(shown.book().kitchen().name() + ", week " + plan.week());
        page.say(Dates.full(plan.week().monday()) + " to " + Dates.full(plan.week().monday().plusDays(6)) + ". "
                + version(shown) + " Worth " + new Cents(plan.value()) + " after everything that is counted.");
        if (!plan.fingerprint().equals(shown.book().fingerprint())) {
            page.say("The book has changed since this plan was made: amounts and minutes below follow today's book.");
        }
        if (!plan.complete()) {
            page.gap();
            page.say("NOT COMPLETE: " + plan.missing().size() + (plan.missing().size() == 1 ? " thing" : " things")
                    + " cannot be had or done. This plan cannot be posted.");
            plan.missing().forEach(m -> page.item("- ", m.what() + ". What would mend it: " + m.mend() + "."));
        }
    }

    /** The first line of every screen: an order that was never sent brings nothing, whatever the plan says. */
    public static void notSent(Shown shown, Page page) {
        if (shown.notSent().isEmpty()) {
            return;
        }
        WeekPlan.Order first = shown.notSent().get(0);
        String day = first.delivery().getDayOfWeek().name().substring(0, 3).toLowerCase(java.util.Locale.ROOT);
        page.say("NOT SENT, past the cut-off, so nothing comes: " + String.join("; ", shown.notSent().stream()
                .map(o -> shown.names().vendor(o.vendor()) + " for " + Dates.day(o.delivery())).toList())
                + ". If it was sent: croftboard sent " + shown.plan().week() + " " + first.vendor() + " --delivery " + day
                + "; if not: croftboard short " + shown.plan().week() + " --change \"" + first.vendor() + " not sent " + day
                + "\".");
    }

    private static String version(Shown shown) {
        return shown.version().map(v -> "Version " + v + ", " + (shown.posted() ? "posted: people work from it."
                : "a draft.")).orElse("Not kept yet.");
    }
}
