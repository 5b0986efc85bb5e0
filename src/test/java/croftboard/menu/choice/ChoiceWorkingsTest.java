package croftboard.menu.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import croftboard.need.ChoiceWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The parts of the search for plain choice weeks, each against a slow way to the same answer. */
class ChoiceWorkingsTest {
    private static Choices choices(int lines, int dishes, int ovens, long seed) {
        ChoiceWeek.Kind kind = ChoiceWeek.Kind.values()[(int) (seed % 3)];
        return Choices.of(ChoiceWeek.of(kind, lines, dishes, true, ovens, seed).problem()).orElseThrow();
    }

    private static Priced priced(Choices choices, Random random) {
        return new Priced(choices, IntStream.range(0, choices.limits()).mapToDouble(r -> random.nextInt(4) == 0 ? 0
                : 900 * random.nextDouble()).toArray());
    }

    private static List<int[]> everyMenu(Choices choices, int slots) {
        List<int[]> all = new ArrayList<>(List.of(new int[choices.slots()]));
        for (int s = 0; s < slots; s++) {
            List<int[]> longer = new ArrayList<>();
            for (int[] menu : all) {
                for (int k = 0; k < choices.worth()[s].length; k++) {
                    int[] next = menu.clone();
                    next[s] = k;
                    longer.add(next);
                }
            }
            all = longer;
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void worth_isTheBoundLessLossesAndWhatIsLeft_atAnyPrices(long seed) {
        Choices choices = choices(6, 4, 3, seed);
        Random random = new Random(seed);
        Priced priced = priced(choices, random);
        for (int[] menu : everyMenu(choices, 5)) {
            double sum = priced.bound;
            int[] room = choices.room(menu);
            for (int s = 0; s < menu.length; s++) {
                sum -= priced.loss[s][menu[s]];
            }
            for (int r = 0; r < room.length; r++) {
                sum -= priced.price[r] * room[r];
            }
            assertThat(sum).isCloseTo(choices.worthOf(menu), within(1e-3));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void lightMenus_holdAllThatLoseLess_andTheirOwnFigures(long seed) {
        Choices choices = choices(5, 5, 3, seed);
        Priced priced = priced(choices, new Random(seed));
        int[] slots = {0, 1, 2, 3, 4};
        double most = 1 + IntStream.of(0, 1, 2).mapToDouble(s -> priced.loss[s][priced.order[s][priced.order[s].length / 2]]).sum();
        Ranked ranked = new Ranked(priced, new int[5], new Random(seed));
        LightMenus light = new LightMenus(ranked, slots, 10_000, most);
        List<String> listed = new ArrayList<>();
        for (int n = 0; n < light.rows.size(); n++) {
            int[] options = new int[choices.slots()];
            light.write(n, options);
            listed.add(Arrays.toString(options));
            assertThat(light.rows.loss(n)).isCloseTo(loss(priced, options), within(1e-6));
            int[] room = choices.room(options);
            for (int r = 0; r < room.length; r++) {
                assertThat(light.rows.units(n, r)).isEqualTo(choices.most()[r] - room[r]);
            }
        }
        List<String> all = everyMenu(choices, 5).stream().filter(m -> extra(ranked, m) <= most).map(Arrays::toString).toList();
        assertThat(listed).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(all);
    }

    private static double extra(Ranked ranked, int[] options) {
        return IntStream.range(0, options.length).mapToDouble(s -> ranked.extra(s, options[s])).sum();
    }

    private static double loss(Priced priced, int[] options) {
        return IntStream.range(0, options.length).mapToDouble(s -> priced.loss[s][options[s]]).sum();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void boxes_findEveryRowWithin(long seed) {
        Random random = new Random(seed);
        Rows rows = new Rows(4, 1);
        for (int n = 0; n < 300; n++) {
            rows.add(random.ints(4, 0, (int) (10 * seed * seed)).toArray(), 0);
        }
        int[] limits = {3, 1};
        Boxes boxes = new Boxes(rows, limits, new int[] {1 + random.nextInt(4), 1});
        for (int n = 0; n < 200; n++) {
            int[] high = random.ints(2, -5, (int) (11 * seed * seed)).toArray();
            double[] price = {random.nextDouble(), random.nextInt(3)};
            double budget = 20 * random.nextDouble();
            int[] low = Arrays.stream(high).map(h -> h - random.nextInt(30)).toArray();
            List<Integer> found = new ArrayList<>();
            int ranges = boxes.find(low, high, price, budget);
            for (int g = 0; g < ranges; g++) {
                for (int i = boxes.from(g); i < boxes.to(g); i++) {
                    found.add(boxes.row[i]);
                }
            }
            List<Integer> wanted = IntStream.range(0, rows.size()).filter(i -> {
                double cost = 0;
                boolean inside = true;
                for (int t = 0; t < 2; t++) {
                    int units = rows.units(i, limits[t]);
                    inside &= low[t] <= units && units <= high[t];
                    cost += price[t] * (high[t] - units);
                }
                return inside && cost < budget - 1e-6;
            }).boxed().toList();
            assertThat(found).doesNotHaveDuplicates().containsAll(wanted);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatOneTryFinds_keepsEveryLimit_andMissesTheBoundByLessThanAsked(long seed) {
        Choices choices = choices(8, 4, 3, seed);
        Priced priced = priced(choices, new Random(seed));
        long best = everyMenu(choices, 8).stream().filter(choices::fits).mapToLong(choices::worthOf).max().orElseThrow();
        FourParts parts = new FourParts(priced, new Random(seed));
        double budget = priced.bound - best;
        assertThat(parts.menu(new int[8], budget - 1)).isEmpty();
        assertThat(parts.menu(new int[8], budget + 1)).hasValueSatisfying(found -> {
            assertThat(choices.fits(found)).isTrue();
            assertThat(choices.worthOf(found)).isEqualTo(best);
        });
    }
}
