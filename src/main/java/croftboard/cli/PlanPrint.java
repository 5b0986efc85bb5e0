package croftboard.cli;

import croftboard.cli.screen.Headline;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.Rows;
import croftboard.cli.screen.Screen;
import croftboard.cli.screen.Shown;
import croftboard.plan.WeekPlan;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

    static String json(Shown shown, List<Screen> screens) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("week", shown.plan().week());
        shown.version().ifPresent(v -> all.put("version", v));
        all.put("posted", shown.posted());
        all.put("complete", shown.plan().complete());
        all.put("value_usd", BigDecimal.valueOf(shown.plan().value(), 2));
        all.put("missing", shown.plan().missing().stream().map(PlanPrint::missing).toList());
        all.put("local_means", shown.plan().share().definition());
        screens.forEach(s -> all.put(s.name(), JsonText.objects(s.rows())));
        return JsonText.of(all);
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
