package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.Consequences;
import croftboard.plan.change.Disturbance;
import java.util.List;
import java.util.Optional;

/** What changes for those who work from a plan, most urgent first; nothing that stays as it is. */
public final class ChangesScreen implements Screen {
    private final Repaired repaired;
    private final Shown shown;
    private final Names names;

    /**
     * A plan that was changed under way.
     *
     * @param shown the changed plan
     * @param before the version that was changed
     * @param of its number
     * @param said what is different now, a sentence each
     * @param anew the rest of the week planned anew, if nobody had been promised anything; empty: not known yet
     * @param atMostBetter no other way out is worth more than so much more, cents; empty: not known
     */
    public record Repaired(Shown shown, WeekPlan before, int of, List<String> said, Consequences changes,
            Optional<WeekPlan> anew, Optional<Long> atMostBetter) { }

    public ChangesScreen(Repaired repaired) {
        this.repaired = repaired;
        this.shown = repaired.shown();
        this.names = shown.names();
    }

    @Override
    public String name() {
        return "changes";
    }

    @Override
    public void print(Page page) {
        Consequences c = repaired.changes();
        if (!c.pullNow().isEmpty()) {
            page.heading("PULL NOW");
            c.pullNow().forEach(p -> page.item("- ", names.recipe(p.recipe()) + " (" + p.slot()
                    + "): take it off sale. It is or may hold what is lost: " + p.why() + "."));
        }
        statements(page, c);
        page.heading("What changes");
        page.say("Because: " + String.join("; ", repaired.said()) + ".");
        if (c.nothing()) {
            page.say("Nothing: every order, dish and sheet of version " + repaired.of() + " stays as it is.");
        }
        missing(page);
        orders(page, c);
        dishes(page, c);
        prep(page, c);
        cards(page, c);
        money(page);
    }

    /** Where what changes stands above already. */
    public void printMoney(Page page) {
        money(page);
    }

    private void missing(Page page) {
        shown.plan().missing().forEach(m -> page.item("- CANNOT BE DONE: ", m.what() + ". What would mend it: " + m.mend()
                + "."));
    }

    private void statements(Page page, Consequences c) {
        List<Consequences.CardChange> changed = c.cards().stream().filter(Consequences.CardChange::statementChanges).toList();
        if (!changed.isEmpty()) {
            page.heading("Statements that change");
            changed.forEach(s -> page.item("- ", (s.onSale() ? "PULL NOW, on sale: " : "") + names.recipe(s.recipe()) + " ("
                    + s.slot() + "). Before: " + s.statementBefore().orElse("") + " Now: " + s.statement()));
        }
    }

    private void orders(Page page, Consequences c) {
        for (Consequences.Kind kind : Consequences.Kind.values()) {
            List<Consequences.OrderChange> some = c.orders().stream().filter(o -> o.kind() == kind).toList();
            if (!some.isEmpty()) {
                page.subheading(words(kind));
                for (Consequences.OrderChange o : some) {
                    page.item("- ", names.vendor(o.vendor()) + ", comes " + Dates.day(o.delivery()) + (kind == Consequences.Kind.COMES
                            ? "" : ", by " + Dates.hour(o.cutOff())) + ", " + new Cents(o.before()) + " -> " + new Cents(o.now()));
                    o.lines().forEach(l -> page.item("    ", names.item(l.item()) + ", " + l.pack() + ": " + l.before() + " -> "
                            + l.now()));
                }
            }
        }
    }

    private static String words(Consequences.Kind kind) {
        return switch (kind) {
            case ADD -> "Orders to add";
            case AGAIN -> "Orders to send again";
            case CANCEL -> "Orders to cancel";
            case COMES -> "Past their cut-off, nothing to send: what comes";
        };
    }

    private void dishes(Page page, Consequences c) {
        if (c.dishes().isEmpty()) {
            return;
        }
        page.subheading("Dishes");
        for (Consequences.DishChange d : c.dishes()) {
            String was = d.before().map(names::recipe).orElse("nothing");
            String is = d.now().map(names::recipe).orElse(stands(d.slot()) ? "sold out" : "not sold, the store is closed");
            page.item("- ", d.slot() + ": " + (d.before().equals(d.now())
                    ? was + ", " + (d.portionsNow() < d.portionsBefore() ? "fewer" : "more") + " portions: "
                            + d.portionsBefore() + " -> " + d.portionsNow()
                    : was + " -> " + is + (d.now().isPresent() ? ", " + d.portionsNow() + " portions" : "")));
        }
    }

