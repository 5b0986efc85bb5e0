package croftboard.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.TinyBook;
import croftboard.book.file.BookReader;
import croftboard.book.file.SmallKitchen;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanStore;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans that were made by the rules: the checker, which shares no code with what made them, agrees to the cent. */
class TruePlansTest {
    private static final IsoWeek WEEK = RandomBook.WEEK;

    private static void agrees(String name, Book book, WeekPlan plan, Given given, Optional<LocalDateTime> now) {
        Verdict verdict = PlanChecker.check(book, plan, given, now);
        assertThat(verdict.findings()).as(name).isEmpty();
        assertThat(verdict.ok()).isTrue();
    }

    private static void agrees(String name, Book book, IsoWeek week) {
        Optional<LocalDateTime> none = Optional.empty();
        agrees(name, book, MadePlan.of(book, week), Given.NOTHING, none);
        agrees(name + " with more packs", book, MadePlan.of(book, week, Given.NOTHING, none, Map.of(), 5), Given.NOTHING,
                none);
        agrees(name + " with broken musts", book, MadePlan.broken(book, week, Given.NOTHING), Given.NOTHING, none);
        LocalDateTime late = week.monday().minusDays(2).atTime(11, 0);
        agrees(name + " planned late", book, MadePlan.of(book, week, Given.NOTHING, Optional.of(late), Map.of(), 3),
                Given.NOTHING, Optional.of(late));
    }

    @Test
    void randomBooks_haveNoFinding() {
        for (long seed = 0; seed < 40; seed++) {
            agrees("random " + seed, RandomBook.of(seed), WEEK);
            agrees("tiny " + seed, TinyBook.of(seed), WEEK);
        }
    }

    @Test
    void smallKitchen_hasNoFindingInAnySeason() {
        Book book = SmallKitchen.book();
        for (IsoWeek week = new IsoWeek(2027, 1); week.year() == 2027; week = week.plusWeeks(4)) {
            agrees(week.toString(), book, week);
        }
        agrees("week with a list", book, WEEK);
        agrees("Thanksgiving", book, new IsoWeek(2027, 47));
    }

    @Test
    void worthOnlyKitchen_hasNoFinding() {
        agrees("worth only", BookReader.read(SmallKitchen.WORTH_ONLY).orElseThrow(), WEEK);
    }

    @Test
    void substitutes_haveNoFinding() {
        EditedKitchen kitchen = new EditedKitchen().change("farms/mill-run-depot.yaml",
                "  - {item: thyme, pack: 1 lb bag, holds: 1 lb, price: $14.00, grown_at: unknown, weeks: [{from: W01, to: W53, "
                        + "packs: 10, confidence: sure}]}\n", "");
        Book staple = kitchen.book();
        assertThat(MadePlan.of(staple, WEEK).swaps().values()).anySatisfy(s -> assertThat(s).containsEntry("thyme",
                "thyme-dried"));
        agrees("a staple in its place", staple, WEEK);
        Book fresh = kitchen.change("kitchen/ingredients/fresh.yaml", "    - {use: thyme-dried, ratio: 1/3}\n", "").book();
        assertThat(MadePlan.of(fresh, WEEK).swaps().values()).anySatisfy(s -> assertThat(s).containsEntry("thyme",
                "garlic"));
        agrees("another cut in its place", fresh, WEEK);
    }

