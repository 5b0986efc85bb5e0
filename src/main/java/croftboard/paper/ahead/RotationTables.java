package croftboard.paper.ahead;

import croftboard.measure.Cents;
import croftboard.paper.Data;
import croftboard.plan.WeekPlan;
import croftboard.plan.ahead.CropUse;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The whole rotation as tables for machines. */
public final class RotationTables {
    private RotationTables() { }

    /** By the name that a file or a worksheet gets. */
    public static Map<String, Data> all(AheadContext context) {
        Map<String, Data> all = new LinkedHashMap<>();
        all.put("menu", menu(context, context.plans()));
        all.put("orders", orders(context));
        all.put("crops", crops(CropUse.of(context.book(), context.plans()), context));
        all.put("promises", promises(context));
        all.put("money", money(context));
        return all;
    }

    static Data menu(AheadContext context, List<WeekPlan> plans) {
        Data.Building rows = Data.of("week", "line", "first_day", "last_day", "dish", "name", "portions", "expected_sales_usd", "marks");
        plans.forEach(p -> p.menu().forEach(s -> rows.row(p.week(), s.line(), s.days().get(0), s.days().get(s.days().size() - 1),
                s.recipe().orElse(""), s.recipe().map(context.called()::recipe).orElse(""), s.portions(), dollars(s.sales()), s.marks())));
        return rows.done();
    }

    private static Data orders(AheadContext context) {
        Data.Building rows = Data.of("week", "vendor", "delivery", "item", "name", "pack", "packs", "pack_grams", "price_usd", "cost_usd",
                "locality");
        context.plans().forEach(p -> p.orders().forEach(o -> o.lines().forEach(l -> rows.row(p.week(), o.vendor(), o.delivery(),
                l.item(), context.called().item(l.item()), l.pack(), l.packs(), grams(l.packMg()), dollars(l.price()), dollars(l.cost()),
                l.locality().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')))));
        return rows.done();
    }

    static Data crops(CropUse use, AheadContext context) {
        Data.Building rows = Data.of("crop", "name", "week", "wanted_grams", "bought_from_growers_grams", "expected_sure_grams",
                "expected_likely_grams", "hoped_grams");
        use.crops().forEach(c -> c.by().forEach((week, w) -> rows.row(c.item(), context.called().item(c.item()), week, grams(w.wanted()),
                grams(w.bought()), grams(w.sure()), grams(w.likely()), grams(w.hoped()))));
        return rows.done();
    }

    private static Data promises(AheadContext context) {
        Data.Building rows = Data.of("week", "promise", "words", "day", "kept", "cost_usd");
        context.plans().forEach(p -> p.promises().forEach(x -> rows.row(p.week(), x.id(), x.say(),
                x.day().map(Object::toString).orElse(""), x.kept() ? "yes" : "no", dollars(x.cents()))));
        return rows.done();
    }

    /** The rotation's own figures: what one week leaves and another uses is in them once. */
    private static Data money(AheadContext context) {
        var a = context.rotation().account();
        var share = context.rotation().share();
        Data.Building rows = Data.of("what", "usd");
        rows.row("value", dollars(context.rotation().value())).row("expected sales", dollars(a.sales()));
        rows.row("food money", dollars(share.total())).row("local", dollars(share.local()))
                .row("not local", dollars(share.notLocal())).row("unclassified", dollars(share.unclassified()));
        rows.row("broken promises", dollars(a.broken().stream().mapToLong(b -> b.cents()).sum()));
        return rows.done();
    }

    static String grams(long mg) {
        return BigDecimal.valueOf(mg, 3).setScale(0, java.math.RoundingMode.HALF_EVEN).toPlainString();
    }

    static String dollars(long cents) {
        return BigDecimal.valueOf(new Cents(cents).value(), 2).toPlainString();
    }

    static String joined(List<String> words) {
        return words.stream().collect(Collectors.joining("; "));
    }
}
