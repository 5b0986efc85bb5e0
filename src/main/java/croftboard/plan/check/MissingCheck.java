package croftboard.plan.check;

import croftboard.plan.WeekPlan;
import java.util.List;

/** What the plan says is missing agrees with what really is: complete is what breaks no must, and nothing else. */
final class MissingCheck {
    private final Subject of;
    private final Report report;

    MissingCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        List<WeekPlan.Missing> claimed = of.plan().missing();
        List<String> real = report.brokenMusts();
        if (claimed.isEmpty()) {
            real.forEach(must -> report.find("missing: the plan calls itself complete, but " + must));
        } else if (real.isEmpty()) {
            report.find("missing: the plan names " + claimed.size() + ", for example \"" + claimed.get(0).what()
                    + "\", but nothing is missing");
        } else if (claimed.size() != real.size() && !(report.componentsMissing() && claimed.size() > real.size())) {
            report.find("missing: the plan names " + claimed.size() + ", derived again there are " + real.size() + ": "
                    + String.join("; ", real));
        }
    }
}
