package croftboard.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.file.SmallKitchen;
import croftboard.plan.Given;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Every kind of place in a plan's file, changed alone: a number by one, a date by a day, yes to no, a word to another.
 * The checker finds each, but for what no book can tell: how the plan was searched for, and plain words.
 */
class EveryFigureTest {
    private static final List<String> NOT_TO_BE_DERIVED = List.of("$.format", "$.week", "$.inputs.seed", "$.inputs.tries",
            "$.inputs.rounds", "$.inputs.nodes", "$.inputs.from", "$.inputs.gone", "$.proof.how", "$.proof.bestForMenuCents",
            "$.proof.bestAtAllCents", "$.missing[].what", "$.missing[].mend", "$.promises[].say");

    private record Place(ObjectNode parent, String key, String path) { }

    private static void findsEach(Book book, WeekPlan plan, int each) {
        Edit edit = new Edit(plan);
        Map<String, List<Place>> kinds = new TreeMap<>();
        places(edit.root, "$", kinds);
        NOT_TO_BE_DERIVED.forEach(kinds::remove);
        Random g = new Random(9);
        List<String> unfound = new ArrayList<>();
        kinds.forEach((kind, places) -> {
            for (int n = 0; n < Math.min(each, places.size()); n++) {
                Place place = places.get(places.size() <= each ? n : g.nextInt(places.size()));
                JsonNode true_ = place.parent.get(place.key);
                place.parent.set(place.key, changed(true_, place, g.nextBoolean() ? 1 : -1));
                if (PlanChecker.check(book, edit.plan(), Given.NOTHING, Optional.empty()).ok()) {
                    unfound.add(place.path + ": " + true_ + " to " + place.parent.get(place.key));
                }
                place.parent.set(place.key, true_);
            }
        });
        assertThat(unfound).isEmpty();
        assertThat(PlanChecker.check(book, edit.plan(), Given.NOTHING, Optional.empty()).findings()).isEmpty();
        assertThat(kinds).hasSizeGreaterThan(60);
    }

    private static void places(JsonNode node, String kind, Map<String, List<Place>> kinds) {
        if (node instanceof ArrayNode rows) {
            rows.forEach(row -> places(row, kind + "[]", kinds));
        } else if (node instanceof ObjectNode object) {
            object.properties().forEach(e -> {
                String path = kind + "." + e.getKey();
                if (e.getValue().isValueNode() || path.equals("$.menu[].days")) {
                    kinds.computeIfAbsent(path, k -> new ArrayList<>()).add(new Place(object, e.getKey(), path));
                } else {
                    places(e.getValue(), path, kinds);
                }
            });
        }
    }

    private static JsonNode changed(JsonNode value, Place place, int by) {
        var nodes = com.fasterxml.jackson.databind.node.JsonNodeFactory.instance;
        if (value.isArray()) {
            return ((ArrayNode) value.deepCopy()).add("2027-08-22");
        }
        if (value.isNumber()) {
            return nodes.numberNode(value.longValue() + by);
        }
        if (value.isBoolean()) {
            return nodes.booleanNode(!value.booleanValue());
        }
        if (value.isNull()) {
            return nodes.textNode(place.key.equals("recipe") ? "lentil-bake" : "2027-08-16");
        }
        return nodes.textNode(changedText(value.textValue(), place.key, by));
    }

    private static String changedText(String text, String key, int by) {
        return switch (key) {
            case "made", "lastServed", "useBy", "delivery", "day" -> LocalDate.parse(text).plusDays(by).toString();
            case "cutOff" -> LocalDateTime.parse(text).plusMinutes(by).toString();
            case "batches" -> "97/101";
            case "locality" -> text.equals("local") ? "unclassified" : "local";
            case "promise" -> text.equals("variety") ? "coverage" : "variety";
            case "target" -> "1/7";
            default -> text + "x";
        };
    }

    @Test
    void smallKitchen_everyPlaceChangedIsFound() {
        Book book = SmallKitchen.book();
        findsEach(book, MadePlan.of(book, RandomBook.WEEK), 2);
    }

    @Test
    void smallKitchenWithBrokenMusts_everyPlaceChangedIsFound() {
        Book book = SmallKitchen.book();
        findsEach(book, MadePlan.broken(book, RandomBook.WEEK, Given.NOTHING), 1);
    }

    @Test
    void randomBooks_everyPlaceChangedIsFound() {
        for (long seed = 0; seed < 3; seed++) {
            findsEach(RandomBook.of(seed), MadePlan.of(RandomBook.of(seed), RandomBook.WEEK), 1);
        }
    }
}
