package croftboard.paper.cook;

import croftboard.book.OnHand;
import croftboard.measure.CookAmounts;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.Data;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import croftboard.plan.work.Making;
import croftboard.plan.work.Pull;
import croftboard.plan.work.Pulling;
import croftboard.safety.Caution;
import croftboard.safety.Rule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Sheet 4: what is fetched on one day, place by place, oldest first; frozen food as many days before as it thaws. */
public final class PullSheets implements SheetMaker {
    private static final int PLAIN_DAYS = 90;
    private static final int SHOWN = 2;

    @Override
    public SheetKind kind() {
        return SheetKind.PULL;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        CookWeek week = new CookWeek(context);
        Pulling pulling = new Pulling(context.book(), context.plan(), week.tracing);
        Set<LocalDate> days = new TreeSet<>();
        pulling.pulls().forEach(p -> days.add(p.day()));
        pulling.staples().forEach(s -> days.add(s.day()));
        return days.stream().filter(context.filters()::wants).map(d -> sheet(week, pulling, d)).toList();
    }

    private static Sheet sheet(CookWeek week, Pulling pulling, LocalDate day) {
        List<Pull> today = pulling.pulls().stream().filter(p -> p.day().equals(day)).toList();
        List<Pull> thawed = pulling.pulls().stream().filter(p -> p.thaws() && p.readyOn().equals(day)).toList();
        List<Pulling.Staple> staples = pulling.staples().stream().filter(s -> s.day().equals(day)).toList();
        List<Block> blocks = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        group(week, "Freezer: into the cold to thaw, in a pan that catches the drip", today.stream().filter(Pull::thaws)
                .toList(), day, rows);
        group(week, "Freezer: straight to the bench", today.stream().filter(p -> p.from() == Pull.Place.FREEZER && !p.thaws())
                .toList(), day, rows);
        group(week, "Thawing shelf: taken out before, ready today", thawed, day, rows);
        group(week, "Walk-in", at(today, Pull.Place.WALK_IN), day, rows);
        group(week, "Dry store", at(today, Pull.Place.DRY_STORE), day, rows);
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(List.of(Column.mark("", 4), Column.words("Item", 30), Column.figure("Amount", 15),
                    Column.words("Which", 34), Column.words("Container", 27), Column.words("Use by", 14)), rows));
        }
        staples(week, staples, blocks);
        blocks.add(new Block.Text("Oldest first. Date what you open. Past its date, or not dated: leave it and say so."));
        if (today.stream().anyMatch(Pull::thaws)) {
            blocks.add(new Block.Text("Thaw in the cold, " + week.code.limit(Rule.COLD_HOLDING).shown() + " or below ("
                    + week.code.limit(Rule.COLD_HOLDING).section() + "), never at room temperature. "
                    + Caution.limits(week.code, week.kitchen())));
        }
        Set<String> flows = today.stream().map(Pull::item).collect(Collectors.toSet());
        return new Sheet(SheetKind.PULL, "pull-" + day, "Pull and thaw: " + When.full(day), List.of(count(today, staples)),
                blocks, data(week, today, staples), new Sheet.Look(true, 12, false, false),
                week.context.behind(f -> f.day().equals(day) && flows.contains(f.item())));
    }

    private static String count(List<Pull> today, List<Pulling.Staple> staples) {
        long thaw = today.stream().filter(Pull::thaws).count();
        return today.size() - thaw + staples.size() + " to fetch, " + thaw + " to thaw.";
    }

    private static List<Pull> at(List<Pull> pulls, Pull.Place place) {
        return pulls.stream().filter(p -> p.from() == place).toList();
    }

    private static void group(CookWeek week, String head, List<Pull> pulls, LocalDate day, List<Row> rows) {
        if (!pulls.isEmpty()) {
            rows.add(Row.group(head));
        }
        for (Pull p : pulls) {
            boolean out = p.thaws() && !p.day().equals(day);
            rows.add(Row.of(CookWeek.BOX, week.called.item(p.item())
                    + (p.thaws() ? " for " + few(week, p, day) : ""), CookWeek.mass(p.mg()),
                    out ? "taken out " + When.day(p.day()) : source(week, p), out ? "thawing pan" : container(p),
                    p.thaws() ? out ? "today" : "wanted " + When.day(p.readyOn()) : p.useBy().map(d -> far(d, day)).orElse("")));
        }
    }

    /** The first makings that it is for, and how many more. */
    private static String few(CookWeek week, Pull pull, LocalDate day) {
        List<Making> users = pull.users().stream().distinct().toList();
        return week.users(users.subList(0, Math.min(SHOWN, users.size())), day)
                + (users.size() > SHOWN ? ", and " + (users.size() - SHOWN) + " more" : "");
    }

    /** With its year where that is not plain. */
    private static String far(LocalDate date, LocalDate day) {
        return When.day(date) + (date.isAfter(day.plusDays(PLAIN_DAYS)) ? " " + date.getYear() : "");
    }

    private static String source(CookWeek week, Pull p) {
        Pull.Source s = p.source();
        if (s instanceof Pull.Delivered d) {
            String vendors = d.vendors().stream().map(week.called::vendor).collect(Collectors.joining(", "));
            return (d.on().equals(p.day()) ? "comes today" : "came " + When.day(d.on())) + (vendors.isEmpty() ? "" : ", " + vendors);
        } else if (s instanceof Pull.Counted c) {
            return counted(c.row());
        } else if (s instanceof Pull.Made m) {
            return "made " + When.day(m.batch().day());
        }
        return s instanceof Pull.EarlierOrders ? "left from earlier orders" : "NOT COVERED: nothing is ordered for it";
    }

    private static String counted(OnHand row) {
        String when = row.frozen().map(d -> "frozen " + When.day(d)).or(() -> row.made().map(d -> "made " + When.day(d)))
                .or(() -> row.received().map(d -> "came " + When.day(d))).orElse("counted");
        return when + (row.note().isBlank() ? "" : ", " + row.note());
    }

    private static String container(Pull p) {
        Pull.Source s = p.source();
        if (s instanceof Pull.Delivered d) {
            List<String> words = new ArrayList<>();
            d.openedOn().ifPresent(o -> words.add(o.equals(p.day()) ? "opened today" : "opened " + When.day(o)));
            d.opens().forEach(o -> words.add((words.isEmpty() ? "new: " : "then new: ") + o.count() + " \u00d7 " + o.pack()));
            return String.join(", ", words);
        } else if (s instanceof Pull.Counted c) {
            return c.row().opened().map(d -> "opened " + When.day(d)).orElse("opened or new: look");
        }
        return s instanceof Pull.Made ? "labelled pan" : "";
    }

    private static void staples(CookWeek week, List<Pulling.Staple> staples, List<Block> blocks) {
        if (staples.isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading(2, "Staples, for the whole day"));
        List<String> lines = staples.stream().map(s -> week.called.item(s.item()) + ", " + CookAmounts.mass(s.grams())
                + (s.from() == Pull.Place.DRY_STORE ? "" : " (" + words(s.from()) + ")")).toList();
        int half = (lines.size() + 1) / 2;
        blocks.add(new Block.Columns(List.of(List.of(new Block.Ticks(lines.subList(0, half))),
                List.of(new Block.Ticks(lines.subList(half, lines.size()))))));
    }

    private static String words(Pull.Place place) {
        return place.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Data data(CookWeek week, List<Pull> pulls, List<Pulling.Staple> staples) {
        Data.Building data = Data.of("day", "from", "what", "id", "name", "grams", "ready_on", "source", "source_date",
                "vendors", "opened_on", "opens_packs", "use_by", "for", "done");
        for (Pull p : pulls) {
            data.row(p.day(), words(p.from()), p.thaws() ? "thaw" : "fetch", p.item(), week.called.item(p.item()),
                    CookWeek.grams(p.mg()), p.readyOn(), sourceWord(p.source()), sourceDate(p.source()),
                    p.source() instanceof Pull.Delivered d ? String.join(" ", d.vendors()) : "", openedOn(p.source()),
                    p.source() instanceof Pull.Delivered d ? d.opens().stream().map(o -> o.count() + " x " + o.pack())
                            .collect(Collectors.joining("; ")) : "",
                    p.useBy().map(Object::toString).orElse(""), week.users(p.users(), p.day()), "");
        }
        staples.forEach(s -> data.row(s.day(), words(s.from()), "staple", s.item(), week.called.item(s.item()),
                CookWeek.grams(s.grams()), s.day(), "shelf", "", "", "", "", "", "", ""));
        return data.done();
    }

    private static String sourceWord(Pull.Source s) {
        return s instanceof Pull.Delivered ? "delivery" : s instanceof Pull.Counted ? "count" : s instanceof Pull.Made ? "batch"
                : s instanceof Pull.EarlierOrders ? "earlier-orders" : "missing";
    }

    private static String sourceDate(Pull.Source s) {
        if (s instanceof Pull.Counted c) {
            return c.row().frozen().or(() -> c.row().made()).or(() -> c.row().received()).map(Object::toString).orElse("");
        }
        return s instanceof Pull.Delivered d ? d.on().toString() : s instanceof Pull.Made m ? m.batch().day().toString() : "";
    }

    private static String openedOn(Pull.Source s) {
        return s instanceof Pull.Delivered d ? d.openedOn().map(Object::toString).orElse("")
                : s instanceof Pull.Counted c ? c.row().opened().map(Object::toString).orElse("") : "";
    }
}
