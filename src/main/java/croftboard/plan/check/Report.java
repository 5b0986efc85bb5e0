package croftboard.plan.check;

import java.util.ArrayList;
import java.util.List;

/** Collects what the checks find. A broken must is only a finding when the plan does not own up to it. */
final class Report {
    private final List<String> findings = new ArrayList<>();
    private final List<Must> brokenMusts = new ArrayList<>();
    private final List<Verdict.Count> counts = new ArrayList<>();

    /** @param names what a plan that owns up to it must name. @param several one for each demand, not one in all */
    record Must(String what, List<String> names, boolean several) { }

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

    /** A must that the plan may break if it says so under "missing", naming these. */
    void broken(String must, String... names) {
        brokenMusts.add(new Must(must, List.of(names), false));
    }

    /** A component that is missing: the plan names each demand of it. */
    void componentMissing(String must, String name) {
        brokenMusts.add(new Must(must, List.of(name), true));
    }

    List<Must> brokenMusts() {
        return brokenMusts;
    }

    void count(int number, String what) {
        counts.add(new Verdict.Count(number, what));
    }

    Verdict verdict() {
        return new Verdict(List.copyOf(findings), List.copyOf(counts));
    }
}
