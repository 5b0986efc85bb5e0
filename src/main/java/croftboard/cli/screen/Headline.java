package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.WeekPlan;
import java.util.List;
import java.util.Locale;

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

    /** The first lines of every screen: an order that was never sent brings nothing, whatever the plan says. */
    public static void notSent(Shown shown, Page page) {
        say(shown, shown.doubts().notSent(), "NOT SENT, past the cut-off, so nothing comes: ", page);
        say(shown, shown.doubts().notRecorded(), "NOT RECORDED AS SENT, past the cut-off; unless it was sent, nothing comes: ",
                page);
        if (!shown.doubts().changed().isEmpty()) {
            WeekPlan.Order first = shown.doubts().changed().get(0);
            page.say("CHANGED SINCE IT WAS SENT, so the old order comes: " + orders(shown, shown.doubts().changed())
                    + ". Send it again, then: croftboard sent " + shown.plan().week() + " " + first.vendor() + " --delivery "
                    + day(first) + ".");
        }
    }

    private static void say(Shown shown, List<WeekPlan.Order> orders, String what, Page page) {
        if (!orders.isEmpty()) {
            WeekPlan.Order first = orders.get(0);
            page.say(what + orders(shown, orders) + ". If it was sent: croftboard sent " + shown.plan().week() + " "
                    + first.vendor() + " --delivery " + day(first) + "; if not: croftboard short " + shown.plan().week()
                    + " --change \"" + first.vendor() + " not sent " + day(first) + "\".");
        }
    }

    private static String orders(Shown shown, List<WeekPlan.Order> orders) {
        return String.join("; ", orders.stream().map(o -> shown.names().vendor(o.vendor()) + " for " + Dates.day(o.delivery()))
                .toList());
    }

    private static String day(WeekPlan.Order order) {
        return order.delivery().getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    private static String version(Shown shown) {
        return shown.version().map(v -> "Version " + v + ", " + (shown.posted() ? "posted: people work from it."
                : "a draft.")).orElse("Not kept yet.");
    }
}
