package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.Rotation;

/** The first lines over a rotation: whose, which weeks, what it is worth, and what is missing to it. */
public final class RotationHeadline {
    private RotationHeadline() { }

    public static void print(RotationShown shown, Page page) {
        Rotation rotation = shown.rotation();
        page.heading(shown.book().kitchen().name() + ", rotation " + rotation.span());
        page.say(Dates.full(rotation.span().first().monday()) + " to " + Dates.full(rotation.span().last().monday().plusDays(6))
                + ", " + count(rotation.weeks().size(), "week") + ". "
                + shown.version().map(v -> "Version " + v + ".").orElse("Not kept yet.")
                + " Worth " + new Cents(rotation.value()) + " over all weeks, after everything that is counted.");
        rotation.inputs().cycle().ifPresent(k -> page.say("A cycle of " + count(k, "week") + ", repeated."));
        if (!rotation.fingerprint().equals(shown.book().fingerprint())) {
            page.say("The book has changed since this rotation was made: names below follow today's book.");
        }
        if (!rotation.complete()) {
            page.gap();
            page.say("NOT COMPLETE: in these weeks something cannot be had or done. Plan them again when their lists arrive.");
            rotation.weeks().forEach(w -> w.plan().missing().forEach(m -> page.item("- ", w.week() + ": " + m.what()
                    + ". What would mend it: " + m.mend() + ".")));
        }
    }

    static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }
}
