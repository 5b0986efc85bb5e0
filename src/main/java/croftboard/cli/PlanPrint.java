package croftboard.cli;

import croftboard.cli.screen.Headline;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.Rows;
import croftboard.cli.screen.Screen;
import croftboard.cli.screen.Shown;
import croftboard.plan.WeekPlan;
import croftboard.measure.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One plan, some of its parts, one format. */
final class PlanPrint {
    private PlanPrint() { }

    static String text(Shown shown, List<Screen> screens, Page page) {
        Headline.print(shown, page);
        screens.forEach(s -> s.print(page));
        return page.toString();
    }

    static String text(Screen screen, Page page) {
        screen.print(page);
        return page.toString();
    }

    /** @param seconds that making it took by the clock; empty when it was not made just now */
    static String json(Shown shown, List<Screen> screens, OptionalDouble seconds) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("week", shown.plan().week());
        figures(shown, seconds, all);
        shown.version().ifPresent(v -> all.put("version", v));
        all.put("posted", shown.posted());
        all.put("complete", shown.plan().complete());
        all.put("value_usd", BigDecimal.valueOf(shown.plan().value(), 2));
        all.put("missing", shown.plan().missing().stream().map(PlanPrint::missing).toList());
        all.put("local_means", shown.plan().share().definition());
        screens.forEach(s -> all.put(s.name(), JsonText.objects(s.rows())));
        return JsonText.of(all);
    }

    /** What a program asks first. Cents; a figure that is not known is null; steps are null where the clock set the end. */
    private static void figures(Shown shown, OptionalDouble seconds, Map<String, Object> all) {
        WeekPlan plan = shown.plan();
        all.put("valueCents", plan.value());
        all.put("boundCents", plan.proof().bestAtAll());
        if (seconds.isPresent()) {
            all.put("seconds", BigDecimal.valueOf(seconds.getAsDouble()).setScale(1, RoundingMode.HALF_UP));
        }
        all.put("steps", plan.inputs().tries() > 0 ? Optional.of(plan.inputs().tries()) : Optional.empty());
        all.put("verdict", shown.verdict());
        Ratio local = plan.share().low();
        all.put("localShare", BigDecimal.valueOf(local.times(10_000).floor(), 4));
    }

    private static Map<String, Object> missing(WeekPlan.Missing m) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("what", m.what());
        object.put("mend", m.mend());
        return object;
    }

    static String csv(Rows rows) {
        return CsvText.of(rows);
    }
}