    private boolean stands(String slot) {
        return shown.plan().menu().stream().anyMatch(r -> r.slot().equals(slot));
    }

    private void prep(Page page, Consequences c) {
        if (c.prep().isEmpty()) {
            return;
        }
        page.subheading("Prep, batches by day");
        String day = "";
        for (Consequences.PrepChange p : c.prep()) {
            String own = Dates.day(p.day());
            if (!own.equals(day)) {
                page.say(own);
                day = own;
            }
            page.item("  - ", names.recipe(p.recipe()) + ": " + batches(p.before()) + " -> " + batches(p.now()));
        }
        shown.plan().swaps().forEach((dish, swaps) -> swaps.forEach((item, use) -> {
            if (!use.equals(repaired.before().swaps().getOrDefault(dish, new java.util.TreeMap<>()).get(item))) {
                page.item("  - ", names.recipe(dish) + ": " + names.item(use) + " in place of "
                        + names.item(item.replace("*", "")));
            }
        }));
    }

    private static String batches(Ratio batches) {
        return batches.signum() == 0 ? "none" : CookAmounts.mixed(batches);
    }

    private void cards(Page page, Consequences c) {
        if (c.cards().isEmpty()) {
            return;
        }
        page.subheading("Cards and labels to print again");
        c.cards().forEach(k -> page.item("- ", k.slot() + ": " + names.recipe(k.recipe())
                + k.useBy().map(d -> ", use by " + Dates.day(d)).orElse("") + ". " + k.statement()));
        page.say(Cautions.allergens(shown.book().kitchen()));
    }

    private void money(Page page) {
        page.subheading("Money and how much is disturbed");
        long now = shown.plan().value();
        long was = repaired.before().value();
        page.say("The week is worth " + new Cents(now) + " now, " + difference(now - was) + " version " + repaired.of()
                + " was before this.");
        repaired.anew().ifPresent(a -> page.say("Planned anew from now on, had nobody been promised anything: "
                + new Cents(a.value()) + ", " + difference(a.value() - now) + " this; that would change "
                + measures(Disturbance.between(repaired.before(), a)) + "."));
        page.say("This changes " + measures(Disturbance.between(repaired.before(), shown.plan())) + ".");
        repaired.atMostBetter().ifPresent(b -> page.say("No other way, each change at its price, can be worth more than "
                + new Cents(b) + " more."));
        page.gap();
        page.say("Check: " + shown.verdict());
    }

    private static String difference(long cents) {
        return cents == 0 ? "as much as" : new Cents(Math.abs(cents)) + (cents < 0 ? " less than" : " more than");
    }

    private static String measures(Disturbance d) {
        return count(d.dishes(), "dish", "dishes") + ", " + count(d.orderLines(), "order line", "order lines") + ", "
                + count(d.portions(), "portion", "portions");
    }

    private static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("what", "where", "day", "before", "now", "words");
        Consequences c = repaired.changes();
        c.pullNow().forEach(p -> rows.add("pull now", p.slot(), "", p.recipe(), "", p.why()));
        c.orders().forEach(o -> o.lines().forEach(l -> rows.add("order " + o.kind().name().toLowerCase(java.util.Locale.ROOT),
                o.vendor() + "/" + l.item() + "/" + l.pack(), o.delivery(), l.before(), l.now(), o.cutOff())));
        c.dishes().forEach(d -> rows.add("dish", d.slot(), d.days().get(0), d.before(), d.now(), d.portionsBefore() + " -> "
                + d.portionsNow()));
        c.prep().forEach(p -> rows.add("prep", p.recipe(), p.day(), p.before().toString(), p.now().toString(), ""));
        c.cards().forEach(k -> rows.add("card", k.slot(), k.useBy(), k.statementBefore(), k.statement(), k.recipe()));
        Disturbance d = Disturbance.between(repaired.before(), shown.plan());
        rows.add("measure dishes", "", "", "", d.dishes(), "").add("measure order lines", "", "", "", d.orderLines(), "")
                .add("measure portions", "", "", "", d.portions(), "");
        rows.add("value_usd", "", "", Rows.dollars(repaired.before().value()), Rows.dollars(shown.plan().value()),
                shown.verdict());
        repaired.anew().ifPresent(a -> rows.add("anew_usd", "", "", "", Rows.dollars(a.value()), ""));
        return rows;
    }
}
