package croftboard.plan.file;

import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Plans that no kitchen would make: any text, any number, empty lists. For the file's sake only. */
public final class RandomPlan {
    private static final String[] TEXT = {"", "carrot", "lentil-bake", "a \"quoted\" word", "back\\slash", "tab\tline\n",
        "crème fraîche ½ cup", "pain de épices 🍞", "null", "7/4", "\u0000\u001f\u007f\u2028"};
    private final Random g;

    private RandomPlan(long seed) {
        g = new Random(seed);
    }

    static WeekPlan of(long seed) {
        RandomPlan r = new RandomPlan(seed);
        return r.plan(IsoWeek.of(r.date()));
    }

    public static WeekPlan of(long seed, IsoWeek week) {
        return new RandomPlan(seed).plan(week);
    }

    private WeekPlan plan(IsoWeek week) {
        return new WeekPlan(week, text(), new WeekPlan.Inputs(number(), number(), (int) number(), number(), map(),
                maybe(this::text), maybe(() -> date().atTime(g.nextInt(24), g.nextInt(60))), maybe(() ->
                        new WeekPlan.Revision((int) number(), date().atTime(g.nextInt(24), g.nextInt(60)), rows(this::text)))),
                rows(this::served), rows(this::batch), rows(this::order),
                rows(() -> new WeekPlan.Need(text(), date(), number())),
                rows(() -> new WeekPlan.Flow(text(), maybe(this::date), date(), number())),
                rows(() -> new WeekPlan.Surplus(text(), number(), number(), number(), number())), account(),
                rows(() -> new WeekPlan.Promise(text(), text(), maybe(this::date), g.nextBoolean(), number(), number())),
                new WeekPlan.Share(text(), ratio(), number(), number(), number()),
                new WeekPlan.Proof(maybe(this::number), maybe(this::number), text()),
                rows(() -> new WeekPlan.Missing(text(), text())), maps());
    }

    private WeekPlan.Served served() {
        return new WeekPlan.Served(text(), text(), rows(this::date), maybe(this::text), (int) number(), number(),
                number(), number(), rows(() -> new WeekPlan.Production(date(), date(), date(), ratio(), (int) number())),
                text(), g.nextBoolean());
    }

    private WeekPlan.Batch batch() {
        return new WeekPlan.Batch(text(), date(), date(), date(), ratio(), number(), number());
    }

    private WeekPlan.Order order() {
        return new WeekPlan.Order(text(), date(), date().atTime(g.nextInt(24), g.nextInt(60)),
                rows(() -> new WeekPlan.OrderLine(text(), text(), (int) number(), number(), number(), number(),
                        WeekProblem.Locality.values()[g.nextInt(3)], text(), g.nextBoolean(), g.nextBoolean())),
                number(), number(), number(), number());
    }

    private Account account() {
        return new Account(number(), number(), number(), number(), number(), number(), number(), number(), number(),
                number(), number(), rows(() -> new Account.Broken(
                        Account.Promise.values()[g.nextInt(Account.Promise.values().length)], (int) number(),
                        (int) number(), number(), number())));
    }

    private String text() {
        return TEXT[g.nextInt(TEXT.length)] + (g.nextBoolean() ? g.nextInt(100) : "");
    }

    private long number() {
        return switch (g.nextInt(5)) {
            case 0 -> 0;
            case 1 -> Long.MAX_VALUE - g.nextInt(3);
            case 2 -> Long.MIN_VALUE + g.nextInt(3);
            default -> g.nextInt(1_000_000);
        };
    }

    private Ratio ratio() {
        return Ratio.of(g.nextInt(), 1 + g.nextInt(Integer.MAX_VALUE - 1)).times(g.nextLong());
    }

    private LocalDate date() {
        return LocalDate.of(1970 + g.nextInt(120), 1, 1).plusDays(g.nextInt(366));
    }

    private <T> Optional<T> maybe(Supplier<T> value) {
        return g.nextBoolean() ? Optional.of(value.get()) : Optional.empty();
    }

    private <T> List<T> rows(Supplier<T> row) {
        List<T> rows = new ArrayList<>();
        for (int n = g.nextInt(4); n > 0; n--) {
            rows.add(row.get());
        }
        return rows;
    }

    private SortedMap<String, String> map() {
        SortedMap<String, String> map = new TreeMap<>();
        for (int n = g.nextInt(4); n > 0; n--) {
            map.put(text(), text());
        }
        return map;
    }

    private SortedMap<String, SortedMap<String, String>> maps() {
        SortedMap<String, SortedMap<String, String>> maps = new TreeMap<>();
        for (int n = g.nextInt(4); n > 0; n--) {
            maps.put(text(), map());
        }
        return maps;
    }
}