    /** One line may be replaced and is, another of the same ingredient may not and is not: its allergens stay. */
    @Test
    void ingredientReplacedOnOneLineOnly_keepsItsAllergensInTheDish() {
        Book book = new EditedKitchen().change("farms/mill-run-depot.yaml",
                "  - {item: thyme, pack: 1 lb bag, holds: 1 lb, price: $14.00, grown_at: unknown, weeks: [{from: W01, to: W53, "
                        + "packs: 10, confidence: sure}]}\n", "")
                .change("kitchen/ingredients/fresh.yaml", "name: fresh thyme\n  origin: plant\n  allergens: none",
                        "name: fresh thyme\n  origin: plant\n  allergens: [wheat]")
                .change("kitchen/on-hand.csv", "item,amount,received,made,opened,frozen,thawed,note\n",
                        "item,amount,received,made,opened,frozen,thawed,note\nthyme,3 lb,2027-08-14,,,,,\n")
                .change("recipes/dishes.yaml", "    - 1 lb tahini\n    - 1 cup lemon, juiced\n    - 2 oz salt\n",
                        "    - 1 lb tahini\n    - 1 cup lemon, juiced\n    - 2 oz salt\n    - 1 oz thyme, leaves\n"
                                + "    - {use: \"1 oz thyme, leaves\", substitute: plan}\n").book();
        WeekPlan plan = MadePlan.withMenu(book, WEEK, Map.of("mon/cold-salad-1", "carrot-slaw"));
        assertThat(plan.swaps().get("carrot-slaw")).containsEntry("thyme", "thyme-dried");
        assertThat(plan.menu()).filteredOn(r -> r.recipe().equals(Optional.of("carrot-slaw"))).singleElement()
                .satisfies(r -> assertThat(r.marks()).isEmpty());
        agrees("replaced on one line", book, plan, Given.NOTHING, Optional.empty());
    }

    /** Cheddar needs cold by nature; the package opened on Wednesday the 11th is good to Tuesday the 17th, though it keeps longer. */
    @Test
    void openedPackage_lastsSevenDaysFromOpening() {
        String head = "item,amount,received,made,opened,frozen,thawed,note\n";
        Book book = new EditedKitchen().change("kitchen/on-hand.csv", head, head + "cheddar,60 lb,2027-08-09,,2027-08-11,,,\n")
                .book();
        WeekPlan plan = MadePlan.withMenu(book, WEEK, Map.of("tue/hot-main-1", "penne-bake", "fri/hot-main-1", "penne-bake"));
        assertThat(plan.flows()).filteredOn(f -> f.item().equals("cheddar")).extracting(f -> f.day().getDayOfMonth() + " "
                + (f.delivery().isEmpty() ? "stock" : "fresh")).containsExactly("17 stock", "20 fresh");
        agrees("opened", book, plan, Given.NOTHING, Optional.empty());
    }

    @Test
    void plansBetweenPostedNeighbours_haveNoFinding(@TempDir Path folder) {
        for (long seed = 0; seed < 25; seed++) {
            Book book = RandomBook.of(seed);
            PlanStore store = new PlanStore(folder.resolve("book" + seed));
            for (int away : new int[] {-2, -1, 1}) {
                IsoWeek week = WEEK.plusWeeks(away);
                WeekPlan plan = MadePlan.of(book, week, store.given(week, book), Optional.empty(), Map.of(), seed + 3);
                store.post(week, store.writeDraft(plan));
            }
            Given given = store.given(WEEK, book);
            WeekPlan plan = MadePlan.of(book, WEEK, given, Optional.empty(), Map.of(), seed);
            agrees("neighbours " + seed, book, plan, given, Optional.empty());
            Map<String, String> kept = kept(plan, seed);
            agrees("kept " + seed + " " + kept, book, MadePlan.of(book, WEEK, given, Optional.empty(), kept, 0), given,
                    Optional.empty());
        }
    }

    /** Some dishes kept where they stand, some where they may not. */
    private static Map<String, String> kept(WeekPlan plan, long seed) {
        Random g = new Random(seed);
        Map<String, String> kept = new TreeMap<>();
        for (WeekPlan.Served row : plan.menu()) {
            if (g.nextInt(3) == 0) {
                kept.put(row.slot(), row.recipe().filter(r -> g.nextBoolean()).orElse("dish-" + (char) ('a' + g.nextInt(9))));
            }
        }
        return kept;
    }

    @Test
    void verified_saysHowMuchWasDerivedAgain() {
        Book book = SmallKitchen.book();
        Verdict verdict = PlanChecker.check(book, MadePlan.of(book, WEEK), Given.NOTHING, Optional.empty());
        assertThat(verdict.verified()).matches("13 slots, .*\\d+ batches, .*\\d+ needs, .*order lines, .*9 musts, all money");
    }
}
