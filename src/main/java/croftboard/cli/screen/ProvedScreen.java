package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.Proving;
import croftboard.plan.WeekPlan;
import java.util.Optional;

/** How proving ended: as far as was asked, or with the time. */
public final class ProvedScreen implements Screen {
    private final WeekPlan plan;

    public ProvedScreen(WeekPlan plan) {
        this.plan = plan;
    }

    @Override
    public String name() {
        return "proved";
    }

    @Override
    public void print(Page page) {
        page.gap();
        page.say(words());
    }

    private String words() {
        Optional<Long> best = plan.proof().bestAtAll();
        if (proved()) {
            return "Proved: no plan can be worth more than 0.1 % more than this one.";
        }
        return best.isEmpty() ? "Not proved: nothing could be proved about other menus."
                : "Not proved within 0.1 %: it ended with " + new Cents(best.get() - plan.value())
                        + " between this plan and what no plan can pass.";
    }

    private boolean proved() {
        return plan.complete() && plan.proof().bestAtAll().filter(b -> Proving.proved(plan.value(), b)).isPresent();
    }

    @Override
    public Rows rows() {
        return new Rows("proved", "words").add(proved(), words());
    }
}
