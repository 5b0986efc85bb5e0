package croftboard.paper.cook;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.cli.SamplePlan;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.paper.Contexts;
import croftboard.paper.Data;
import croftboard.paper.Golden;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.paper.file.PdfText;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CookSheetsTest {
    private static final List<SheetMaker> ALL = List.of(new PrepSheets(), new PullSheets(), new BatchSheets(),
            new ProductionSheets(), new FunctionSheets());
    private static final LocalDate MONDAY = SamplePlan.WEEK.monday();
    private static final PaperContext SMALL = small(SamplePlan.book());

    /** The sample's menu, with needs, orders and flows computed for it. */
    private static PaperContext small(Book book) {
        Map<String, String> menu = new TreeMap<>(SamplePlan.complete(book).choices());
        menu.put("harvest-meal/side", "carrot-slaw");
        return Contexts.of(book, MadePlan.withMenu(book, SamplePlan.WEEK, menu));
    }

    private static List<Sheet> sheets(PaperContext context) {
        return ALL.stream().flatMap(m -> m.make(context).stream()).toList();
    }

    @Test
    void golden() {
        for (SheetMaker maker : ALL) {
            Golden.same(maker.kind().word() + ".txt", maker.make(SMALL).stream().map(PdfText::text)
                    .collect(Collectors.joining("\n")));
        }
    }

    @Test
    void everySheet_hasAnIdOfItsOwn() {
        assertThat(sheets(SMALL).stream().map(Sheet::id)).doesNotHaveDuplicates().hasSizeGreaterThan(30);
    }

    @Test
    void prepLines_areThePlansNeeds_ofEveryItemAndDay_toTheGram() {
        Map<String, BigDecimal> printed = new TreeMap<>();
        for (Sheet s : new PrepSheets().make(SMALL)) {
            rows(s.data()).filter(r -> !r.get("need_day").isEmpty() && byNeed(r.get("id"))).forEach(r -> printed.merge(
                    r.get("id") + " " + r.get("need_day"), new BigDecimal(r.get("as_purchased_grams")), BigDecimal::add));
        }
        Map<String, BigDecimal> needs = new TreeMap<>();
        SMALL.plan().needs().forEach(n -> needs.put(n.item() + " " + n.day(), BigDecimal.valueOf(n.mg(), 3)));
        assertThat(printed.keySet()).isEqualTo(needs.keySet());
        needs.forEach((key, grams) -> assertThat(printed.get(key)).as(key)
                .isCloseTo(grams, org.assertj.core.data.Offset.offset(BigDecimal.ONE)));
    }

    private static boolean byNeed(String item) {
        Ingredient i = SMALL.book().ingredient(item);
        return !i.isStaple() && !i.free();
    }

    /** Frozen goods are needed on the day they are taken out. */
    @Test
    void pullLists_areThePlansNeeds_toTheMilligram() {
        Map<String, BigDecimal> printed = new TreeMap<>();
        for (Sheet s : new PullSheets().make(SMALL)) {
            rows(s.data()).filter(r -> !r.get("what").equals("staple") && SMALL.book().ingredients().containsKey(r.get("id")))
                    .forEach(r -> printed.merge(r.get("id") + " " + r.get("day"), new BigDecimal(r.get("grams")), BigDecimal::add));
        }
        assertThat(printed).hasSameSizeAs(SMALL.plan().needs());
        SMALL.plan().needs().forEach(n -> assertThat(printed.get(n.item() + " " + n.day())).as(n.item())
                .isEqualByComparingTo(BigDecimal.valueOf(n.mg(), 3)));
    }

    @Test
    void batchSheets_areThePlansBatches() {
        List<String> printed = new ArrayList<>();
        new BatchSheets().make(SMALL).forEach(s -> rows(s.data()).filter(r -> r.get("row").equals("batch")).forEach(r ->
                printed.add(r.get("day") + " " + r.get("recipe") + " " + r.get("batches") + " " + r.get("portions"))));
        List<String> planned = new ArrayList<>();
        SMALL.plan().batches().forEach(b -> planned.add(b.made() + " " + b.recipe() + " " + b.batches().toDecimal(4) + " "));
        SMALL.plan().menu().forEach(m -> m.productions().forEach(p -> planned.add(p.made() + " " + m.recipe().orElseThrow() + " "
                + p.batches().toDecimal(4) + " " + p.portions())));
        assertThat(printed).containsExactlyInAnyOrderElementsOf(planned);
    }

    @Test
    void productionSheets_holdEverySlotAndDay_andThePlansPortions() {
        Map<String, Integer> printed = new TreeMap<>();
        List<String> rows = new ArrayList<>();
        new ProductionSheets().make(SMALL).forEach(s -> rows(s.data()).forEach(r -> {
            rows.add(r.get("slot") + " " + r.get("date"));
            printed.merge(r.get("slot"), Integer.parseInt(r.get("planned_portions")), Integer::sum);
        }));
        List<String> planned = new ArrayList<>();
        SMALL.plan().menu().forEach(m -> {
            m.days().forEach(d -> planned.add(m.slot() + " " + d));
            assertThat(printed.get(m.slot())).as(m.slot()).isEqualTo(m.portions());
        });
        assertThat(rows).containsExactlyInAnyOrderElementsOf(planned);
    }

    @Test
    void theEventsShare_ofEveryNeed_isMetByWhatIsBroughtForIt() {
        Sheet sheet = new FunctionSheets().make(SMALL).get(0);
        Map<String, BigDecimal> needs = new TreeMap<>();
        Map<String, BigDecimal> brought = new TreeMap<>();
        rows(sheet.data()).forEach(r -> {
            if (r.get("row").equals("need")) {
                needs.merge(r.get("id"), new BigDecimal(r.get("event_grams")), BigDecimal::add);
                assertThat(new BigDecimal(r.get("event_grams"))).isLessThanOrEqualTo(new BigDecimal(r.get("all_grams")));
            } else if (r.get("row").equals("bought")) {
                brought.merge(r.get("id"), new BigDecimal(r.get("event_grams")), BigDecimal::add);
            }
        });
        assertThat(needs).isNotEmpty();
        assertThat(brought.keySet()).isEqualTo(needs.keySet());
        needs.forEach((item, grams) -> assertThat(brought.get(item)).as(item)
                .isCloseTo(grams, org.assertj.core.data.Offset.offset(new BigDecimal("0.01"))));
        assertThat(rows(sheet.data()).filter(r -> r.get("row").equals("batch")).map(r -> r.get("id")))
                .contains("lentil-bake", "house-marinara", "soffritto", "carrot-slaw");
    }

    @Test
    void everyAmountOfThePlan_isInThePdf() {
        String prep = pdf(SMALL, new PrepSheets());
        String batch = pdf(SMALL, new BatchSheets());
        for (WeekPlan.Batch b : SMALL.plan().batches()) {
            Ratio grams = SMALL.book().recipe(b.recipe()).makes().base().times(b.batches());
            assertThat(prep).contains(CookAmounts.mass(grams));
            assertThat(batch).contains(CookWeek.batches(b.batches()) + ", " + CookAmounts.mass(grams), When.full(b.useBy()));
        }
        SMALL.plan().menu().forEach(m -> m.productions().forEach(p -> {
            assertThat(prep).contains(p.portions() + " portions");
            assertThat(batch).contains(p.portions() + " portions of", When.full(p.useBy()));
        }));
        SMALL.plan().flows().forEach(f -> assertThat(pdf(Contexts.only(SMALL, f.day(), null), new PullSheets()))
                .contains(CookWeek.mass(f.mg())));
    }

    private static String pdf(PaperContext context, SheetMaker maker) {
        return String.join(" ", PdfText.pages(context, maker.make(context)));
    }

    @Test
    void aDayWithNothingToDo_hasNoSheet_andAWeekWithoutADishNone() {
        assertThat(sheets(Contexts.only(SMALL, MONDAY.minusDays(7), null))).isEmpty();
        Book book = SamplePlan.book();
        PaperContext none = Contexts.of(book, MadePlan.withMenu(book, SamplePlan.WEEK, Map.of()));
        List<Sheet> sheets = sheets(none);
        assertThat(sheets.stream().map(Sheet::kind).distinct()).containsExactly(SheetKind.PRODUCTION, SheetKind.FUNCTION);
        assertThat(pdf(none, new FunctionSheets())).contains("NOTHING PLANNED");
        assertThat(pdf(none, new ProductionSheets())).contains("nothing planned");
    }

    @Test
    void sixtyRecipesOnOneList_loseNone_andRepeatTheHead() {
        Book book = SamplePlan.book();
        Map<String, Recipe> recipes = new TreeMap<>(book.recipes());
        List<WeekPlan.Served> menu = new ArrayList<>();
        Recipe bake = book.recipe("lentil-bake");
        for (int i = 100; i < 160; i++) {
            String id = "dish-" + i;
            recipes.put(id, named(bake, id, "Dish number " + i));
            menu.add(new WeekPlan.Served("mon/line-" + i, "hot-main-1", List.of(MONDAY), Optional.of(id), i, 0, 0, 0,
                    List.of(new WeekPlan.Production(MONDAY, MONDAY, MONDAY, Ratio.of(i, 32), i)), "", false));
        }
        Book large = new Book(book.kitchen(), book.ingredients(), recipes, book.vendors(), book.seasons(), book.lists(),
                book.onHand(), book.fingerprint());
        PaperContext context = Contexts.of(large, withMenu(SamplePlan.complete(book), menu));
        List<Sheet> sheets = new PrepSheets().make(context);
        assertThat(sheets).hasSize(1);
        List<String> pages = PdfText.pages(context, sheets);
        String text = String.join(" ", pages);
        for (int i = 100; i < 160; i++) {
            assertThat(text).contains((i - 99) + ". Dish number " + i + " ", i + " portions");
        }
        assertThat(pages.stream().filter(p -> p.contains("portions")).toList())
                .allMatch(p -> p.contains("Make How much"));
        Map<String, Long> lines = rows(sheets.get(0).data()).filter(r -> !r.get("row").equals("make"))
                .collect(Collectors.groupingBy(r -> r.get("id") + r.get("cut") + r.get("need_day"), TreeMap::new,
                        Collectors.counting()));
        assertThat(lines.values()).as("one line for all sixty").containsOnly(1L);
    }

    private static Recipe named(Recipe r, String id, String name) {
        return new Recipe(id, name, r.sale(), r.makes(), r.cup(), r.batchStep(), r.lifeDays(), r.hold(), r.leadDays(), r.loss(),
                r.ingredients(), r.steps(), r.scaling(), r.doneness(), r.holding(), r.caution(), r.worthOnly());
    }

    private static WeekPlan withMenu(WeekPlan p, List<WeekPlan.Served> menu) {
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), menu, List.of(), List.of(), List.of(), List.of(), List.of(),
                p.account(), p.promises(), p.share(), p.proof(), p.missing(), p.swaps());
    }

    @Test
    void hostileWords_areAllThere_asWords() {
        Book book = SamplePlan.book();
        Map<String, Recipe> recipes = new TreeMap<>();
        book.recipes().forEach((id, r) -> recipes.put(id, new Recipe(id, Contexts.HOSTILE, r.sale(), r.makes(), r.cup(),
                r.batchStep(), r.lifeDays(), r.hold(), r.leadDays(), r.loss(), r.ingredients(), r.steps().stream().map(s ->
                new Recipe.Step("step line\n".repeat(40) + "last step line", s.station(), s.activeMinutes(),
                        s.perPortionMinutes(), s.unattendedMinutes(), s.uses())).toList(), Optional.of(Contexts.HOSTILE),
                Optional.of("@" + Contexts.HOSTILE), r.holding(), Optional.of("note\n".repeat(40)), r.worthOnly())));
        List<Seasons.Event> events = book.seasons().events().stream().map(e -> new Seasons.Event(e.id(), Contexts.HOSTILE,
                e.date(), e.service(), e.guarantee(), e.overage(), e.price(), Contexts.HOSTILE, e.menu())).toList();
        Seasons s = book.seasons();
        Book hostile = new Book(book.kitchen(), book.ingredients(), recipes, book.vendors(), new Seasons(s.named(), s.targets(),
                s.demand(), s.demandFactors(), s.closures(), events, s.crops()), book.lists(), book.onHand(), book.fingerprint());
        PaperContext context = Contexts.only(small(hostile), LocalDate.of(2027, 8, 19), null);
        for (SheetMaker maker : ALL) {
            List<Sheet> sheets = maker.make(context);
            String close = String.join("", PdfText.pages(context, sheets)).replace(" ", "");
            assertThat(close).as(maker.kind().word()).contains("=<b>&amp;\"x'gnp<", "script>alert(1)<", "]]>{{x}}", "long".repeat(4));
            String words = sheets.stream().map(PdfText::text).collect(Collectors.joining());
            assertThat(words).as(maker.kind().word()).contains("=<b>&amp;\"x'gnp", "</td><script>alert(1)</script> ]]> {{x}} "
                    + "long".repeat(75) + " end").doesNotContain("\u202E", "\u0007");
            if (maker.kind() == SheetKind.BATCH) {
                int steps = sheets.stream().mapToInt(x -> recipes.get(rows(x.data()).findFirst().orElseThrow().get("recipe"))
                        .steps().size()).sum();
                assertThat(close.split("stepline", -1)).hasSize(1 + 41 * steps);
            }
        }
    }

    private static java.util.stream.Stream<Map<String, String>> rows(Data data) {
        return data.rows().stream().map(row -> {
            Map<String, String> named = new TreeMap<>();
            for (int i = 0; i < row.size(); i++) {
                named.put(data.header().get(i), row.get(i));
            }
            return named;
        });
    }
}
