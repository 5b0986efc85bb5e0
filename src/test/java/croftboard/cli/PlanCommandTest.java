package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import croftboard.measure.IsoWeek;
import croftboard.plan.PlanAnswer;
import croftboard.plan.PlanRequest;
import croftboard.plan.WeekPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanCommandTest {
    @TempDir
    private Path folder;

    @Test
    void completePlan_isPrintedAndKept_exit0() throws IOException {
        Desk desk = new Desk(folder, Desk.always(true));
        Desk.Run run = desk.run("plan", "2027-W33");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Version 1, a draft.", "Menu\n====", "Orders\n======", "Money\n=====",
                "Expected local share", "Broken promises: 3, together $196.45.")
                .endsWith("Check: nothing was found wrong.\n");
        assertThat(run.err()).contains("First complete plan", "worth $3,336.32", "kept as 2027-W33@1, a draft");
        assertThat(desk.book.resolve("plans/2027-W33/1.json")).exists();
    }

    @Test
    void incompletePlan_isPrintedAndKept_exit3() {
        Desk desk = new Desk(folder, Desk.always(false));
        Desk.Run run = desk.run("plan", "2027-W33");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).contains("NOT COMPLETE: 1 thing").contains("cannot be posted");
        assertThat(desk.book.resolve("plans/2027-W33/1.json")).exists();
    }

    @Test
    void weekWithAPostedPlan_getsANewDraftBesideIt() {
        Desk desk = new Desk(folder, Desk.always(true));
        desk.run("plan", "2027-W33");
        desk.run("post", "2027-W33@1");
        Desk.Run run = desk.run("plan", "2027-W33");
        assertThat(run.err()).contains("kept as 2027-W33@2, a new draft beside the posted version 1");
    }

    @Test
    void requestCarriesWhatWasTyped() {
        List<PlanRequest> asked = new ArrayList<>();
        Desk desk = new Desk(folder, (book, now, request) -> {
            asked.add(request);
            return Desk.always(true).plan(book, now, request);
        });
        desk.run("plan", "2027-W33");
        desk.run("plan", "2027-W34", "--steps", "50", "--seed", "9", "--keep", "mon/hot-main-1=lentil-bake", "--keep",
                "tue/hot-main-1=penne-bake", "--from", "2027-W33");
        desk.run("plan", "2027-W34", "--time", "2min");
        assertThat(asked.get(0).time()).hasSeconds(20);
        assertThat(asked.get(0).seed()).isEqualTo(1);
        assertThat(asked.get(1).steps()).hasValue(50);
        assertThat(asked.get(1).seed()).isEqualTo(9);
        assertThat(asked.get(1).keep()).isEqualTo(Map.of("mon/hot-main-1", "lentil-bake", "tue/hot-main-1", "penne-bake"));
        assertThat(asked.get(1).from().orElseThrow().week()).isEqualTo(new IsoWeek(2027, 33));
        assertThat(asked.get(2).time()).hasMinutes(2);
    }

    @Test
    void from_listsWhatDiffers_againstThePlanAsItWasBefore() {
        Desk desk = new Desk(folder, (book, now, request) -> {
            WeekPlan plan = SamplePlan.complete(book);
            return new PlanAnswer.Planned(request.from().isEmpty() ? plan : withoutOrders(plan), false);
        });
        desk.run("plan", "2027-W33");
        Desk.Run run = desk.run("plan", "2027-W33", "--from", "2027-W33");
        String told = run.out().substring(run.out().indexOf("What differs from the plan of 2027-W33"));
        assertThat(told).containsPattern("0 differ, [1-9]\\d* are as before").containsPattern("[1-9]\\d* differ, 0 are as before");
    }

    private static WeekPlan withoutOrders(WeekPlan p) {
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), p.menu(), p.batches(), List.of(), p.needs(), p.flows(),
                p.surplus(), p.account(), p.promises(), p.share(), p.proof(), p.missing(), p.swaps());
    }

    @Test
    void noWeek_isTheNextWhoseFirstCutOffIsNotPast() {
        List<IsoWeek> asked = new ArrayList<>();
        Desk desk = new Desk(folder, (book, now, request) -> {
            asked.add(request.week());
            return Desk.always(true).plan(book, now, request);
        });
        // Friday 6 August 2027, 10:00 in New York: the first cut-off of W32 is Friday 12:00
        desk.run("plan");
        assertThat(asked).containsExactly(new IsoWeek(2027, 32));
    }

    @Test
    void out_isWrittenThere_andNotIntoPlans() throws IOException {
        Desk desk = new Desk(folder, Desk.always(true));
        Path file = folder.resolve("plan.json");
        Desk.Run run = desk.run("plan", "2027-W33", "--out", file.toString());
        assertThat(run.code()).isZero();
        assertThat(croftboard.plan.file.PlanFile.read(Files.readString(file))).isEqualTo(
                new croftboard.plan.file.PlanReading.Read(SamplePlan.complete(SamplePlan.book())));
        assertThat(desk.book.resolve("plans")).doesNotExist();
        try (var files = Files.list(folder)) {
            assertThat(files.map(p -> p.getFileName().toString())).containsExactlyInAnyOrder("book", "plan.json");
        }
    }

    @Test
    void outThatCannotBe_isToldBeforeThePlanning() {
        Desk desk = new Desk(folder, (book, now, request) -> {
            throw new IllegalStateException("planned all the same");
        });
        Desk.Run run = desk.run("plan", "2027-W33", "--out", folder.resolve("no/where.json").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("cannot be written ->");
    }

    @Test
    void json_isOneObjectWithEveryPart() throws IOException {
        Desk.Run run = new Desk(folder, Desk.always(true)).run("plan", "2027-W33", "--format", "json");
        JsonNode all = new ObjectMapper().readTree(run.out());
        assertThat(all.get("value_usd").decimalValue()).isEqualByComparingTo("3336.32");
        assertThat(all.get("complete").booleanValue()).isTrue();
        assertThat(all.fieldNames()).toIterable().contains("menu", "orders", "prep", "money", "coverage", "share", "proof");
        assertThat(all.get("menu")).hasSize(12);
    }

    @Test
    void json_beginsWithTheFigures_secondsNeverEnterThePlanFile() throws IOException {
        Desk desk = new Desk(folder, Desk.always(true));
        JsonNode all = new ObjectMapper().readTree(desk.run("plan", "2027-W33", "--format", "json").out());
        assertThat(all.fieldNames()).toIterable().startsWith("week", "valueCents", "boundCents", "seconds", "steps",
                "verdict", "localShare");
        assertThat(all.get("valueCents").longValue()).isEqualTo(333_632);
        assertThat(all.get("seconds").doubleValue()).isBetween(0.0, 3_600.0);
        assertThat(all.get("localShare").doubleValue()).isBetween(0.0, 1.0);
        assertThat(Files.readString(desk.book.resolve("plans/2027-W33/1.json"))).doesNotContain("econds");
        JsonNode shown = new ObjectMapper().readTree(desk.run("show", "2027-W33", "--format", "json").out());
        assertThat(shown.get("seconds")).isNull();
        assertThat(shown.get("boundCents")).isEqualTo(all.get("boundCents"));
    }

    @Test
    void prove_asksForItForFiveMinutes_andTheScreenSaysHowItEnded() {
        List<PlanRequest> asked = new ArrayList<>();
        Desk desk = new Desk(folder, (book, now, request) -> {
            asked.add(request);
            return Desk.always(true).plan(book, now, request);
        });
        Desk.Run run = desk.run("plan", "2027-W33", "--prove");
        assertThat(run.out()).containsAnyOf("Proved: no plan can be worth more than 0.1 %", "Not proved");
        desk.run("plan", "2027-W33", "--prove", "--time", "7min");
        desk.run("plan", "2027-W33");
        assertThat(asked).extracting(PlanRequest::prove).containsExactly(true, true, false);
        assertThat(asked).extracting(r -> r.time().toSeconds()).containsExactly(300L, 420L, 20L);
        assertThat(desk.run("plan", "2027-W33", "--prove", "--steps", "9").err()).contains("by the clock");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-W60", "next", "--time=20x", "--time=99h", "--steps=0", "--keep=mon", "--seed=x",
        "--from=2027-W33@0", "--from=2027-W01", "--format=csv", "--format=pdf", "--unknown"})
    void wrongUse_exit2_nothingWritten(String word) {
        Desk desk = new Desk(folder, Desk.always(true));
        Desk.Run run = desk.run("plan", word);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isNotBlank();
        assertThat(desk.book.resolve("plans")).doesNotExist();
    }

    @Test
    void timeAndStepsTogether_exit2() {
        Desk.Run run = new Desk(folder, Desk.always(true)).run("plan", "--time", "5s", "--steps", "5");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("one of the two");
    }

    @Test
    void keepOfOnePlaceTwice_exit2() {
        Desk.Run run = new Desk(folder, Desk.always(true)).run("plan", "--keep", "mon/soup=a", "--keep", "mon/soup=b");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--keep mon/soup is there twice");
    }

    @Test
    void refusedRequest_exit2_everyFaultOnALine() {
        Desk.Run run = new Desk(folder, (book, now, request) -> new PlanAnswer.Refused(List.of("one -> a", "two -> b")))
                .run("plan", "2027-W33");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("one -> a\ntwo -> b".replace("\n", System.lineSeparator()));
    }

    @Test
    void faultyBook_exit2_nothingWritten() {
        Desk desk = new Desk(folder, Desk.always(true));
        desk.write("seasons/targets.yaml", "- nothing\n");
        Desk.Run run = desk.run("plan", "2027-W33");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("seasons/targets.yaml:");
        assertThat(desk.book.resolve("plans")).doesNotExist();
    }

    @Test
    void faultOfOurOwn_exit1_oneLine_traceOnlyWhenAsked() {
        Desk desk = new Desk(folder, (book, now, request) -> {
            throw new IllegalStateException("no [x] in a book\nsecond line");
        });
        Desk.Run run = desk.run("plan", "2027-W33");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err().lines()).containsExactly(
                "croftboard: no [x] in a book (a fault of our own; --trace prints where)");
        assertThat(desk.run("plan", "2027-W33", "--trace").err()).contains("\tat croftboard.cli.");
    }
}
