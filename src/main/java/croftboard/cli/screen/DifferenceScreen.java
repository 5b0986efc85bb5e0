package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.WeekPlan;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** What differs from the plan that this one started from: dishes by slot, packs by vendor and delivery day; nothing that is equal. */
public final class DifferenceScreen implements Screen {
    private static final String NOTHING = "nothing";
    private final Shown shown;
    private final WeekPlan before;

    public DifferenceScreen(Shown shown, WeekPlan before) {
        this.shown = shown;
        this.before = before;
    }

    @Override
    public String name() {
        return "differences";
    }

    @Override
    public void print(Page page) {
        page.heading("What differs from the plan of " + before.week());
        table(page, "Dishes", "slot", dishes(before), dishes(shown.plan()));
        table(page, "Orders", "packs", packs(before), packs(shown.plan()));
        page.say("Worth " + new Cents(shown.plan().value()) + " against " + new Cents(before.value()) + ".");
    }

    private static void table(Page page, String title, String of, Map<String, String> was, Map<String, String> is) {
        page.subheading(title);
        TextTable table = new TextTable(TextTable.Column.words(of), TextTable.Column.words("before"),
                TextTable.Column.words("now"));
        int equal = 0;
        int rows = 0;
        for (String key : keys(was, is)) {
            if (Objects.equals(was.get(key), is.get(key))) {
                equal++;
            } else {
                rows++;
                table.row(key, was.getOrDefault(key, NOTHING), is.getOrDefault(key, NOTHING));
            }
        }
        if (rows > 0) {
            page.table(table);
        }
        page.say(rows + " differ, " + equal + " are as before.");
    }

    private static TreeSet<String> keys(Map<String, String> a, Map<String, String> b) {
        TreeSet<String> keys = new TreeSet<>(a.keySet());
        keys.addAll(b.keySet());
        return keys;
    }

    private SortedMap<String, String> dishes(WeekPlan plan) {
        SortedMap<String, String> dishes = new TreeMap<>();
        plan.choices().forEach((slot, recipe) -> dishes.put(slot, shown.names().recipe(recipe)));
        return dishes;
    }

    private SortedMap<String, String> packs(WeekPlan plan) {
        SortedMap<String, String> packs = new TreeMap<>();
        for (WeekPlan.Order order : plan.orders()) {
            boolean own = !order.delivery().isBefore(plan.week().monday());
            String day = order.delivery().getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH)
                    + (own ? "" : " before");
            for (WeekPlan.OrderLine line : order.lines()) {
                packs.merge(shown.names().vendor(order.vendor()) + ", " + day + ": " + shown.names().item(line.item()) + ", "
                        + line.pack(), String.valueOf(line.packs()), (a, b) -> a + " + " + b);
            }
        }
        return packs;
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("of", "before", "now");
        add(rows, dishes(before), dishes(shown.plan()));
        add(rows, packs(before), packs(shown.plan()));
        return rows;
    }

    private static void add(Rows rows, Map<String, String> was, Map<String, String> is) {
        for (String key : keys(was, is)) {
            if (!Objects.equals(was.get(key), is.get(key))) {
                rows.add(key, was.getOrDefault(key, ""), is.getOrDefault(key, ""));
            }
        }
    }
}
