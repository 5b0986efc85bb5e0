package croftboard.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.PlanRequest;
import croftboard.plan.Planner;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.check.PlanChecker;
import croftboard.plan.check.Revised;
import croftboard.plan.check.Verdict;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Scripted breaks of the demo week: what is done stays, and the independent checker finds nothing wrong. */
class RepairsHoldTest {
    private static final Book BOOK = BookReader.read(Path.of("").toAbsolutePath()).orElseThrow();
    private static WeekPlan plan;

    @BeforeAll
    static void makePlan() {
        PlanRequest request = new PlanRequest(IsoWeek.parse("2027-W33").orElseThrow(), 1, Duration.ofSeconds(5),
                OptionalLong.of(20_000), new TreeMap<>(), Optional.empty(), Given.NOTHING, new PlanRequest.Progress() {
                    @Override
                    public void doing(String what) { }

                    @Override
                    public void better(WeekPlan better) { }
                }, () -> false);
        plan = new Planner(BOOK, Optional.empty()).plan(request).fold(p -> p.plan(), r -> null);
        assertThat(PlanChecker.check(BOOK, plan, Given.NOTHING, Optional.empty()).findings()).isEmpty();
    }

    /** A vendor and item that the plan orders on a delivery after that moment, the dearest line first. */
    private static String ordered(LocalDateTime now, int which) {
        return plan.orders().stream().filter(o -> o.delivery().isAfter(now.toLocalDate()))
                .flatMap(o -> o.lines().stream().filter(l -> l.packs() > 1).map(l -> new Object[] {o, l}))
                .sorted((a, b) -> Long.compare(((WeekPlan.OrderLine) b[1]).cost(), ((WeekPlan.OrderLine) a[1]).cost()))
                .skip(which).findFirst().map(x -> ((WeekPlan.Order) x[0]).vendor() + "/" + ((WeekPlan.OrderLine) x[1]).item()
                        + " got 1 " + ChangeSentence.day(((WeekPlan.Order) x[0]).delivery().getDayOfWeek())).orElseThrow();
    }

    private static String vendorOf(String sentence) {
        return sentence.substring(0, sentence.indexOf('/'));
    }

    private static String lateByADay(String ordered) {
        String day = ordered.substring(ordered.lastIndexOf(' ') + 1);
        List<String> days = List.of("mon", "tue", "wed", "thu", "fri", "sat");
        return vendorOf(ordered) + " late " + day + " until " + days.get(days.indexOf(day) + 1);
    }

    private static String dishMade(String day) {
        return plan.menu().stream().filter(r -> r.days().size() > 1 && r.slot().startsWith(day)).findFirst()
                .flatMap(WeekPlan.Served::recipe).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"nothing", "short", "two short", "vendor out", "closed", "cook out", "oven out", "item out",
        "batch lost", "price", "late", "lost", "more"})
    void repair_isComplete_leavesWhatIsDone_andHoldsTheCheck(String kind) {
        LocalDateTime now = LocalDateTime.parse("2027-08-17T07:00");
        List<String> say = switch (kind) {
            case "nothing" -> List.of();
            case "short" -> List.of(ordered(now, 0));
            case "two short" -> List.of(ordered(now, 1), ordered(now, 2));
            case "vendor out" -> List.of(vendorOf(ordered(now, 3)) + " out");
            case "closed" -> List.of("closed thu");
            case "cook out" -> List.of("cook cook-1 out wed");
            case "oven out" -> List.of("equipment flat-top out fri");
            case "item out" -> List.of("item " + ordered(now, 0).replaceAll(".*/| got.*", "") + " out");
            case "batch lost" -> List.of("batch " + dishMade("mon") + " mon lost");
            case "price" -> List.of(ordered(now, 0).replaceAll(" got.*", "") + " price $99.00");
            case "late" -> List.of(lateByADay(ordered(now, 0)));
            case "lost" -> List.of("zucchini lost 1 lb");
            default -> List.of(ordered(now, 0).replaceAll(" got.*", "") + " more 5 at $2.00 thu");
        };
        ChangeGrammar.Read read = new ChangeGrammar(BOOK).read(say);
        assertThat(read.faults()).isEmpty();
        ChangedWeek week = ChangedWeek.of(BOOK, plan, Given.NOTHING, read.changes(), now);
        assertThat(week.faults()).isEmpty();
        Repair repair = new Repair(BOOK, plan, week, new WeekPlan.Revision(1, now, say));
        WeekPlan first = repair.atOnce(1);
        for (WeekPlan after : List.of(first, repair.settled(new WeekRun.Effort(1, Duration.ZERO, OptionalLong.of(4_000),
                () -> false), p -> { }))) {
            Verdict verdict = PlanChecker.check(BOOK, after, Given.NOTHING, Optional.empty(),
                    Optional.of(new Revised(plan, now, read.changes())));
            assertThat(verdict.findings()).isEmpty();
            assertThat(after.complete()).as(after.missing().toString()).isTrue();
            int dishes = Disturbance.between(plan, after).dishes();
            assertThat(dishes).as("%d dishes, worth %d", dishes, after.value()).isLessThanOrEqualTo(
                    kind.equals("nothing") ? 0 : 16);
        }
    }
}
