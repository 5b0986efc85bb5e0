package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.WeekPlan;
import java.util.Optional;

/** How good the plan is, in two sentences in money, and what the independent check says, last. */
public final class ProofScreen implements Screen {
    private final Shown shown;

    public ProofScreen(Shown shown) {
        this.shown = shown;
    }

    @Override
    public String name() {
        return "proof";
    }

    @Override
    public void print(Page page) {
        WeekPlan plan = shown.plan();
        page.heading("How good this plan is");
        page.say(more(plan.proof().bestForMenu()).map(m -> "For this menu no order is more than " + m + " better.")
                .orElse("For this menu it is not known how much better other orders could be."));
        page.say(more(plan.proof().bestAtAll()).map(m -> "No menu at all can be worth more than " + m + " more.")
                .orElse("It is not known how much more another menu could be worth."));
        if (!plan.proof().how().isBlank()) {
            page.say("How the orders were found: " + plan.proof().how() + ".");
        }
        page.say("Made with --seed " + plan.inputs().seed() + (plan.inputs().tries() > 0
                ? " --steps " + plan.inputs().tries() + ": the same book gives the same plan."
                : ", limited by the clock: another run may end elsewhere."));
        page.gap();
        page.say("Check: " + shown.verdict());
    }

    private Optional<String> more(Optional<Long> best) {
        return best.map(b -> new Cents(Math.max(0, b - shown.plan().value())).toString());
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("what", "figure_usd", "words");
        rows.add("value", Rows.dollars(shown.plan().value()), "");
        shown.plan().proof().bestForMenu().ifPresent(b -> rows.add("best with this menu", Rows.dollars(b), ""));
        shown.plan().proof().bestAtAll().ifPresent(b -> rows.add("best with any menu", Rows.dollars(b), ""));
        return rows.add("check", "", shown.verdict());
    }
}
