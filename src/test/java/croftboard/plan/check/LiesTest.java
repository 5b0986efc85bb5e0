package croftboard.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.file.SmallKitchen;
import croftboard.measure.Ratio;
import croftboard.plan.Given;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Lies told well: not one figure alone but all that hang on it carried through, so that only the book gives them away. And
 * true plans held against a book that says otherwise in one place.
 */
class LiesTest {
    private static final Book BOOK = SmallKitchen.book();
    private static final WeekPlan TRUE = MadePlan.withMenu(BOOK, RandomBook.WEEK, Map.ofEntries(
            Map.entry("mon/hot-main-1", "lentil-bake"), Map.entry("tue/hot-main-1", "penne-bake"),
            Map.entry("wed/hot-main-1", "lentil-bake"), Map.entry("fri/hot-main-1", "penne-bake"),
            Map.entry("mon/cold-salad-1", "chickpea-salad"), Map.entry("thu/cold-salad-1", "chickpea-salad"),
            Map.entry("mon/standing-dip", "house-hummus"), Map.entry("thu/standing-dip", "house-hummus"),
            Map.entry("harvest-meal/main", "lentil-bake")));

    private static List<String> findings(Book book, WeekPlan plan) {
        return PlanChecker.check(book, plan, Given.NOTHING, Optional.empty()).findings();
    }

    private static Arguments lie(String name, String found, Consumer<Edit> told) {
        return Arguments.of(name, found, told);
    }

