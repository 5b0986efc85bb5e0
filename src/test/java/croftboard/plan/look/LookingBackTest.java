package croftboard.plan.look;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.cli.SamplePlan;
import croftboard.forecast.Observation;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.Left;
import croftboard.ledger.Quantity;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LookingBackTest {
    private static final Book BOOK = SamplePlan.book();
    private static final LocalDate MONDAY = new IsoWeek(2027, 33).monday();
    private static final LookBack LOOK = LookingBack.of(BOOK, SamplePlan.complete(BOOK), PastWeeks.ledger(PastWeeks.lookedAt()));

    private static LookBack.Run run(String line, int day) {
        return LOOK.runs().stream().filter(r -> r.line().equals(line) && r.first().equals(MONDAY.plusDays(day))).findFirst().orElseThrow();
    }

    @Test
    void sheets_sayWhatWasPutOutSoldLeftAndWhenItRanOut() {
        assertThat(run("hot-main-1", 0)).isEqualTo(new LookBack.Run("hot-main-1", "lentil-bake", MONDAY, MONDAY, 40, Optional.of(40),
                Optional.of(40), Optional.of(0), 1, Optional.of(LocalTime.of(12, 45)), 0));
        assertThat(run("hot-main-1", 1).left()).contains(7);
        assertThat(run("hot-main-1", 2).ranOutDays()).isEqualTo(1);
    }

    /** No sheet came back: the register says what sold, the plan what there was, and what was not sold is there the next day. */
    @Test
    void withoutASheet_registerAndPlanSay_andUnknownDaysAreTold() {
        assertThat(run("hot-main-1", 4).sold()).contains(53);
        assertThat(run("hot-main-1", 4).ranOutDays()).as("53 were planned").isEqualTo(1);
        assertThat(run("cold-salad-1", 0).sold()).contains(61);
        assertThat(run("cold-salad-1", 0).ranOutDays()).isZero();
        assertThat(run("cold-salad-1", 3).sold()).isEmpty();
        assertThat(run("cold-salad-1", 3).silent()).isEqualTo(3);
        assertThat(run("cold-salad-1", 3).difference()).isEmpty();
        List<Observation> days = SoldDays.of(PastWeeks.ledger(PastWeeks.lookedAt()), BOOK, w -> Optional.of(SamplePlan.complete(BOOK)), MONDAY,
                MONDAY.plusDays(6)).all();
        Map<LocalDate, Integer> salad = days.stream().filter(o -> o.line().equals("cold-salad-1"))
                .collect(Collectors.toMap(Observation::date, Observation::prepared));
        assertThat(salad).isEqualTo(Map.of(MONDAY, 74, MONDAY.plusDays(1), 54, MONDAY.plusDays(2), 32));
    }

    /** The harvest meal of 19 August is for 60: more than a quarter of a Thursday. */
    @Test
    void daysOfLargeEvents_andClosures_teachNothing() {
        List<Entry> one = List.of(left(MONDAY.plusDays(3), Optional.of(30), Optional.of(20), Optional.of(10)));
        assertThat(SoldDays.of(PastWeeks.ledger(one), BOOK, w -> Optional.empty(), MONDAY, MONDAY.plusDays(6)).all()).singleElement()
                .satisfies(o -> assertThat(o.aside()).hasValueSatisfying(why -> assertThat(why).startsWith("event: ")));
    }

    private static Left left(LocalDate date, Optional<Integer> prepared, Optional<Integer> sold, Optional<Integer> left) {
        Function<Integer, Quantity> q = Quantity::of;
        return new Left(Draft.line(1), date, "", "", "hot-main-1", "lentil-bake", 0, prepared.map(q), sold.map(q), left.map(q), Optional.empty(), "");
    }

    private static Observation only(Left sheet) {
        List<Entry> one = new ArrayList<>(List.of(sheet));
        return SoldDays.of(PastWeeks.ledger(one), BOOK, w -> Optional.empty(), MONDAY, MONDAY.plusDays(6)).all().get(0);
    }

    @Test
    void sheetsWithGaps_areFilledWhereTheRestSaysIt_andSetAsideElsewhere() {
        assertThat(only(left(MONDAY, Optional.of(30), Optional.empty(), Optional.of(10)))).extracting(Observation::sold, Observation::teaches)
                .containsExactly(20, true);
        assertThat(only(left(MONDAY, Optional.empty(), Optional.of(20), Optional.of(10)))).extracting(Observation::prepared, Observation::soldOut)
                .containsExactly(30, false);
        assertThat(only(left(MONDAY, Optional.empty(), Optional.of(20), Optional.empty())).aside()).contains("nobody wrote what was put out or left");
        assertThat(only(left(MONDAY, Optional.of(30), Optional.empty(), Optional.empty())).aside()).contains("nobody wrote what was sold");
    }

    @Test
    void money_isHeldAgainstThePlan_andSaysWhatIsNotCosted() {
        assertThat(LOOK.money()).isEqualTo(new LookBack.Money(240_500, Optional.of(207_250L + 550 * 61), 2, 11_300, Optional.of(8_600L), 2, 6,
                Optional.of(2_600L), Ratio.of(20), 1));
    }

    @Test
    void figuresOfTheManagers_areJudged() {
        assertThat(LOOK.own()).singleElement().satisfies(o -> {
            assertThat(o.verdict()).isEqualTo("yours was closer");
            assertThat(o.sold()).contains(39);
        });
        assertThat(new LookBack.Own(MONDAY, "a", Optional.of(50.0), 70, Optional.of(60), true, "x").verdict()).as("it ran out: 70 may be right")
                .isEqualTo("yours was closer");
        assertThat(new LookBack.Own(MONDAY, "a", Optional.of(50.0), 70, Optional.of(52), false, "x").verdict()).isEqualTo("the forecast was closer");
        assertThat(new LookBack.Own(MONDAY, "a", Optional.of(50.0), 70, Optional.empty(), false, "x").verdict()).startsWith("not known");
    }

    @Test
    void yields_callForAChange_whenEnoughBatchesSaySo() {
        assertThat(LOOK.yields()).containsExactly(new LookBack.Yield("house-marinara", 3, Ratio.of(19_650_000, 21_000_000)),
                new LookBack.Yield("soffritto", 1, Ratio.ONE));
        assertThat(LOOK.yields()).extracting(LookBack.Yield::change).containsExactly(true, false);
    }

    @Test
    void menuMix_countsTheRegistersDishes() {
        assertThat(LOOK.mix().orElseThrow().dishes()).extracting(d -> d.sold().dish()).containsExactly("lentil-bake", "penne-bake", "chickpea-salad");
        assertThat(LookingBack.of(BOOK, SamplePlan.complete(BOOK), PastWeeks.ledger(List.of())).mix()).isEmpty();
    }
}
