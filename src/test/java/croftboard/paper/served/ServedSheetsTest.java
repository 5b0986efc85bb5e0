package croftboard.paper.served;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.LabelStock;
import croftboard.book.Recipe;
import croftboard.cli.SamplePlan;
import croftboard.paper.Block;
import croftboard.paper.Contexts;
import croftboard.paper.Golden;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetMaker;
import croftboard.paper.file.PdfText;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ServedSheetsTest {
    private static final LocalDate MONDAY = EveryDish.MONDAY;
    private static final List<SheetMaker> ALL = List.of(new Labels(), new CaseCards(), new CoverageGrid(),
            new MembersSheets(), new HomeCards(), new Logs());

    private static WeekPlan.Flow flow(String item, int delivered, int used) {
        return new WeekPlan.Flow(item, Optional.of(MONDAY.plusDays(delivered)), MONDAY.plusDays(used), 1_000_000);
    }

    /** The sample week with carrots from the farm for Thursday's slaw, and lentils from the depot for Monday's bake. */
    private static PaperContext sample() {
        PaperContext c = Contexts.sample();
        Book book = EveryDish.packed(c.book(), Set.of("standing-dip"),
                new LabelStock(3, 2, 12_700, 3_969, 101_600, 84_667, 106_363, 84_667));
        return Contexts.of(book, EveryDish.flowing(c.plan(), List.of(flow("carrot", 0, 3), flow("lentil-brown", -3, 0))));
    }

    private static String text(List<Sheet> sheets) {
        return sheets.stream().map(PdfText::text).collect(Collectors.joining("\n"));
    }

    @Test
    void golden() {
        for (SheetMaker maker : ALL) {
            Golden.same(maker.kind().word() + ".txt", text(maker.make(sample()).stream().map(ServedSheetsTest::once).toList()));
        }
    }

    /** The sheet with each label once. */
    private static Sheet once(Sheet sheet) {
        List<Block> blocks = sheet.blocks().stream().map(b -> b instanceof Block.LabelPage l ? new Block.LabelPage(l.stock(),
                l.cells().stream().distinct().toList(), l.leastType(), l.mostType()) : b).toList();
        return new Sheet(sheet.kind(), sheet.id(), sheet.title(), sheet.under(), blocks, sheet.data(), sheet.look());
    }

    @Test
    void everySheet_hasAnIdOfItsOwn() {
        List<String> ids = ALL.stream().flatMap(m -> m.make(sample()).stream()).map(Sheet::id).toList();
        assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(20);
    }

    @Test
    void labels_areAsManyAsPortions_withPlansDates_inThePdf() {
        PaperContext context = sample();
        List<Sheet> pages = new Labels().make(context).stream().filter(s -> s.look().bare()).toList();
        for (WeekPlan.Served slot : context.plan().menu().stream().filter(s -> s.line().equals("standing-dip")).toList()) {
            WeekPlan.Production made = slot.productions().get(0);
            String pdf = String.join(" ", PdfText.pages(context, pages.stream()
                    .filter(s -> s.id().equals("label-" + made.made())).toList()));
            assertThat(pdf.split("House hummus", -1)).hasSize(made.portions() + 1);
            assertThat(pdf.split("Use by " + PackLabel.date(made.useBy()), -1)).hasSize(made.portions() + 1);
            assertThat(pdf.split("\\$4\\.00", -1)).hasSize(made.portions() + 1);
            assertThat(pdf.split("Contains sesame\\.", -1)).hasSize(made.portions() + 1);
        }
    }

    @Test
    void cards_carryThePlansPricesAndDays_inThePdf() {
        PaperContext context = sample();
        for (Sheet sheet : new CaseCards().make(context)) {
            String pdf = String.join(" ", PdfText.pages(context, List.of(sheet)));
            for (List<String> row : sheet.data().rows()) {
                assertThat(pdf).contains("$" + row.get(4));
            }
        }
        assertThat(new CaseCards().make(context).stream().mapToInt(s -> s.data().rows().size()).sum())
                .isEqualTo(new OnOffer(context).slots().size());
    }

    @Test
    void unknownSpice_leavesEveryKnownAllergenOnTheCard_andNoAbsence() {
        Book book = Contexts.sample().book();
        Map<String, Ingredient> ingredients = new TreeMap<>(book.ingredients());
        ingredients.computeIfPresent("salt", (id, i) -> EveryDish.named(i, "smoked salt", Ingredient.Statement.UNKNOWN));
        PaperContext context = EveryDish.of(EveryDish.with(book, ingredients, book.recipes()));
        int above = 0;
        for (Sheet sheet : new CaseCards().make(context)) {
            for (List<String> row : sheet.data().rows()) {
                boolean salted = DishFacts.of(context, row.get(2)).ingredients().stream().anyMatch(i -> i.id().equals("salt"));
                assertThat(row.get(5).contains("not stated: ") && row.get(5).contains("smoked salt")).isEqualTo(salted);
                assertThat(salted && row.get(5).contains("lists none")).isFalse();
                above += salted ? 1 : 0;
            }
        }
        assertThat(above).isGreaterThan(3);
        String cards = new CaseCards().make(context).stream().map(EveryDish::words).collect(Collectors.joining("\n"));
        assertThat(cards).contains("Contains sesame. Other allergens not stated: smoked salt.")
                .contains("Contains milk, wheat. Other allergens not stated: smoked salt.");
        assertThat(EveryDish.words(new Labels().make(context).get(0)))
                .contains("What is known: Contains sesame. Other allergens not stated: smoked salt.");
    }

    @Test
    void farms_comeFromOrdersThatWereSent() {
        PaperContext context = sample();
        String card = text(new CaseCards().make(context));
        assertThat(card).contains("Grown by Hollow Brook Acre (carrots).");
        OrderKey farm = new OrderKey("hollow-brook", MONDAY);
        assertThat(text(new CaseCards().make(Contexts.notSent(context, Set.of(farm))))).doesNotContain("Hollow Brook");
        assertThat(text(new CaseCards().make(Contexts.sample()))).doesNotContain("Grown by");
        PaperContext stock = Contexts.of(context.book(), EveryDish.flowing(context.plan(), List.of(
                new WeekPlan.Flow("carrot", Optional.empty(), MONDAY.plusDays(3), 1_000_000))));
        assertThat(text(new CaseCards().make(stock))).doesNotContain("Grown by");
    }

    @Test
    void sheetsThatRestOnAnOrder_nameIt() {
        OrderKey farm = new OrderKey("hollow-brook", MONDAY);
        assertThat(new CaseCards().make(sample()).stream().filter(s -> s.id().equals("case-card-" + MONDAY.plusDays(3)))
                .findFirst().orElseThrow().behind()).contains(farm);
        assertThat(new MembersSheets().make(sample())).allSatisfy(s -> assertThat(s.behind()).contains(farm));
    }

    @Test
    void coolingLog_namesEveryMakingOfTheDayThatGetsCold() {
        PaperContext context = sample();
        for (Sheet log : new Logs().make(context).stream().filter(s -> s.id().endsWith("cooling")).toList()) {
            String words = EveryDish.words(log);
            context.plan().batches().stream().filter(b -> log.id().contains(b.made().toString()))
                    .forEach(b -> assertThat(words).contains(context.called().recipe(b.recipe())));
            assertThat(words).contains("From 135 F to 70 F within 2 hours", "to 41 F within 6 hours in all",
                    "your county health department decides");
        }
    }

    @Test
    void unknownEdition_isSaid_andTakesTheStricterNumber() {
        Book book = Contexts.sample().book();
        PaperContext context = Contexts.of(EveryDish.with(book, EveryDish.kitchen(book.kitchen(), book.kitchen().paperwork(),
                "County rules of 1999")), Contexts.sample().plan());
        assertThat(text(new Logs().make(context))).contains(
                "The kitchen works by County rules of 1999, which has no table here: limits are the stricter number of");
    }

    @Test
    void servedRaw_isSaidOnEveryDishAboveIt() {
        Book book = Contexts.sample().book();
        Map<String, Recipe> recipes = new TreeMap<>(book.recipes());
        recipes.computeIfPresent("soffritto", (id, r) -> EveryDish.named(r, r.name(), new Recipe.Care(false,
                Optional.of("duck egg"), Optional.empty(), Optional.empty())));
        recipes.computeIfPresent("house-marinara", (id, r) -> EveryDish.named(r, r.name(), Recipe.Care.NONE));
        PaperContext context = Contexts.of(EveryDish.with(book, book.ingredients(), recipes), Contexts.sample().plan());
        assertThat(text(new CaseCards().make(context))).contains("Served raw or undercooked: duck egg. Eating raw or"
                + " undercooked animal food raises the risk of foodborne illness");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"12 oz, Net wt 12 oz (340 g)", "1.25 lb, Net wt 1 lb 4 oz (566 g)", "340 g, Net wt 11.9 oz (340 g)",
        "2 lb, Net wt 2 lb (907 g)"})
    void declaredWeight_standsInBothSystems_neverMore(String declared, String words) {
        Recipe dish = SamplePlan.book().recipe("house-hummus");
        assertThat(NetWeight.of(EveryDish.named(dish, "x", new Recipe.Care(false, Optional.empty(),
                croftboard.measure.Amount.parse(declared), Optional.empty())))).isEqualTo(words);
        assertThat(NetWeight.of(EveryDish.named(dish, "x", Recipe.Care.NONE))).isEqualTo("Net wt ________ oz  ________ g");
    }

    @Test
    void incompletePlan_hasNoLabels_andSaysSoOnCards() {
        PaperContext c = sample();
        PaperContext incomplete = Contexts.of(c.book(), SamplePlan.incomplete(c.book()));
        assertThat(new Labels().make(incomplete)).hasSize(1);
        assertThat(text(new Labels().make(incomplete))).contains("the plan is not complete");
        assertThat(text(new CaseCards().make(incomplete))).contains("not for the case yet");
    }

    @Test
    void dishThatTheBookNoLongerHas_isNotStatedAsAWhole() {
        Book book = Contexts.sample().book();
        Map<String, Recipe> recipes = new TreeMap<>(book.recipes());
        recipes.remove("carrot-slaw");
        PaperContext context = Contexts.of(EveryDish.with(book, book.ingredients(), recipes), Contexts.sample().plan());
        ALL.forEach(m -> m.make(context));
        assertThat(text(new CaseCards().make(context))).contains("Allergens not stated: carrot-slaw.");
    }

    @Test
    void hostileWords_surviveOnEverySheet() {
        Book book = Contexts.sample().book();
        Map<String, Recipe> recipes = new TreeMap<>(book.recipes());
        recipes.replaceAll((id, r) -> EveryDish.named(r, Contexts.HOSTILE + id, r.care()));
        Map<String, Ingredient> ingredients = new TreeMap<>(book.ingredients());
        ingredients.replaceAll((id, i) -> EveryDish.named(i, "=1+1 " + Contexts.HOSTILE + id, i.allergens()));
        PaperContext context = Contexts.of(EveryDish.packed(EveryDish.with(book, ingredients, recipes),
                Set.of("standing-dip", "cold-salad-1"), EveryDish.LARGE), Contexts.sample().plan());
        for (SheetMaker maker : ALL) {
            List<Sheet> sheets = maker.make(context);
            assertThat(sheets).as(maker.kind().word()).isNotEmpty();
            assertThat(text(sheets)).as(maker.kind().word()).contains("</td><script>alert(1)</script>")
                    .doesNotContain("\u202E", "\u0007");
            List<String> pages = PdfText.pages(context, sheets.subList(0, Math.min(2, sheets.size())));
            assertThat(String.join("", pages)).as(maker.kind().word()).contains("alert(1)");
        }
        assertThat(text(new Labels().make(context))).contains("its words do not fit the label in readable type");
    }
}
