package croftboard.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StretchTest {
    private static final int WEEKS = 3;

    /** Any dish on every slot and any packs: what is counted does not ask for a good plan. */
    private static int[] anyMenu(WeekProblem problem, Random g) {
        return problem.slots().stream().mapToInt(s -> g.nextInt(s.candidates().size())).toArray();
    }

    private static int[] anyPacks(WeekProblem problem, Random g) {
        return problem.offers().stream().mapToInt(o -> g.nextInt(3)).toArray();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void carriedStock_isWhatEarlierDeliveriesLeave_countedOnce(long seed) {
        WeekProblem whole = RandomWeek.weeks(seed, WEEKS);
        ServiceWeeks weeks = new ServiceWeeks(whole);
        Random g = new Random(seed);
        int[] menu = anyMenu(whole, g);
        int[] packs = anyPacks(whole, g);
        Stretch stretch = new Stretch(whole, weeks, 1, WEEKS, menu, packs);
        int start = weeks.monday(1);
        Buying all = Buying.of(whole, Workload.of(whole, menu).needMg(), packs);
        long[] carried = new long[whole.items().size()];
        stretch.problem.stock().forEach(lot -> carried[lot.item()] += lot.mg());
        for (int i = 0; i < carried.length; i++) {
            long left = 0;
            for (int o = 0; o < packs.length; o++) {
                WeekProblem.Offer offer = whole.offers().get(o);
                int day = whole.deliveries().get(offer.delivery()).day();
                boolean lives = day < start && day + whole.items().get(i).lifeDays() >= start;
                left += offer.item() == i && lives ? packs[o] * offer.packMg() : 0;
            }
            int item = i;
            left -= all.flows().stream().filter(f -> f.item() == item && f.day() < start
                    && f.delivery() + whole.items().get(item).lifeDays() >= start).mapToLong(Buying.Flow::mg).sum();
            assertThat(carried[i]).as("item %d", i).isEqualTo(left);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void later_weeks_haveTheSameNeedsAndAreMetAsInTheWhole(long seed) {
        WeekProblem whole = RandomWeek.weeks(seed, WEEKS);
        ServiceWeeks weeks = new ServiceWeeks(whole);
        Random g = new Random(seed);
        int[] menu = anyMenu(whole, g);
        int[] packs = anyPacks(whole, g);
        int[] early = menu.clone();
        Arrays.stream(weeks.slots(1, WEEKS)).forEach(s -> early[s] = -1);
        Stretch stretch = new Stretch(whole, weeks, 1, WEEKS, early, packs);
        int[] own = new int[stretch.problem.slots().size()];
        Arrays.fill(own, 0);
        int[] back = early.clone();
        stretch.choiceInto(own, back);
        Buying part = Buying.of(stretch.problem, Workload.of(stretch.problem, own).needMg(), stretch.packs(packs));
        Buying all = Buying.of(whole, Workload.of(whole, back).needMg(), packs);
        int start = weeks.monday(1);
        for (int i = 0; i < whole.items().size(); i++) {
            assertThat(part.missingMg()[i]).as("item %d", i)
                    .isEqualTo(Arrays.copyOfRange(all.missingMg()[i], start, whole.days()));
            assertThat(part.keptMg()[i]).as("item %d", i).isLessThanOrEqualTo(all.keptMg()[i]);
        }
        assertThat(stretch.choice(back)).isEqualTo(own);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void dishesWithinTheGapOfOtherWeeks_cannotBeChosen_othersCan(long seed) {
        WeekProblem whole = RandomWeek.weeks(seed, WEEKS);
        ServiceWeeks weeks = new ServiceWeeks(whole);
        int[] menu = anyMenu(whole, new Random(seed));
        Stretch middle = new Stretch(whole, weeks, 1, 2, menu, new int[whole.offers().size()]);
        int forbidden = 0;
        for (int s : weeks.slots(1, 2)) {
            WeekProblem.Slot slot = whole.slots().get(s);
            WeekProblem.Slot own = middle.problem.slots().stream().filter(x -> x.id().equals("day-" + slot.startDay()
                    + "/line-" + slot.line())).findFirst().orElseThrow();
            for (WeekProblem.Candidate c : slot.candidates()) {
                boolean near = false;
                for (int o = 0; o < menu.length; o++) {
                    near |= weeks.ofSlot(o) != 1 && Math.abs(whole.slots().get(o).startDay() - slot.startDay())
                            < whole.prices().gapDays()
                            && whole.slots().get(o).candidates().get(menu[o]).dish() == c.dish();
                }
                forbidden += near ? 1 : 0;
                assertThat(own.candidates().stream().anyMatch(x -> x.dish() == c.dish())).isEqualTo(!near);
            }
        }
        assertThat(forbidden).isGreaterThan(100);
    }
}
