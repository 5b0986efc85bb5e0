package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.plan.Rotation;
import java.util.Optional;

/** How good the rotation is, in two sentences in money, and what the independent check says, last. */
public final class RotationProofScreen implements Screen {
    private final RotationShown shown;

    public RotationProofScreen(RotationShown shown) {
        this.shown = shown;
    }

    @Override
    public String name() {
        return "proof";
    }

    @Override
    public void print(Page page) {
        Rotation r = shown.rotation();
        page.heading("How good this rotation is");
        page.say(more(r.proof().bestForMenu()).map(m -> "For these menus no orders are more than " + m + " better.")
                .orElse("For these menus it is not known how much better other orders could be."));
        page.say(more(r.proof().bestAtAll()).map(m -> "No menus at all" + (r.inputs().newAMonth().isPresent()
                ? " with these new dishes" : "") + " can be worth more than " + m + " more.")
                .orElse(r.weeks().size() > croftboard.plan.Rotator.AS_ONE
                        ? "So many weeks are planned a few at a time: how much more other menus could be worth is not known."
                        : "It is not known how much more other menus could be worth."));
        page.say("Made with --seed " + r.inputs().seed() + (r.inputs().steps() > 0 ? " --steps " + r.inputs().steps()
                + ": the same book and plans give the same rotation." : ", limited by the clock: another run may end elsewhere."));
        page.gap();
        page.say("Check: " + shown.verdict());
    }

    private Optional<String> more(Optional<Long> best) {
        long value = shown.rotation().value();
        return best.map(b -> new Cents(Math.max(0, b - value)) + (value > 0 ? " ("
                + Ratio.of(Math.max(0, b - value) * 100).over(value).toDecimal(2) + " %)" : ""));
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("what", "figure_usd", "words");
        rows.add("value", Rows.dollars(shown.rotation().value()), "");
        shown.rotation().proof().bestForMenu().ifPresent(b -> rows.add("best with these menus", Rows.dollars(b), ""));
        shown.rotation().proof().bestAtAll().ifPresent(b -> rows.add("best with any menus", Rows.dollars(b), ""));
        return rows.add("check", "", shown.verdict());
    }
}
