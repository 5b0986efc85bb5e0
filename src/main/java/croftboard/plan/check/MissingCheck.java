package croftboard.plan.check;

import croftboard.plan.WeekPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the plan says is missing agrees with what really is: complete is what breaks no must, and nothing else. */
final class MissingCheck {
    private final Subject of;
    private final Report report;

    MissingCheck(Subject of, Report report) {
        this.of = of;
        this.report = report;
    }

    void run() {
        List<String> open = new ArrayList<>(of.plan().missing().stream().map(WeekPlan.Missing::what).toList());
        for (Report.Must must : report.brokenMusts()) {
            Optional<String> named = open.stream().filter(what -> names(what, must)).findFirst();
            if (named.isEmpty()) {
                report.find("missing: the plan does not say that " + must.what());
            } else if (must.several()) {
                open.removeIf(what -> names(what, must));
            } else {
                open.remove(named.get());
            }
        }
        open.forEach(what -> report.find("missing: the plan says \"" + what + "\", which is not so"));
    }

    private static boolean names(String what, Report.Must must) {
        return must.names().stream().allMatch(what::contains);
    }
}
