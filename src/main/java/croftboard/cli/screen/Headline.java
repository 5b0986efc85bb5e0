package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.WeekPlan;

/** The first lines over a plan: whose, which week, which version, what it is worth, and what is missing to it. */
public final class Headline {
    private Headline() { }

    public static void print(Shown shown, Page page) {
        WeekPlan plan = shown.plan();
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

    private static String version(Shown shown) {
        return shown.version().map(v -> "Version " + v + ", " + (shown.posted() ? "posted: people work from it."
                : "a draft.")).orElse("Not kept yet.");
    }
}
