package croftboard.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import croftboard.book.RandomBook;
import croftboard.plan.MadePlan;
import croftboard.plan.WeekPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanFileTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static WeekPlan read(String text) {
        return PlanFile.read(text).fold(PlanReading.Read::plan, a -> {
            throw new AssertionError(a.why());
        }, r -> {
            throw new AssertionError(r.why());
        });
    }

    private static String refusal(String text) {
        return PlanFile.read(text).fold(r -> {
            throw new AssertionError("was read: " + text);
        }, a -> {
            throw new AssertionError(a.why());
        }, PlanReading.Refused::why);
    }

    @Test
    void readBack_equalsThePlanAndIsTheSameTextAgain() {
        for (long seed = 0; seed < 300; seed++) {
            WeekPlan plan = RandomPlan.of(seed);
            String text = PlanFile.write(plan);
            WeekPlan back = read(text);
            assertThat(back).as("seed " + seed).isEqualTo(plan);
            assertThat(PlanFile.write(back)).as("seed " + seed).isEqualTo(text);
        }
    }

    @Test
    void readBack_equalsPlansOfRealKitchens() {
        for (long seed = 0; seed < 30; seed++) {
            WeekPlan plan = MadePlan.of(RandomBook.of(seed), RandomBook.WEEK);
            assertThat(read(PlanFile.write(plan))).as("seed " + seed).isEqualTo(plan);
        }
    }

    @Test
    void write_putsTheFormatFirstAndOneRowOnALine() {
        String text = PlanFile.write(MadePlan.of(RandomBook.of(1), RandomBook.WEEK));
        assertThat(text).startsWith("{\n  \"format\": 2,\n  \"week\": \"2027-W33\",\n").endsWith("}\n");
        assertThat(text).containsPattern("\n    \\{\"item\": \"[a-z-]+\", \"day\": \"2027-08-1\\d\", \"neededMg\": \\d+},?\n");
    }

    @Test
    void write_marksMoneyAndMassInTheKeys() {
        JsonNode plan = tree(MadePlan.of(RandomBook.of(1), RandomBook.WEEK));
        List<String> bare = new ArrayList<>();
        numbers("", plan, bare);
        assertThat(bare).containsOnly("format", "seed", "tries", "rounds", "nodes", "portions", "packs", "rule", "day",
                "amount");
    }

    private static void numbers(String key, JsonNode node, List<String> bare) {
        if (node.isNumber()) {
            assertThat(node.isIntegralNumber()).isTrue();
            if (!key.endsWith("Cents") && !key.endsWith("Mg")) {
                bare.add(key);
            }
        }
        node.properties().forEach(e -> numbers(e.getKey(), e.getValue(), bare));
        if (node.isArray()) {
            node.forEach(n -> numbers(key, n, bare));
        }
    }

    private static JsonNode tree(WeekPlan plan) {
        try {
            return JSON.readTree(PlanFile.write(plan));
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void newerFormat_isRefusedInWords() {
        String text = PlanFile.write(RandomPlan.of(3)).replace("\"format\": 2,", "\"format\": 3,");
        assertThat(refusal(text)).contains("$.format").contains("format 3").contains("newer Croftboard");
    }

    @Test
    void olderFormat_isRead_withoutWhatItDidNotHave() {
        WeekPlan plan = MadePlan.of(RandomBook.of(1), RandomBook.WEEK);
        String old = PlanFile.write(plan).replace("\"format\": 2,", "\"format\": 1,")
                .replaceFirst(",\\s*\"revisions\": \\[\\]", "");
        assertThat(old).doesNotContain("revisions");
        assertThat(PlanFile.read(old)).isEqualTo(new PlanReading.Read(plan));
    }

    @Test
    void missingFormat_isRefused() {
        assertThat(refusal("{\"week\": \"2027-W33\"}")).contains("\"format\" is missing");
        assertThat(refusal(PlanFile.write(RandomPlan.of(3)).replace("\"format\": 2,", "\"format\": 0,")))
                .contains("$.format");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "{", "[]", "1", "null", "{} {}", "{\"format\": 1} x", "{\"format\": 1, \"format\": 1}",
        "{\"format\": 1.0}", "{\"format\": \"1\"}", "{\"format\": null}", "{\"format\": 99999999999999999999}"})
    void whatIsNoPlan_isRefused(String text) {
        assertThat(refusal(text)).isNotBlank().doesNotContain("Exception").doesNotContain("jackson");
    }

    @Test
    void deepNesting_isRefused() {
        assertThat(refusal("[".repeat(100_000))).isNotBlank();
    }

    /** Every key of every object: left out, or another one put beside it. */
    @Test
    void everyKey_isNeededAndNoOtherIsTaken() {
        WeekPlan plan = fullPlan();
        List<String> places = new ArrayList<>();
        objects("$", tree(plan), places);
        for (String place : places) {
            JsonNode root = tree(plan);
            ObjectNode object = (ObjectNode) at(root, place);
            if (place.equals("$.inputs.kept") || place.startsWith("$.swaps")) {
                continue;
            }
            object.put("extra", 1);
            assertThat(refusal(root.toString())).contains("at " + place + ":").contains("\"extra\" is not known");
            object.remove("extra");
            for (String key : keys(object)) {
                JsonNode value = object.remove(key);
                assertThat(refusal(root.toString())).contains("\"" + key + "\" is missing").contains("at " + place + ":");
                object.set(key, value);
            }
        }
        assertThat(places).hasSizeGreaterThan(15);
    }

    /** Every value of every object replaced by one of another kind. */
    @Test
    void everyValue_hasItsKind() {
        WeekPlan plan = fullPlan();
        List<String> places = new ArrayList<>();
        objects("$", tree(plan), places);
        for (String place : places) {
            JsonNode root = tree(plan);
            ObjectNode object = (ObjectNode) at(root, place);
            for (String key : keys(object)) {
                JsonNode value = object.get(key);
                JsonNode wrong = value.isNumber() ? JSON.getNodeFactory().textNode("12")
                        : JSON.getNodeFactory().numberNode(7);
                object.set(key, wrong);
                assertThat(refusal(root.toString())).as(place + "." + key).contains(place + "." + key);
                object.set(key, JSON.getNodeFactory().numberNode(1.5));
                assertThat(refusal(root.toString())).as(place + "." + key).contains(place + "." + key);
                object.set(key, value);
            }
        }
    }

    @Test
    void nullStandsOnlyWhereNothingMayStand() {
        WeekPlan plan = fullPlan();
        List<String> places = new ArrayList<>();
        objects("$", tree(plan), places);
        int taken = 0;
        for (String place : places) {
            JsonNode root = tree(plan);
            ObjectNode object = (ObjectNode) at(root, place);
            for (String key : keys(object)) {
                JsonNode value = object.replace(key, NullNode.getInstance());
                boolean optional = List.of("from", "gone", "recipe", "delivery", "bestForMenuCents", "bestAtAllCents").contains(key)
                        || key.equals("day") && place.startsWith("$.promises");
                boolean read = PlanFile.read(root.toString()).fold(r -> true, a -> false, r -> false);
                if (read) {
                    assertThat(optional).as(place + "." + key).isTrue();
                    taken++;
                }
                object.set(key, value);
            }
        }
        assertThat(taken).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2/4", "1/0", "0.5", "7/-4", "+1", "1/1", "01", "", " 1", "1e3"})
    void ratio_standsInLowestTermsOnly(String ratio) {
        String text = PlanFile.write(RandomPlan.of(5));
        Matcher m = Pattern.compile("\"target\": \"[^\"]*\"").matcher(text);
        assertThat(m.find()).isTrue();
        assertThat(refusal(m.replaceFirst("\"target\": \"" + ratio + "\""))).contains("$.share.target").contains("7/4");
    }

    /** A byte lost, doubled or changed anywhere: read as some plan or refused, never a crash. */
    @Test
    void damagedText_isReadOrRefused() {
        String text = PlanFile.write(fullPlan());
        Random g = new Random(4);
        int refused = 0;
        for (int n = 0; n < 3000; n++) {
            int at = g.nextInt(text.length());
            String damaged = switch (n % 3) {
                case 0 -> text.substring(0, at);
                case 1 -> text.substring(0, at) + text.substring(at + 1);
                default -> text.substring(0, at) + (char) (32 + g.nextInt(95)) + text.substring(at + 1);
            };
            refused += PlanFile.read(damaged).fold(r -> 0, a -> 0, r -> 1);
        }
        assertThat(refused).isGreaterThan(1500);
    }

    private static WeekPlan fullPlan() {
        for (long seed = 0;; seed++) {
            WeekPlan p = RandomPlan.of(seed);
            boolean full = !p.menu().isEmpty() && !p.menu().get(0).productions().isEmpty() && !p.batches().isEmpty()
                    && !p.orders().isEmpty() && !p.orders().get(0).lines().isEmpty() && !p.needs().isEmpty()
                    && !p.flows().isEmpty() && !p.surplus().isEmpty() && !p.account().broken().isEmpty()
                    && !p.promises().isEmpty() && !p.missing().isEmpty() && p.inputs().kept().isEmpty() && p.swaps().isEmpty()
                    && p.inputs().gone().isPresent() && p.inputs().from().isPresent() && p.proof().bestForMenu().isPresent()
                    && p.proof().bestAtAll().isPresent();
            if (full) {
                return p;
            }
        }
    }

    private static void objects(String path, JsonNode node, List<String> into) {
        if (node.isObject()) {
            into.add(path);
            for (Map.Entry<String, JsonNode> e : node.properties()) {
                objects(path + "." + e.getKey(), e.getValue(), into);
            }
        }
        if (node instanceof ArrayNode rows) {
            for (int i = 0; i < rows.size(); i++) {
                objects(path + "[" + i + "]", rows.get(i), into);
            }
        }
    }

    private static JsonNode at(JsonNode root, String path) {
        String pointer = path.substring(1).replace(".", "/").replaceAll("\\[(\\d+)]", "/$1");
        return root.at(pointer);
    }

    private static List<String> keys(ObjectNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
