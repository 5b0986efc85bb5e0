package croftboard.plan.check;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanFile;
import croftboard.plan.file.PlanReading;
import java.time.LocalDate;
import java.util.function.Predicate;

/** A plan to be lied in: its file as a tree, changed in places and read again. */
final class Edit {
    private static final ObjectMapper JSON = new ObjectMapper();
    final ObjectNode root;

    Edit(WeekPlan plan) {
        try {
            root = (ObjectNode) JSON.readTree(PlanFile.write(plan));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    WeekPlan plan() {
        return PlanFile.read(root.toString()).fold(PlanReading.Read::plan, a -> {
            throw new AssertionError(a.why());
        }, r -> {
            throw new AssertionError(r.why());
        });
    }

    ObjectNode object(String key) {
        return (ObjectNode) root.get(key);
    }

    ArrayNode rows(String key) {
        return (ArrayNode) root.get(key);
    }

    /** The first row that fits; there must be one. */
    static ObjectNode first(JsonNode rows, Predicate<JsonNode> fits) {
        for (JsonNode row : rows) {
            if (fits.test(row)) {
                return (ObjectNode) row;
            }
        }
        throw new AssertionError("no row fits");
    }

    static boolean is(JsonNode row, String key, String value) {
        return row.get(key).asText().equals(value);
    }

    ObjectNode dish(String slot) {
        return first(rows("menu"), r -> is(r, "slot", slot));
    }

    ObjectNode production(String slot) {
        return (ObjectNode) dish(slot).get("productions").get(0);
    }

    ObjectNode order(String vendor) {
        return first(rows("orders"), r -> is(r, "vendor", vendor));
    }

    ObjectNode line(String vendor, String item) {
        return first(order(vendor).get("lines"), r -> is(r, "item", item));
    }

    static void add(ObjectNode row, String key, long more) {
        row.put(key, row.get(key).longValue() + more);
    }

    static void days(ObjectNode row, String key, long later) {
        row.put(key, LocalDate.parse(row.get(key).asText()).plusDays(later).toString());
    }

    static void remove(ArrayNode rows, Predicate<JsonNode> which) {
        for (int i = 0; i < rows.size(); i++) {
            if (which.test(rows.get(i))) {
                rows.remove(i);
                return;
            }
        }
        throw new AssertionError("no row fits");
    }

    void account(String key, long more) {
        add(object("account"), key, more);
    }

    /** Packs more on a line, with its money carried through to the account and the share. */
    void packs(String vendor, String item, int more) {
        ObjectNode line = line(vendor, item);
        add(line, "packs", more);
        money(vendor, line, more * line.get("priceCents").longValue());
    }

    void money(String vendor, ObjectNode line, long cents) {
        add(line, "costCents", cents);
        add(order(vendor), "totalCents", cents);
        account("purchasesCents", cents);
        String locality = line.get("locality").asText();
        add(object("share"), locality.equals("local") ? "localCents" : locality.equals("not-local") ? "notLocalCents"
                : "unclassifiedCents", cents);
        if (!locality.equals("not-local")) {
            account(locality.equals("local") ? "localPurchasesCents" : "unclassifiedCents", cents);
        }
    }

    static void batches(ObjectNode row, Ratio more) {
        String[] parts = (row.get("batches").asText() + "/1").split("/");
        row.put("batches", Ratio.of(Long.parseLong(parts[0]), Long.parseLong(parts[1])).plus(more).toString());
    }
}
