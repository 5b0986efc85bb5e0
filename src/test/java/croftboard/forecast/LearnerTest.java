package croftboard.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import croftboard.measure.IsoWeek;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearnerTest {
    private static final IsoWeek FIRST = new IsoWeek(2027, 10);
    private static final DayCurve CURVE = DayCurve.even(LocalTime.of(10, 0), LocalTime.of(20, 0));

    private static Prior prior() {
        Map<DayOfWeek, Double> mean = new EnumMap<>(DayOfWeek.class);
        SimulatedKitchen.days().forEach(d -> mean.put(d, 40.0));
        return new Prior(Map.of("soup", new Prior.Line(0.25, mean), "main", new Prior.Line(0.25, mean)), Map.of(
                "old", new Prior.Dish(1, "bean", "boiled", "plain"), "kin", new Prior.Dish(1, "bean", "boiled", "plain"),
                "stranger", new Prior.Dish(1, "beet", "baked", "spiced"), "loved", new Prior.Dish(1.2, "corn", "fried", "sweet")),
                w -> 1);
    }

    private static Observation sold(int week, DayOfWeek day, String line, String dish, int sold) {
        return new Observation(FIRST.plusWeeks(week).day(day), line, dish, sold + 10, sold, Optional.empty(), Optional.empty());
    }

    private static Learning learn(List<Observation> seen, int weeks) {
        return new Learner(prior(), CURVE).learn(seen, FIRST.plusWeeks(weeks));
    }

    /** Weeks of a shop that is on average just as the book says. */
    private static List<Observation> asExpected(int weeks) {
        Random random = new Random(weeks);
        Demand forty = Demand.ofDay(40, 0.25);
        List<Observation> seen = new ArrayList<>();
        for (int w = 0; w < weeks; w++) {
            for (DayOfWeek day : SimulatedKitchen.days()) {
                seen.add(sold(w, day, "soup", "old", forty.quantile(random.nextDouble())));
                seen.add(sold(w, day, "main", "stranger", forty.quantile(random.nextDouble())));
            }
        }
        return seen;
    }

    @Test
    void nothingSeen_leavesTheBooksFigures() {
        Learning learned = learn(List.of(), 0);
        assertThat(learned.lines().get("soup").days().get(DayOfWeek.MONDAY).mean()).isEqualTo(40);
        assertThat(learned.lines().get("soup").cv()).isEqualTo(0.25);
        assertThat(learned.dishes().get("loved").draw()).isEqualTo(1.2);
        assertThat(learned.season()).isEmpty();
    }

    /** A dish that sells a fifth (a half) more than expected on its first three days, against one that sells as expected. */
    @ParameterizedTest
    @CsvSource({"48, 1.01, 1.12", "60, 1.05, 1.28"})
    void threeDays_doNotSwingAnOrder(int sold, double least, double most) {
        Learning asExpected = learn(withANewDish(40), 8);
        Learning more = learn(withANewDish(sold), 8);
        for (DayOfWeek day : SimulatedKitchen.days()) {
            assertThat(more.mean("soup", day, "kin") / asExpected.mean("soup", day, "kin")).as("the dish on %s", day)
                    .isBetween(least, most);
            assertThat(more.mean("soup", day, "old") / asExpected.mean("soup", day, "old")).as("the other dish on %s", day)
                    .isBetween(1.0, 1.07);
        }
    }

    private static List<Observation> withANewDish(int sold) {
        List<Observation> seen = asExpected(8);
        for (DayOfWeek day : List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY)) {
            seen.removeIf(o -> o.line().equals("soup") && o.date().equals(FIRST.plusWeeks(7).day(day)));
            seen.add(sold(7, day, "soup", "kin", sold));
        }
        return seen;
    }

    @Test
    void manyDays_areBelieved() {
        List<Observation> seen = new ArrayList<>();
        for (int w = 0; w < 30; w++) {
            for (DayOfWeek day : SimulatedKitchen.days()) {
                seen.add(sold(w, day, "soup", w % 2 == 0 ? "old" : "loved", w % 2 == 0 ? 40 : 64));
                seen.add(sold(w, day, "main", "stranger", 40));
            }
        }
        Learning learned = learn(seen, 30);
        assertThat(learned.dishes().get("loved").draw() / learned.dishes().get("old").draw()).isCloseTo(1.6, offset(0.06));
    }

    @Test
    void aNewDish_startsFromItsKin() {
        List<Observation> seen = asExpected(10);
        for (int w = 0; w < 10; w++) {
            int week = w;
            seen.removeIf(o -> o.line().equals("soup") && o.date().equals(FIRST.plusWeeks(week).day(DayOfWeek.TUESDAY)));
            seen.add(sold(w, DayOfWeek.TUESDAY, "soup", "stranger", 40));
            seen.removeIf(o -> o.line().equals("main") && o.date().equals(FIRST.plusWeeks(week).day(DayOfWeek.THURSDAY)));
            seen.add(sold(w, DayOfWeek.THURSDAY, "main", "old", 56));
        }
        Learning learned = learn(seen, 10);
        assertThat(learned.dishes().get("kin").seen()).isZero();
        assertThat(learned.dishes().get("kin").draw()).isGreaterThan(1.01).isLessThan(learned.dishes().get("old").draw());
        assertThat(learned.dishes().get("kin").error()).isGreaterThan(learned.dishes().get("old").error());
        assertThat(learned.dishes().get("loved").draw()).as("no kin were seen").isEqualTo(1.2);
    }

    @Test
    void daysThatRanOut_countAsAtLeast() {
        List<Observation> out = new ArrayList<>();
        for (Observation o : asExpected(8)) {
            boolean monday = o.date().getDayOfWeek() == DayOfWeek.MONDAY;
            out.add(monday ? new Observation(o.date(), o.line(), o.dish(), 30, 30, Optional.empty(), Optional.empty()) : o);
        }
        assertThat(learn(out, 8).lines().get("soup").days().get(DayOfWeek.MONDAY).mean()).isGreaterThan(34);
        List<Observation> early = out.stream().map(o -> o.prepared() == 30 ? new Observation(o.date(), o.line(), o.dish(), 30, 30,
                Optional.of(LocalTime.of(15, 0)), Optional.empty()) : o).toList();
        assertThat(learn(early, 8).lines().get("soup").days().get(DayOfWeek.MONDAY).mean()).as("gone by half of the day")
                .isGreaterThan(46);
        assertThat(learn(early, 8).lines().get("soup").days().get(DayOfWeek.MONDAY).soldOut()).isEqualTo(8);
    }

    @Test
    void eventsAndClosures_areSetAside_andStrangeDaysAreNamedAndWeighedLess() {
        List<Observation> seen = asExpected(8);
        Learning plain = learn(seen, 8);
        seen.add(new Observation(FIRST.plusWeeks(3).day(DayOfWeek.SATURDAY), "soup", "kin", 300, 290, Optional.empty(),
                Optional.of("harvest meal")));
        seen.add(new Observation(FIRST.plusWeeks(3).day(DayOfWeek.SATURDAY), "nowhere", "kin", 30, 29, Optional.empty(), Optional.empty()));
        Learning aside = learn(seen, 8);
        assertThat(aside.lines()).isEqualTo(plain.lines());
        assertThat(aside.passed()).extracting(Learning.Passed::why)
                .containsExactly("the book has no such line any more", "harvest meal");
        seen.add(sold(5, DayOfWeek.SUNDAY, "soup", "kin", 5));
        seen.add(sold(5, DayOfWeek.SATURDAY, "soup", "old", 160));
        Learning odd = learn(seen, 8);
        assertThat(odd.odd()).extracting(o -> o.day().sold()).contains(160);
        assertThat(odd.lines().get("soup").days().get(DayOfWeek.SATURDAY).mean()).isLessThan(48);
    }

    @Test
    void theOrderOfDays_doesNotMatter_andLaterDaysAreNotKnown() {
        SimulatedKitchen kitchen = new SimulatedKitchen(3, 10, 0.3);
        Learner learner = new Learner(kitchen.prior(), kitchen.curve());
        Learning once = learner.learn(kitchen.seen, SimulatedKitchen.FIRST.plusWeeks(8));
        List<Observation> mixed = new ArrayList<>(kitchen.seen);
        Collections.shuffle(mixed, new Random(1));
        assertThat(learner.learn(mixed, SimulatedKitchen.FIRST.plusWeeks(8))).isEqualTo(once);
        mixed.removeIf(o -> !o.date().isBefore(SimulatedKitchen.FIRST.plusWeeks(8).monday()));
        assertThat(learner.learn(mixed, SimulatedKitchen.FIRST.plusWeeks(8))).isEqualTo(once);
    }

    @Test
    void aRise_isFollowed_andGoesOnALittle() {
        List<Observation> seen = new ArrayList<>();
        for (int w = 0; w < 16; w++) {
            for (DayOfWeek day : SimulatedKitchen.days()) {
                int sold = (int) Math.round(40 * Math.exp(0.02 * w));
                seen.add(sold(w, day, "soup", "old", sold));
                seen.add(sold(w, day, "main", "stranger", sold));
            }
        }
        double level = learn(seen, 16).mean("soup", DayOfWeek.MONDAY, "old");
        assertThat(level).isCloseTo(40 * Math.exp(0.02 * 16), offset(2.5));
    }

    @Test
    void backtest_measuresAllWaysOnTheSameDays_andTheLearnedOneWins() {
        SimulatedKitchen kitchen = new SimulatedKitchen(5, 16, 0.3);
        Backtest.Report report = new Backtest(kitchen.prior(), kitchen.curve(), kitchen.seen)
                .over(SimulatedKitchen.FIRST.plusWeeks(8), SimulatedKitchen.FIRST.plusWeeks(15));
        assertThat(report.days()).isEqualTo(kitchen.lines().size() * 6 * 8);
        double learned = report.off().get(Backtest.Way.LEARNED);
        assertThat(learned).isLessThan(report.off().get(Backtest.Way.LAST_WEEK))
                .isLessThan(report.off().get(Backtest.Way.WEEKDAY_MEAN))
                .isLessThan(report.off().get(Backtest.Way.BOOK));
    }

    /** A forecast above what was put out counts as what was put out. */
    @Test
    void backtest_holdsForecastsAgainstWhatCouldSell() {
        Observation out = new Observation(FIRST.monday(), "soup", "old", 30, 30, Optional.empty(), Optional.empty());
        assertThat(Backtest.off(45, out)).isZero();
        assertThat(Backtest.off(25, out)).isEqualTo(5);
        assertThat(Backtest.off(45, sold(0, DayOfWeek.MONDAY, "soup", "old", 30))).isEqualTo(10);
        assertThat(Backtest.off(35, sold(0, DayOfWeek.MONDAY, "soup", "old", 30))).isEqualTo(5);
    }
}
