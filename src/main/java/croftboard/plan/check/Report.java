package croftboard.plan.check;

import java.util.ArrayList;
import java.util.List;

/** Collects what the checks find. A broken must is only a finding when the plan does not own up to it. */
final class Report {
    private final List<String> findings = new ArrayList<>();
    private final List<String> brokenMusts = new ArrayList<>();
    private final List<Verdict.Count> counts = new ArrayList<>();
    private boolean componentsMissing;

    void find(String finding) {
        findings.add(finding);
    }

    void findIf(boolean wrong, String finding) {
        if (wrong) {
            findings.add(finding);
        }
    }

    /** Two figures that must be equal. */
    void same(String what, Object claimed, Object derived) {
        findIf(!claimed.equals(derived), what + ": the plan says " + claimed + ", derived again it is " + derived);
    }

    void sameCents(String what, long claimed, long derived) {
        findIf(claimed != derived, what + ": the plan says " + Say.money(claimed) + ", derived again it is "
                + Say.money(derived));
    }

    void sameMass(String what, long claimed, long derived) {
        findIf(claimed != derived, what + ": the plan says " + Say.mass(claimed) + ", derived again it is "
                + Say.mass(derived));
    }

    /** A must that the plan may break if it says so under "missing". */
    void broken(String must) {
        brokenMusts.add(must);
    }

    void componentMissing(String must) {
        componentsMissing = true;
        brokenMusts.add(must);
    }

    List<String> brokenMusts() {
        return brokenMusts;
    }

    /** A missing component may stand for several demands, so that broken musts cannot be counted one by one. */
    boolean componentsMissing() {
        return componentsMissing;
    }

    void count(int number, String what) {
        counts.add(new Verdict.Count(number, what));
    }

    Verdict verdict() {
        return new Verdict(List.copyOf(findings), List.copyOf(counts));
    }
}
