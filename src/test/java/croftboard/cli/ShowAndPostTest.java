package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShowAndPostTest {
    @TempDir
    private Path folder;

    private Desk withPlan(boolean complete) {
        Desk desk = new Desk(folder, Desk.always(complete));
        desk.run("plan", "2027-W33");
        return desk;
    }

    @ParameterizedTest
    @CsvSource({"menu,Menu", "orders,Orders", "prep,Prep", "money,Money", "coverage,Promises",
        "share,Expected local share", "proof,How good this plan is", "MENU,Menu"})
    void part_isAScreenOfItsOwn(String part, String heading) {
        Desk.Run run = withPlan(true).run("show", "2027-W33", part);
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("Tinderbox Lane Larder, week 2027-W33").contains(heading + "\n====");
        assertThat(run.out().lines().filter(l -> l.startsWith("==="))).hasSize(2);
    }

    @Test
    void all_endsWithTheChecksVerdict() {
        assertThat(withPlan(true).run("show", "2027-W33").out()).endsWith("Check: nothing was found wrong.\n");
    }

    @Test
    void incompletePlan_isShown_exit3() {
        assertThat(withPlan(false).run("show", "2027-W33", "menu").code()).isEqualTo(3);
    }

    @Test
    void version_andCurrent() {
        Desk desk = withPlan(true);
        desk.run("plan", "2027-W33");
        assertThat(desk.run("show", "2027-W33", "menu").out()).contains("Version 2, a draft.");
        assertThat(desk.run("show", "2027-W33@1", "menu").out()).contains("Version 1, a draft.");
        assertThat(desk.run("show", "2027-W33@3", "menu").code()).isEqualTo(2);
        assertThat(desk.run("show", "2027-W34").err()).contains("there is no plan of 2027-W34")
                .contains("-> croftboard plan 2027-W34");
    }

    @Test
    void bookChangedSince_isSaid_andTheCheckIsNotClaimed() {
        Desk desk = withPlan(true);
        desk.write("seasons/targets.yaml", "- {weeks: W01..W53, local: 30%}\n");
        assertThat(desk.run("show", "2027-W33").out()).contains("The book has changed since this plan was made")
                .contains("Check: the book has changed since");
    }

    @Test
    void csv_isOneTable_withAHeader() {
        Desk.Run run = withPlan(true).run("show", "2027-W33", "orders", "--format", "csv");
        assertThat(run.out()).startsWith("vendor,vendor_name,cut_off,delivery,item,").contains(
                "hollow-brook,Hollow Brook Acre,2027-08-13T12:00,2027-08-16,carrot,carrots,25 lb sack,4,21.50,86.00,local,");
        assertThat(run.out().split("\r\n")).hasSize(8);
    }

    @Test
    void csvOfAll_exit2() {
        assertThat(withPlan(true).run("show", "2027-W33", "--format", "csv").code()).isEqualTo(2);
    }

    @Test
    void jsonOfAPart_holdsThatPartOnly() throws IOException {
        JsonNode all = new ObjectMapper().readTree(withPlan(true).run("show", "2027-W33", "share", "--format", "json").out());
        assertThat(all.get("share").get(0).get("local_usd").decimalValue()).isEqualByComparingTo("113.00");
        assertThat(all.has("menu")).isFalse();
        assertThat(all.get("version").intValue()).isEqualTo(1);
    }

    @Test
    void post_makesItTheOneThatPeopleWorkFrom() {
        Desk desk = withPlan(true);
        Desk.Run run = desk.run("post", "2027-W33");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("2027-W33@1 is posted");
        assertThat(desk.run("show", "2027-W33", "menu").out()).contains("posted: people work from it.");
        desk.run("plan", "2027-W33");
        assertThat(desk.run("show", "2027-W33", "menu").out()).contains("Version 2, a draft.");
        assertThat(desk.run("post", "2027-W33@2").out()).contains("takes the place of version 1");
    }

    @Test
    void postOfAnIncompletePlan_exit3_nothingPosted() {
        Desk desk = withPlan(false);
        Desk.Run run = desk.run("post", "2027-W33");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("cannot be posted").contains("frozen peas").contains("What would mend it");
        assertThat(desk.run("show", "2027-W33", "menu").out()).contains("Version 1, a draft.");
    }

    @Test
    void postOfAPlanInWhichTheCheckFindsSomething_exit3() {
        Desk desk = new Desk(folder, Desk.always(true), (b, p, given, now) -> new PlanCheck.Verdict(false, "an order does not add up."),
                new Desk.Stop());
        desk.run("plan", "2027-W33");
        Desk.Run run = desk.run("post", "2027-W33");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("an order does not add up.");
        assertThat(desk.run("show", "2027-W33", "menu").out()).contains("a draft.");
    }

    @Test
    void postOfNothing_exit2() {
        Desk desk = withPlan(true);
        assertThat(desk.run("post", "2027-W40").code()).isEqualTo(2);
        assertThat(desk.run("post", "2027-W33@9").code()).isEqualTo(2);
    }
}
