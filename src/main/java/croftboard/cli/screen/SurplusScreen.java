package croftboard.cli.screen;

import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.measure.Cents;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import croftboard.plan.change.Consequences;
import croftboard.plan.change.Surplus;
import croftboard.plan.work.PrepWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Packs offered beyond the plan: how many to take, what each brings, what they replace, and what could be frozen. */
public final class SurplusScreen implements Screen {
    private final Shown shown;
    private final Names names;
    private final Change.More more;
    private final Surplus.Answer answer;
    private final Consequences replaces;

    /** @param shown the plan that people work from */
    public SurplusScreen(Shown shown, Change.More more, Surplus.Answer answer, Consequences replaces) {
        this.shown = shown;
        this.names = shown.names();
        this.more = more;
        this.answer = answer;
        this.replaces = replaces;
    }

    @Override
    public String name() {
        return "surplus";
    }

    @Override
    public void print(Page page) {
        page.heading(more.packs() + " packs of " + names.item(more.item()) + " from " + names.vendor(more.vendor()) + " at "
                + more.price());
        Headline.notSent(shown, page);
        shown.book().vendor(more.vendor()).offers().stream().filter(o -> o.item().equals(more.item())).findFirst()
                .ifPresent(o -> page.say("A pack is taken to be as in farms/: " + o.pack() + "."));
        Surplus.Step best = answer.steps().get(answer.best());
        page.say(answer.best() == 0 ? "Leave it: the week gains nothing by any of them." : "Take " + answer.best() + (
                answer.best() == more.packs() ? " (all)" : "") + ": the week is worth " + new Cents(best.gain())
                + " more, all paid, each change of the plan at its price. To answer: croftboard surplus "
                + shown.plan().week() + " " + more.vendor() + " ... --take " + answer.best());
        TextTable table = new TextTable(TextTable.Column.figure("packs"), TextTable.Column.figure("the week gains"),
                TextTable.Column.figure("the last one brings"), TextTable.Column.words(""));
        for (Surplus.Step s : answer.steps()) {
            table.row(String.valueOf(s.packs()), money(s.gain()), s.packs() == 0 ? "" : money(s.lastBrings() + more.price().value()),
                    s.packs() == answer.best() ? "take so many" : s.tried() ? "" : "between two that were tried");
        }
        page.gap();
        page.table(table);
        page.gap();
        page.say("What the last one brings is before it is paid: above " + more.price() + " it is worth its price. For each number the"
                + " orders were searched for the plan's own menu and for the best menu found with all of them.");
        uses(page);
        freezing(page);
    }

    private static String money(long cents) {
        return (cents < 0 ? "-" : "") + new Cents(Math.abs(cents));
    }

    private void uses(Page page) {
        if (answer.best() == 0) {
            return;
        }
        page.subheading("Best use this week");
        replaces.dishes().forEach(d -> page.item("- ", d.slot() + ": " + d.before().map(names::recipe).orElse("nothing") + " -> "
                + d.now().map(names::recipe).orElse("sold out") + " (" + d.portionsBefore() + " -> " + d.portionsNow()
                + " portions)"));
        replaces.orders().forEach(o -> o.lines().forEach(l -> page.item("- ", names.vendor(o.vendor()) + " for "
                + Dates.day(o.delivery()) + ", " + names.item(l.item()) + ", " + l.pack() + ": " + l.before() + " -> " + l.now())));
        long left = answer.with().surplus().stream().filter(s -> s.item().equals(more.item()))
                .mapToLong(s -> s.keptMg() + s.wastedMg()).sum();
        page.say("Left of it after the week then: " + CookAmounts.mass(Ratio.of(left, 1000)) + ".");
    }

    private void freezing(Page page) {
        int over = more.packs() - answer.best();
        page.subheading("What is too much");
        if (over == 0) {
            page.say("Nothing of it is more than this week can use.");
            return;
        }
        page.say(over + " packs are more than this week can use at that price.");
        Ingredient own = shown.book().ingredient(more.item());
        List<String> frozen = own.substitutes().stream().map(s -> shown.book().ingredient(s.use()))
                .filter(i -> i.storage() == Ingredient.Storage.FREEZER).map(Ingredient::name).toList();
        page.say(frozen.isEmpty() ? "Freezing: the book has no frozen form of " + own.name() + ", so no recipe of it could use it."
                : "Freezing: the book's recipes can use it as " + String.join(" or ", frozen) + ". " + hours() + " " + space());
        page.say("Canning, acidifying, vacuum packing, drying: ask your authority first.");
    }

    private String hours() {
        LocalDate day = shown.plan().week().monday().plusDays(more.day().getValue() - 1L);
        List<String> free = new ArrayList<>();
        List<PrepWork.Bench> benches = new PrepWork(shown.book(), shown.plan()).days().stream()
                .filter(d -> d.date().equals(day)).flatMap(d -> d.benches().stream()).toList();
        for (Kitchen.Station s : shown.book().kitchen().stations()) {
            long used = benches.stream().filter(b -> b.station().id().equals(s.id())).mapToLong(PrepWork.Bench::used).sum();
            long minutes = shown.book().kitchen().handsMinutes(s.id(), day.getDayOfWeek()) - used;
            if (minutes > 0) {
                free.add(s.name() + " " + minutes + " min");
            }
        }
        return "The book has no minutes for it; hands that are free on " + Dates.day(day) + ": "
                + (free.isEmpty() ? "none" : String.join(", ", free)) + ".";
    }

    private String space() {
        List<String> freezers = shown.book().kitchen().equipment().stream()
                .filter(e -> (e.id() + " " + e.name()).toLowerCase(Locale.ROOT).contains("freez")).map(e -> e.name() + " (" + e.unit() + ")")
                .toList();
        Ratio grams = Ratio.of(answer.with().orders().stream().flatMap(o -> o.lines().stream())
                .filter(l -> l.item().equals(more.item())).mapToLong(WeekPlan.OrderLine::packMg).findFirst().orElse(0), 1000);
        return (grams.signum() == 0 ? "" : "It would take space for " + CookAmounts.mass(grams.times(more.packs() - answer.best()))
                + ". ") + (freezers.isEmpty() ? "The book states no freezer space." : "Freezer space is " + String.join(", ", freezers)
                        + ".");
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("packs", "gain_usd", "last_brings_usd", "tried", "take");
        answer.steps().forEach(s -> rows.add(s.packs(), Rows.dollars(s.gain()), Rows.dollars(s.packs() == 0 ? 0
                : s.lastBrings() + more.price().value()), s.tried(), s.packs() == answer.best()));
        return rows;
    }
}
