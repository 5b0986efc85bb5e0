package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
    private final StringWriter err = new StringWriter();

    private ProgressLine line(boolean terminal, int width) {
        return new ProgressLine(new PrintWriter(err), terminal, width, plan -> "THE WHOLE WEEK\n");
    }

    @Test
    void onATerminal_oneLineIsRewritten_neverWiderThanTheScreen() {
        ProgressLine line = line(true, 60);
        line.doing("menus, search 1 of 4");
        line.better(SamplePlan.incomplete(SamplePlan.book()));
        line.doing("a very long thing that goes on and on and does not fit into one line of this screen");
        line.clear();
        assertThat(err.toString()).doesNotContain("\n").contains("no plan yet, now: menus, search 1 of 4")
                .contains("best so far $3,336.32, not complete");
        assertThat(err.toString().split("\r")).allMatch(s -> s.length() < 60);
    }

    @Test
    void firstCompletePlan_isShownWholeOnATerminal_once() {
        ProgressLine line = line(true, 80);
        line.better(SamplePlan.incomplete(SamplePlan.book()));
        assertThat(err.toString()).doesNotContain("THE WHOLE WEEK");
        line.better(SamplePlan.complete(SamplePlan.book()));
        line.better(SamplePlan.complete(SamplePlan.book()));
        assertThat(err.toString()).containsOnlyOnce("THE WHOLE WEEK").containsOnlyOnce("First complete plan after")
                .contains("worth $3,336.32");
    }

    @Test
    void elsewhere_plainLinesWithoutReturns() {
        ProgressLine line = line(false, 80);
        line.doing("menus");
        line.tick();
        line.better(SamplePlan.complete(SamplePlan.book()));
        line.clear();
        assertThat(err.toString()).doesNotContain("\r").doesNotContain("THE WHOLE WEEK").contains("croftboard: menus")
                .contains("First complete plan");
        assertThat(line.best()).isPresent();
    }
}