    static Stream<Arguments> lies() {
        return Stream.of(
                lie("a portion more, in the row and its production", "portions of 3 batches", e -> {
                    Edit.add(e.dish("mon/hot-main-1"), "portions", 1);
                    Edit.add(e.production("mon/hot-main-1"), "portions", 1);
                }),
                lie("a batch step fewer", "derived again 3", e -> {
                    Edit.batches(e.production("mon/hot-main-1"), Ratio.of(-1, 4));
                    Edit.add(e.production("mon/hot-main-1"), "portions", -8);
                    Edit.add(e.dish("mon/hot-main-1"), "portions", -8);
                }),
                lie("a cent more of sales", "expected sales", e -> {
                    Edit.add(e.dish("tue/hot-main-1"), "salesCents", 1);
                    e.account("salesCents", 1);
                }),
                lie("a cent more of left portions", "worth of left portions", e -> {
                    Edit.add(e.dish("tue/hot-main-1"), "leftCents", 1);
                    e.account("leftCents", 1);
                }),
                lie("a cent less of staples in a dish", "staples", e -> {
                    Edit.add(e.dish("mon/hot-main-1"), "staplesCents", -1);
                    e.account("staplesCents", -1);
                }),
                lie("a cent less of staples in a batch", "house-marinara of Sun 15 Aug: staples", e -> {
                    Edit.add((ObjectNode) e.rows("batches").get(0), "staplesCents", -1);
                    e.account("staplesCents", -1);
                }),
                lie("a pack less", "more than it brings", e -> e.packs("mill-run-depot", "chickpea", -2)),
                lie("a pack less, its surplus too", "keeps", e -> {
                    e.packs("mill-run-depot", "lemon", -1);
                    Edit.remove(e.rows("surplus"), s -> Edit.is(s, "item", "lemon"));
                }),
                lie("a price a cent lower", "price of a pack", e -> {
                    ObjectNode line = e.line("mill-run-depot", "carrot");
                    Edit.add(line, "priceCents", -1);
                    e.money("mill-run-depot", line, -line.get("packs").longValue());
                }),
                lie("a pack that holds more", "contents", e -> Edit.add(e.line("mill-run-depot", "carrot"), "packMg", 7)),
                lie("no fee", "fee", e -> {
                    e.order("hollow-brook").put("feeCents", 0);
                    e.account("feesCents", -800);
                }),
                lie("a smaller minimum", "minimum", e -> e.order("hollow-brook").put("minimumCents", 5000)),
                lie("a minimum already met", "missing to the minimum", e -> e.order("hollow-brook").put("toMinimumCents", 0)),
                lie("a later cut-off", "cut-off", e -> e.order("hollow-brook").put("cutOff", "2027-08-13T13:00")),
                lie("a delivery a day later", "does not deliver", e -> Edit.days(e.order("hollow-brook"), "delivery", 1)),
                lie("an order of a stranger", "no such vendor", e -> e.order("hollow-brook").put("vendor", "nobody")),
                lie("more packs than the list has", "where 5 are on the list", e -> e.packs("hollow-brook", "carrot", 3)),
                lie("a commitment not taken", "where 1 are promised", e -> e.packs("hollow-brook", "carrot", -3)),
                lie("a commitment's line left out", "where 1 are promised", e -> {
                    e.packs("hollow-brook", "carrot", -3);
                    Edit.remove(e.rows("orders"), o -> Edit.is(o, "vendor", "hollow-brook"));
                }),
                lie("a calendar's line called a list's", "rests on this week's list",
                        e -> e.line("mill-run-depot", "carrot").put("onList", true)),
                lie("a free line called promised", "marked as promised",
                        e -> e.line("mill-run-depot", "carrot").put("promised", true)),
                lie("a staple not brought back to par", "one line brings it back", e -> {
                    e.packs("mill-run-depot", "salt", -1);
                    Edit.remove((com.fasterxml.jackson.databind.node.ArrayNode) e.order("mill-run-depot").get("lines"),
                            l -> Edit.is(l, "item", "salt"));
                    Edit.remove(e.rows("surplus"), s -> Edit.is(s, "item", "salt"));
                    e.account("keptCents", -1100);
                }),
                lie("a staple bought without need", "not counted below its par", e -> {
                    ObjectNode line = e.line("mill-run-depot", "salt").deepCopy();
                    ((com.fasterxml.jackson.databind.node.ArrayNode) e.order("mill-run-depot").get("lines")).add(
                            line.put("item", "curry-powder").put("pack", "5 lb jar"));
                }),
                lie("unknown called local", "share: 50 lb sack of carrot", e -> {
                    ObjectNode line = e.line("mill-run-depot", "carrot");
                    long cents = line.get("costCents").longValue();
                    line.put("locality", "local");
                    Edit.add(e.object("share"), "localCents", cents);
                    Edit.add(e.object("share"), "unclassifiedCents", -cents);
                    e.account("localPurchasesCents", cents);
                    e.account("unclassifiedCents", -cents);
                }),
                lie("a lower target", "share: target", e -> e.object("share").put("target", "1/4")),
                lie("another definition", "share: definition", e -> e.object("share").put("definition", "anywhere")),
                lie("a need left out with its flow", "is left out", e -> {
                    Edit.remove(e.rows("needs"), n -> Edit.is(n, "item", "cheddar"));
                    Edit.remove(e.rows("flows"), n -> Edit.is(n, "item", "cheddar"));
                }),
                lie("a need a gram smaller with its flow", "cheddar on Tue 17 Aug", e -> {
                    Edit.add(Edit.first(e.rows("needs"), n -> Edit.is(n, "item", "cheddar")), "neededMg", -1000);
                    Edit.add(Edit.first(e.rows("flows"), n -> Edit.is(n, "item", "cheddar")), "usedMg", -1000);
                }),
                lie("a need of a milligram too much with its flow", "cheddar on Tue 17 Aug", e -> {
                    Edit.add(Edit.first(e.rows("needs"), n -> Edit.is(n, "item", "cheddar")), "neededMg", 1);
                    Edit.add(Edit.first(e.rows("flows"), n -> Edit.is(n, "item", "cheddar")), "usedMg", 1);
                }),
                lie("a need nobody has", "nothing that is made takes it", e -> e.rows("needs").add(
                        Edit.first(e.rows("needs"), n -> true).deepCopy().put("item", "tahini").put("day", "2027-08-20"))),
                lie("a flow beyond the item's life", "usable only from then for 7 days", e -> Edit.first(e.rows("flows"),
                        f -> Edit.is(f, "item", "thyme") && Edit.is(f, "day", "2027-08-18")).put("delivery", "2027-08-10")),
                lie("a flow before the delivery", "usable only from then", e -> Edit.first(e.rows("flows"),
                        f -> Edit.is(f, "item", "chickpea")).put("delivery", "2027-08-16")),
                lie("more from stock than there is", "is taken from stock", e -> {
                    ObjectNode stock = Edit.first(e.rows("flows"), f -> Edit.is(f, "item", "carrot"));
                    ObjectNode fresh = Edit.first(e.rows("flows"), f -> Edit.is(f, "item", "carrot")
                            && Edit.is(f, "delivery", "2027-08-10"));
                    Edit.add(stock, "usedMg", 1000);
                    Edit.add(fresh, "usedMg", -1000);
                }),
                lie("surplus forgotten", "tahini that keeps", e -> {
                    Edit.remove(e.rows("surplus"), s -> Edit.is(s, "item", "tahini"));
                    e.account("keptCents", -2716);
                }),
                lie("waste called kept", "thyme that keeps", e -> {
                    ObjectNode thyme = Edit.first(e.rows("surplus"), s -> Edit.is(s, "item", "thyme"));
                    e.account("wasteCents", -thyme.get("wasteCents").longValue());
                    thyme.put("keptMg", thyme.get("wastedMg").longValue()).put("wastedMg", 0).put("wasteCents", 0);
                }),
                lie("surplus worth a cent more", "worth of what keeps", e -> {
                    Edit.add(Edit.first(e.rows("surplus"), s -> Edit.is(s, "item", "tahini")), "keptCents", 1);
                    e.account("keptCents", 1);
                }),
                lie("a batch a day late", "is not ready in time", e -> Edit.days((ObjectNode) e.rows("batches").get(0), "made", 2)),
                lie("a batch left out", "is not ready in time", e -> e.rows("batches").remove(1)),
                lie("a batch made twice", "a step or more too many",
                        e -> e.rows("batches").add(e.rows("batches").get(1).deepCopy()).add(e.rows("batches").get(1).deepCopy())),
                lie("a batch of part of a step", "no whole number of steps",
                        e -> Edit.batches((ObjectNode) e.rows("batches").get(0), Ratio.of(1, 8))),
                lie("a use-by date a day later", "use-by: lentil-bake on wed/hot-main-1",
                        e -> Edit.days(e.production("wed/hot-main-1"), "useBy", 1)),
                lie("a production a day early", "where the last prep day",
                        e -> Edit.days(e.production("tue/hot-main-1"), "made", -1)),
                lie("a day of the run unserved", "no production serves", e -> Edit.days(e.production("mon/cold-salad-1"),
                        "lastServed", -1)),
                lie("the same dish again within the gap", "1 days apart where 2 are the least", e -> {
                    for (String key : List.of("recipe", "portions", "salesCents", "leftCents", "staplesCents", "productions")) {
                        e.dish("tue/hot-main-1").set(key, e.dish("mon/hot-main-1").get(key).deepCopy());
                    }
                }),
                lie("a dish of another course", "does not fit the course", e -> e.dish("mon/hot-main-1").put("recipe",
                        "carrot-slaw")),
                lie("a component served as a dish", "is no dish", e -> e.dish("mon/hot-main-1").put("recipe", "soffritto")),
                lie("another dish on a standing line", "the line always holds", e -> e.dish("mon/standing-dip").put("recipe",
                        "carrot-slaw")),
                lie("another dish than the event's menu says", "the event's menu says",
                        e -> e.dish("harvest-meal/main").put("recipe", "penne-bake")),
                lie("a mark too many", "marks of lentil-bake", e -> e.dish("mon/hot-main-1").put("marks", "V")),
                lie("a mark on a dish of unknown allergens", "marks of lentil-bake",
                        e -> e.dish("mon/hot-main-1").put("marks", "W")),
                lie("a mark too few", "marks of chickpea-salad", e -> e.dish("mon/cold-salad-1").put("marks", "")),
                lie("a dish called kept", "kept by the manager", e -> e.dish("mon/hot-main-1").put("kept", true)),
                lie("a pin that was lost", "was to be kept", e -> e.object("inputs").putObject("kept").put("mon/hot-main-1",
                        "penne-bake")),
                lie("a slot left out", "is left out", e -> e.rows("menu").remove(3)),
                lie("a slot twice", "stands there twice", e -> e.rows("menu").add(e.rows("menu").get(3).deepCopy())),
                lie("a slot of no line", "has no slot", e -> e.dish("thu/hot-main-1").put("slot", "sun/hot-main-1")),
                lie("a broken promise left out", "leaves out coverage", e -> {
                    Edit.remove((com.fasterxml.jackson.databind.node.ArrayNode) e.object("account").get("broken"),
                            b -> Edit.is(b, "promise", "coverage"));
                    ObjectNode row = Edit.first(e.rows("promises"), p -> Edit.is(p, "id", "coverage vegan-main"));
                    row.put("kept", true).put("amount", 0).put("costCents", 0);
                }),
                lie("a promise in words called kept", "coverage vegan-main on Mon 16 Aug, kept", e -> Edit.first(
                        e.rows("promises"), p -> Edit.is(p, "id", "coverage vegan-main")).put("kept", true).put("amount", 0)
                        .put("costCents", 0)),
                lie("event sales of one head more", "event sales", e -> e.account("eventSalesCents", 1600)),
                lie("a minute of overtime", "overtime", e -> e.account("overtimeCents", 47)),
                lie("a substitute that is not one", "swaps", e -> e.object("swaps").putObject("lentil-bake").put("thyme",
                        "thyme-dried")),
                lie("a must owned up to that holds", "which is not so", e -> e.rows("missing").addObject()
                        .put("what", "2.00 lb of lemons for Mon 16 Aug cannot be bought").put("mend", "")),
                lie("another must owned up to than the broken one", "does not say that Steam kettles on Wed 18 Aug",
                        e -> ((ObjectNode) e.rows("missing").get(0)).put("what", "the Dock needs 3 minutes more")),
                lie("complete though something is missing", "does not say that Steam kettles on Wed 18 Aug", e -> e.rows("missing").removeAll()),
                lie("a proof below the plan's own worth", "proof", e -> e.object("proof").put("bestAtAllCents", 1)),
                lie("another book", "another state of the book", e -> e.root.put("fingerprint", "0")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lies")
    void lie_isFound(String name, String found, Consumer<Edit> told) {
        assertThat(findings(BOOK, TRUE)).as("before").isEmpty();
        Edit edit = new Edit(TRUE);
        told.accept(edit);
        assertThat(findings(BOOK, edit.plan())).as(name).anyMatch(f -> f.contains(found));
    }

    private static Arguments book(String name, String found, EditedKitchen kitchen) {
        return Arguments.of(name, found, kitchen);
    }

    private static final String DISHES = "recipes/dishes.yaml";
    private static final String FRESH = "kitchen/ingredients/fresh.yaml";
    private static final String KITCHEN = "kitchen/kitchen.yaml";
    private static final String BROOK = "farms/hollow-brook.yaml";
    private static final String DEPOT = "farms/mill-run-depot.yaml";

    static Stream<Arguments> books() {
        return Stream.of(
                book("a dish out of season", "it is out of season", new EditedKitchen().change(DISHES,
                        "weeks: W01..W52", "weeks: W34..W52")),
                book("a dish of a shorter life", "good only until", new EditedKitchen().change(DISHES,
                        "life: 5 days\n  hold: cold\n  lead: 1 day", "life: 3 days\n  hold: cold\n  lead: 1 day")),
                book("a component ready a day later", "nothing that takes it", new EditedKitchen().change(
                        "recipes/components.yaml", "  life: 4 days\n  hold: cold\n  lead: 0 days",
                        "  life: 4 days\n  hold: cold\n  lead: 1 day")),
                book("a better yield", "the recipes take", new EditedKitchen().change(FRESH, "grated: {yield: 78%", "grated: "
                        + "{yield: 79%").change(FRESH, "diced: {yield: 80%", "diced: {yield: 79%")),
                book("a heavier pack", "contents", new EditedKitchen().change(BROOK, "holds: 25 lb", "holds: 26 lb")),
                book("a thaw of two days", "is left out", new EditedKitchen().change("kitchen/ingredients/pantry.yaml",
                        "thaw: 1 day", "thaw: 2 days")),
                book("a demand of another shape", "derived again", new EditedKitchen().change("seasons/demand.yaml",
                        "hot-main-1: {cv: 0.30", "hot-main-1: {cv: 0.60")),
                book("another price of a dish", "expected sales", new EditedKitchen().change(DISHES, "price: $9.50",
                        "price: $9.60")),
                book("a closed day", "days of", new EditedKitchen().change("seasons/closures.yaml", "2027-11-25",
                        "2027-08-18")),
                book("an event of more heads", "event sales", new EditedKitchen().change("seasons/events.yaml",
                        "guarantee: 60", "guarantee: 61")),
                book("a vendor whose papers have run out", "papers do not hold", new EditedKitchen().change(BROOK,
                        "may_buy: 2026-01-01..2028-12-31", "may_buy: 2026-01-01..2027-08-01")),
                book("a higher minimum", "below $80.00", new EditedKitchen().change(BROOK, "minimum: $60", "minimum: $80")),
                book("a list with fewer packs", "where 2 are on the list", new EditedKitchen().change(
                        "farms/lists/2027-W33.csv", "$23.00,5,mon", "$23.00,2,mon")),
                book("a calendar that only hopes", "is not to be had", new EditedKitchen().change(DEPOT,
                        "{item: tahini, pack: 10 lb pail, holds: 10 lb, price: $52.00, grown_at: unknown, processed_at: unknown, "
                                + "weeks: [{from: W01, to: W53, packs: 10, confidence: sure}]}",
                        "{item: tahini, pack: 10 lb pail, holds: 10 lb, price: $52.00, grown_at: unknown, processed_at: unknown, "
                                + "weeks: [{from: W01, to: W53, packs: 10, confidence: hope}]}")),
                book("a commitment of more packs", "where 4 are promised", new EditedKitchen().change(BROOK,
                        "to: W38, packs: 1}", "to: W38, packs: 4}")),
                book("a farm that is far away", "share: 25 lb sack of carrot", new EditedKitchen().change(BROOK,
                        "place: {town: Quillby, state: NY, latitude: 42.61, longitude: -76.93}",
                        "place: {town: Quillby, state: NV, latitude: 39.61, longitude: -116.93}")),
                book("an allergen not stated", "marks of chickpea-salad", new EditedKitchen().change(
                        "kitchen/ingredients/pantry.yaml", "  label: chickpeas\n  origin: plant\n  allergens: none",
                        "  label: chickpeas\n  origin: plant\n  allergens: unknown")),
                book("fewer hands", "Hot line on", new EditedKitchen().change(KITCHEN, "sun: {hot: 4 h}", "sun: {hot: 1 h}")
                        .change(KITCHEN, "mon: {hot: 7 h}", "mon: {hot: 1 min}").change(KITCHEN, "limit: 2 h", "limit: 10 min")),
                book("overtime", "account: overtime", new EditedKitchen().change(KITCHEN, "mon: {hot: 7 h}",
                        "mon: {hot: 1 h}")),
                book("fewer pans", "Convection ovens on", new EditedKitchen().change(KITCHEN, "per_day: 24", "per_day: 14")),
                book("less room in the walk-in", "Walk-in shelves on", new EditedKitchen().change(KITCHEN, "per_day: 60",
                        "per_day: 20")),
                book("fewer bowls a week", "Bowl mixer in the week", new EditedKitchen().change(KITCHEN, "per_week: 20",
                        "per_week: 6")),
                book("a slower dock", "Dock on", new EditedKitchen().change(KITCHEN, "minutes: 12 min", "minutes: 70 min")),
                book("a longer gap", "7 are the least", new EditedKitchen().change(KITCHEN, "gap: 2 days", "gap: 7 days")),
                book("stock counted long ago", "is taken from stock", new EditedKitchen().change("kitchen/on-hand.csv",
                        "carrot,12 lb,2027-08-12", "carrot,12 lb,2027-07-12")),
                book("dearer waste", "cost of what is thrown away", new EditedKitchen().change(KITCHEN, "waste: $0.15",
                        "waste: $0.45")),
                book("a dearer empty slot", "leaves out empty slot", new EditedKitchen().change(KITCHEN, "empty_slot: $150",
                        "empty_slot: $160")),
                book("a promise of more", "coverage without-three", new EditedKitchen().change(KITCHEN, "at_least: 2",
                        "at_least: 3")),
                book("dearer sameness", "leaves out variety", new EditedKitchen().change(KITCHEN,
                        "within: next-day, at_most: 1, price: $8", "within: next-day, at_most: 1, price: $9")),
                book("a costlier uneven day", "leaves out evenness", new EditedKitchen().change(KITCHEN, "labour_evenness: $0.05",
                        "labour_evenness: $0.07")),
                book("a tighter food cost", "leaves out food cost", new EditedKitchen().change(KITCHEN, "at_most: 36%",
                        "at_most: 2%")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void bookThatSaysOtherwise_isFound(String name, String found, EditedKitchen kitchen) {
        assertThat(findings(kitchen.book(), TRUE)).as(name).anyMatch(f -> f.contains(found));
    }

    @Test
    void cutOffThatIsPast_isFound() {
        Optional<LocalDateTime> now = Optional.of(LocalDateTime.of(2027, 8, 13, 12, 1));
        assertThat(PlanChecker.check(BOOK, TRUE, Given.NOTHING, now).findings()).anyMatch(
                f -> f.contains("hollow-brook for Mon 16 Aug: its cut-off 2027-08-13T12:00 is past"));
        Optional<LocalDateTime> before = Optional.of(LocalDateTime.of(2027, 8, 6, 15, 0));
        WeekPlan plan = MadePlan.of(BOOK, RandomBook.WEEK, Given.NOTHING, before, Map.of(), 0);
        assertThat(PlanChecker.check(BOOK, plan, Given.NOTHING, before).findings()).isEmpty();
    }

    @Test
    void dishOfALastWeekWithinTheGap_isFound() {
        Given served = new Given(List.of(), List.of(), List.of(new Given.Served("lentil-bake", LocalDate.of(2027, 8, 15))));
        assertThat(PlanChecker.check(BOOK, TRUE, served, Optional.empty()).findings()).anyMatch(
                f -> f.contains("lentil-bake on mon/hot-main-1: it is also served from Sun 15 Aug, 1 days apart"));
        Given long_ago = new Given(List.of(), List.of(), List.of(new Given.Served("lentil-bake", LocalDate.of(2027, 8, 14))));
        assertThat(PlanChecker.check(BOOK, TRUE, long_ago, Optional.empty()).findings()).isEmpty();
    }

    @Test
    void ordersOfAnotherPlan_leaveFewerPacksAndNoFee() {
        Given ordered = new Given(List.of(new Given.Ordered("hollow-brook", LocalDate.of(2027, 8, 16), "carrot", "25 lb sack", 3,
                6900)), List.of(), List.of());
        assertThat(PlanChecker.check(BOOK, TRUE, ordered, Optional.empty()).findings())
                .anyMatch(f -> f.contains("3 packs, where 2 are on the list"))
                .anyMatch(f -> f.contains("hollow-brook for Mon 16 Aug: fee"))
                .anyMatch(f -> f.contains("missing to the minimum after other plans' orders"));
    }

    @Test
    void jsonOfTheTruePlan_isTrue() {
        JsonNode root = new Edit(TRUE).root;
        assertThat(root.get("menu")).hasSize(13);
        assertThat(findings(BOOK, new Edit(TRUE).plan())).isEmpty();
    }
}
