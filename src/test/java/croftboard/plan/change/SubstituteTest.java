package croftboard.plan.change;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.book.file.SmallKitchen;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.PlanRequest;
import croftboard.plan.Planner;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.check.PlanChecker;
import croftboard.plan.check.Revised;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A dish that is kept with a declared substitute: on its own lines only, and never where others are made of it. */
class SubstituteTest {
    private static final LocalDateTime TUESDAY = LocalDateTime.parse("2027-08-17T07:00");
    private static final String SLOT = "thu/cold-salad-1";
    private static final String SLAW = "carrot-slaw";
    private final SortedMap<String, byte[]> files = SmallKitchen.files(SmallKitchen.FOLDER);

    private void change(String path, String before, String after) {
        String text = new String(files.get(path), StandardCharsets.UTF_8);
        assertThat(text).contains(before);
        files.put(path, text.replace(before, after).getBytes(StandardCharsets.UTF_8));
    }

    /** Chickpeas are kept for the first half of the week, so slaw follows. Peas go into the slaw; nobody has any, and lentils may stand for them. */
    private void peasInTheSlaw() {
        change("kitchen/kitchen.yaml", "gap: 2 days", "gap: 4 days");
        change("recipes/dishes.yaml", "    - 10 lb carrot, grated\n", "    - 10 lb carrot, grated\n    - 2 lb pea-frozen\n");
        change("recipes/dishes.yaml", "    - 4 lb carrot, diced\n    - 3 qt house-marinara\n    - 2 lb AP onion-yellow, diced\n"
                + "    - 1 gal water\n    - 2 lb pea-frozen\n", "    - 4 lb carrot, diced\n    - 3 qt house-marinara\n"
                + "    - 2 lb AP onion-yellow, diced\n    - 1 gal water\n");
        String path = files.keySet().stream().filter(f -> new String(files.get(f), StandardCharsets.UTF_8).contains("\npea-frozen:\n")
                || new String(files.get(f), StandardCharsets.UTF_8).startsWith("pea-frozen:\n")).findFirst().orElseThrow();
        change(path, "pea-frozen:\n", "pea-frozen:\n  substitutes: [{use: lentil-brown, ratio: 1}]\n");
    }

    private Book book() {
        return BookReader.readFiles(files).orElseThrow();
    }

    private static WeekPlan plan(Book book) {
        PlanRequest request = new PlanRequest(IsoWeek.parse("2027-W33").orElseThrow(), 1, Duration.ofSeconds(5),
                OptionalLong.of(200), new TreeMap<>(Map.of("mon/cold-salad-1", "chickpea-salad", "harvest-meal/side",
                        "chickpea-salad")), Optional.empty(), Given.NOTHING, new PlanRequest.Progress() {
                    @Override
                    public void doing(String what) { }

                    @Override
                    public void better(WeekPlan better) { }
                }, () -> false);
        return new Planner(book, Optional.empty()).plan(request).fold(p -> p.plan(), r -> null);
    }

    private static ChangedWeek broken(Book book, WeekPlan plan, List<Change> changes) {
        ChangedWeek week = ChangedWeek.of(book, plan, Given.NOTHING, changes, TUESDAY);
        assertThat(week.faults()).isEmpty();
        return week;
    }

    private static boolean hasSwap(ChangedWeek week) {
        return week.variants().values().stream().flatMap(v -> v.values().stream()).anyMatch(v -> !v.swaps().isEmpty());
    }

    @Test
    void itemOut_dishStaysWithItsSubstitute_andItsLabelIsPrintedAgain() {
        peasInTheSlaw();
        Book book = book();
        WeekPlan plan = plan(book);
        List<Change> changes = List.of(new Change.ItemOut("pea-frozen"));
        assertThat(plan.choices()).containsEntry(SLOT, SLAW);
        ChangedWeek week = broken(book, plan, changes);
        assertThat(hasSwap(week)).isTrue();
        WeekPlan after = new Repair(book, plan, week, new WeekPlan.Revision(1, TUESDAY, List.of("item pea-frozen out")))
                .settled(new WeekRun.Effort(1, Duration.ZERO, OptionalLong.of(200), () -> false), p -> { });
        assertThat(after.choices()).containsEntry(SLOT, SLAW);
        assertThat(after.swaps().get(SLAW)).containsEntry("pea-frozen*", "lentil-brown");
        assertThat(PlanChecker.check(book, after, Given.NOTHING, Optional.empty(), Optional.of(new Revised(plan, TUESDAY, changes)))
                .findings()).isEmpty();
        assertThat(Consequences.of(book, plan, after, changes, TUESDAY).cards()).anySatisfy(c -> {
            assertThat(c.slot()).isEqualTo(SLOT);
            assertThat(c.statementChanges()).isFalse();
        });
    }

    @Test
    void dishThatOthersAreMadeOf_keepsItsIngredients() {
        peasInTheSlaw();
        change("recipes/dishes.yaml", "    - 5 lb lentil-brown\n", "    - 5 lb lentil-brown\n    - 1 lb carrot-slaw\n");
        Book book = book();
        WeekPlan plan = plan(book);
        assertThat(plan.choices()).containsEntry(SLOT, SLAW);
        assertThat(hasSwap(broken(book, plan, List.of(new Change.ItemOut("pea-frozen"))))).isFalse();
    }
}
