package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.RandomBook;
import croftboard.book.TinyBook;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import croftboard.need.Account;
import croftboard.need.Enumeration;
import croftboard.need.WeekProblem;
import croftboard.plan.check.RotationChecker;
import croftboard.plan.file.RotationFile;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class RotatorTest {
    private static final int BOOKS = Integer.getInteger("croftboard.tiny", 4);

    private static RotationRequest request(WeekSpan span, OptionalInt cycle, long steps, Optional<Set<String>> served) {
        RotationRequest.Progress silent = new RotationRequest.Progress() {
            @Override
            public void doing(String what) { }

            @Override
            public void better(long cents, boolean complete) { }
        };
        return new RotationRequest(span, cycle, 1, Duration.ZERO, OptionalLong.of(steps), week -> Given.NOTHING, served,
                silent, () -> false);
    }

    private static Rotation rotate(Book book, int weeks, OptionalInt cycle, long steps) {
        return new Rotator(book, Optional.empty(), request(WeekSpan.of(RandomBook.WEEK, weeks), cycle, steps,
                Optional.empty())).rotate();
    }

    /** A tiny book of two weeks: two days a week, each vendor comes once in each, food lives into the second. */
    private static Book tiny(long seed) {
        Book b = TinyBook.of(seed);
        Kitchen k = b.kitchen();
        Kitchen twoDays = new Kitchen(k.name(), k.place(), k.zone(), k.paper(), EnumSet.of(DayOfWeek.MONDAY,
                DayOfWeek.WEDNESDAY), k.prepDays(), k.lines(), k.gapDays(), k.stations(), k.cooks(), k.receiving(),
                k.equipment(), k.surplusWorth(), k.leftWorth(), k.goodwill(), k.wastePerPound(), k.promises(), k.local(),
                k.healthCodeEdition(), k.healthAuthority());
        Map<String, Vendor> vendors = new TreeMap<>();
        b.vendors().forEach((id, v) -> vendors.put(id, new Vendor(v.id(), v.name(), v.kind(), v.place(), v.deliveries(),
                v.minimum(), v.fee(), v.mayBuy().map(s -> new Vendor.Span(s.from(), s.to().plusWeeks(1))),
                v.offers().stream().map(RotatorTest::two).toList(), v.commitments(), v.priorities())));
        return new Book(twoDays, b.ingredients(), b.recipes(), vendors, b.seasons(), b.lists(), b.onHand(), b.fingerprint());
    }

    private static Vendor.Offer two(Vendor.Offer o) {
        return new Vendor.Offer(o.item(), o.as(), o.pack(), o.holds(), o.price(), o.breaks(), o.on(), o.grownAt(),
                o.processedAt(), o.localPart(), List.of(new Vendor.Expected(croftboard.measure.WeekRange.ALL, 2,
                        Vendor.Confidence.SURE)));
    }

    private static WeekProblem joined(Book book) {
        List<WeekProblem> weeks = new ArrayList<>();
        for (int w = 0; w < 2; w++) {
            weeks.add(ProblemBuilder.build(RotationBook.of(book, w), RandomBook.WEEK.plusWeeks(w), Map.of(), Given.NOTHING,
                    Optional.empty()).problem());
        }
        return new JoinedWeeks(weeks).problem;
    }

    @Test
    void twoWeeksOfTinyBooks_equalTheBestByEnumeration() {
        int compared = 0;
        for (int seed = 1; seed <= BOOKS; seed++) {
            Book book = tiny(seed);
            OptionalLong best = Enumeration.best(joined(book));
            Rotation rotation = rotate(book, 2, OptionalInt.empty(), 2_000);
            assertThat(RotationChecker.check(book, rotation).findings()).as("book %d", seed).isEmpty();
            if (best.isPresent()) {
                compared++;
                assertThat(rotation.complete()).as("book %d", seed).isTrue();
                assertThat(rotation.value()).as("book %d", seed).isEqualTo(best.getAsLong());
                assertThat(rotation.proof().bestAtAll().orElseThrow()).isGreaterThanOrEqualTo(best.getAsLong());
            }
        }
        assertThat(compared).isGreaterThan(BOOKS / 2);
    }

    @Test
    void account_ofTheWeeksOneByOne_isThatOfAllWeeksAsOne() {
        for (int seed = 1; seed <= 5; seed++) {
            Book book = RandomBook.of(seed);
            List<WeekProblem> weeks = new ArrayList<>();
            Rotation rotation = rotate(book, 2, OptionalInt.empty(), 300);
            int[][] choice = new int[2][];
            for (int w = 0; w < 2; w++) {
                weeks.add(ProblemBuilder.build(RotationBook.of(book, w), RandomBook.WEEK.plusWeeks(w), Map.of(),
                        Given.NOTHING, Optional.empty()).problem());
                WeekPlan plan = rotation.weeks().get(w).plan();
                choice[w] = weeks.get(w).slots().stream().mapToInt(s -> PricedChanges.number(s,
                        plan.choices().get(s.id()))).toArray();
            }
            WeekProblem all = new JoinedWeeks(weeks).problem;
            int[] packs = all.offers().stream().mapToInt(o -> packs(rotation, all, o)).toArray();
            Account account = Account.of(all, JoinedWeeks.joined(Arrays.asList(choice)), packs);
            assertThat(rotation.value()).as("book %d", seed).isEqualTo(account.value());
        }
    }

    private static int packs(Rotation rotation, WeekProblem all, WeekProblem.Offer o) {
        var date = all.firstDay().plusDays(all.deliveries().get(o.delivery()).day());
        return rotation.weeks().stream().flatMap(w -> w.plan().orders().stream())
                .filter(x -> x.vendor().equals(o.vendor()) && x.delivery().equals(date)).flatMap(x -> x.lines().stream())
                .filter(l -> l.item().equals(all.items().get(o.item()).id()) && l.pack().equals(o.pack()))
                .mapToInt(WeekPlan.OrderLine::packs).sum();
    }

    @Test
    void sameSteps_sameRotation_byteForByte_andEveryWeekHolds() {
        Book book = RandomBook.of(7);
        Rotation first = rotate(book, 3, OptionalInt.empty(), 1_200);
        assertThat(RotationChecker.check(book, first).findings()).isEmpty();
        assertThat(RotationFile.write(rotate(book, 3, OptionalInt.empty(), 1_200))).isEqualTo(RotationFile.write(first));
    }

    @Test
    void moreWeeksThanOneProblemHolds_goByStretches_andEveryWeekHolds() {
        Book book = RandomBook.of(11);
        Rotation rotation = rotate(book, 7, OptionalInt.empty(), 400);
        assertThat(rotation.weeks()).hasSize(7);
        assertThat(rotation.proof().bestAtAll()).isEmpty();
        assertThat(RotationChecker.check(book, rotation).findings()).isEmpty();
    }

    @Test
    void cycle_repeatsItsDishes_orSaysWhatItSwapped() {
        Book book = RandomBook.of(5);
        Rotation rotation = rotate(book, 4, OptionalInt.of(2), 400);
        assertThat(RotationChecker.check(book, rotation).findings()).isEmpty();
        for (int w = 2; w < 4; w++) {
            IsoWeek week = rotation.weeks().get(w).week();
            Map<String, String> was = rotation.weeks().get(w - 2).plan().choices();
            Map<String, String> is = rotation.weeks().get(w).plan().choices();
            List<String> swapped = rotation.swaps().stream().filter(s -> s.week().equals(week)).map(Rotation.Swap::slot).toList();
            was.keySet().removeIf(slot -> !slot.matches("(mon|tue|wed|thu|fri|sat|sun)/.*"));
            was.forEach((slot, dish) -> assertThat(dish.equals(is.get(slot)) || swapped.contains(slot)).as(slot).isTrue());
            assertThat(swapped.size()).isLessThan(was.size() / 2 + 1);
        }
    }

    @Test
    void newDishes_areNoMoreThanTheKitchenAllows() {
        Book b = RandomBook.of(3);
        Kitchen k = b.kitchen();
        Book book = new Book(new Kitchen(k.name(), k.place(), k.zone(), k.paper(), k.open(), k.prepDays(), k.lines(),
                k.gapDays(), k.stations(), k.cooks(), k.receiving(), k.equipment(), k.surplusWorth(), k.leftWorth(),
                k.goodwill(), k.wastePerPound(), k.promises(), k.local(), k.healthCodeEdition(), k.healthAuthority(),
                k.paperwork(), Optional.of(1)), b.ingredients(), b.recipes(), b.vendors(), b.seasons(), b.lists(), b.onHand(),
                b.fingerprint());
        Rotation free = rotate(b, 2, OptionalInt.empty(), 300);
        Set<String> served = Set.copyOf(free.weeks().get(0).plan().choices().values().stream().limit(3).toList());
        Rotation held = new Rotator(book, Optional.empty(), request(WeekSpan.of(RandomBook.WEEK, 2), OptionalInt.empty(), 300,
                Optional.of(served))).rotate();
        assertThat(held.inputs().newAMonth()).contains(1);
        assertThat(held.newDishes().size()).isBetween(0, 2);
        assertThat(RotationChecker.check(book, held).findings()).isEmpty();
    }
}
