package croftboard.safety.file;

import croftboard.measure.Ratio;
import croftboard.safety.AcidityTable;
import croftboard.safety.Cooked;
import croftboard.safety.FoodCode;
import croftboard.safety.Limit;
import croftboard.safety.Rule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Editions of the health code on file. An edition that is not takes the stricter number of those that are. */
public final class FoodCodes {
    private static final String EVERY = "*";
    private static final Pattern RANGE = Pattern.compile("([\\[(])([0-9.]+?)\\.\\.([0-9.]+)([])])");
    private final Map<String, FoodCode> byName = new LinkedHashMap<>();
    private final List<FoodCode> editions = new ArrayList<>();

    private FoodCodes() {
        List<Map<String, String>> limits = Rows.of("limits");
        List<Map<String, String>> cooking = Rows.of("cooking");
        for (Map<String, String> row : Rows.of("editions")) {
            FoodCode code = new FoodCode(row.get("name"), true, limits(row.get("edition"), limits),
                    cooking(row.get("edition"), cooking));
            editions.add(code);
            byName.put(plain(row.get("name")), code);
            Arrays.stream(row.get("also").split("\\|")).forEach(also -> byName.put(plain(also), code));
        }
    }

    private static final class Once {
        private static final FoodCodes ALL = new FoodCodes();
    }

    /** @param edition as the kitchen's book names it */
    public static FoodCode of(String edition) {
        FoodCode own = Once.ALL.byName.get(plain(edition));
        return own != null ? own : FoodCode.strictest("stricter number of " + String.join(" and ",
                Once.ALL.editions.stream().map(FoodCode::name).toList()), Once.ALL.editions);
    }

    private static String plain(String words) {
        return words.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private static boolean of(Map<String, String> row, String edition) {
        return row.get("edition").equals(EVERY) || row.get("edition").equals(edition);
    }

    private static Map<Rule, Limit> limits(String edition, List<Map<String, String>> rows) {
        Map<Rule, Limit> limits = new EnumMap<>(Rule.class);
        for (Map<String, String> row : rows) {
            if (of(row, edition)) {
                Rule rule = Rule.valueOf(row.get("rule").toUpperCase(Locale.ROOT).replace('-', '_'));
                limits.put(rule, new Limit(Ratio.decimal(row.get("value")), row.get("unit"), row.get("section"),
                        row.get("source"), row.get("say")));
            }
        }
        return limits;
    }

    private static Map<Cooked, List<Cooked.Minimum>> cooking(String edition, List<Map<String, String>> rows) {
        Map<Cooked, List<Cooked.Minimum>> cooking = new EnumMap<>(Cooked.class);
        for (Map<String, String> row : rows) {
            if (of(row, edition)) {
                cooking.computeIfAbsent(Cooked.valueOf(row.get("food").toUpperCase(Locale.ROOT)), k -> new ArrayList<>())
                        .add(new Cooked.Minimum(Integer.parseInt(row.get("fahrenheit")),
                                Integer.parseInt(row.get("seconds")), row.get("section"), row.get("source")));
            }
        }
        return cooking;
    }

    /** All copies of the tables of acidity and water activity. */
    public static AcidityTable acidity() {
        List<AcidityTable.Row> rows = new ArrayList<>();
        for (Map<String, String> row : Rows.of("tcs")) {
            rows.add(new AcidityTable.Row(row.get("copy"), row.get("table").equals("A")
                    ? AcidityTable.Treatment.HEATED_AND_PACKED : AcidityTable.Treatment.OTHER,
                    range(row.get("water_activity")), range(row.get("acidity")), row.get("verdict").equals("no")
                            ? AcidityTable.Verdict.NOT_CONTROLLED : AcidityTable.Verdict.ASSESS, row.get("source")));
        }
        return new AcidityTable(rows);
    }

    private static AcidityTable.Range range(String text) {
        Matcher m = RANGE.matcher(text);
        if (!m.matches()) {
            throw new IllegalStateException("no range: " + text);
        }
        return new AcidityTable.Range(Ratio.decimal(m.group(2)), m.group(1).equals("["), Ratio.decimal(m.group(3)),
                m.group(4).equals("]"));
    }
}
