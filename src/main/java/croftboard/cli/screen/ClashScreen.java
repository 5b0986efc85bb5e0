package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.plan.ask.Clash;
import croftboard.plan.ask.ClashAsked;
import java.util.List;
import java.util.stream.Collectors;

/** Facts that cannot all hold, in words, and what would mend each clash. */
public final class ClashScreen implements Screen {
    private final Names names;
    private final String week;
    private final ClashAsked.Answer answer;

    public ClashScreen(Book book, String week, ClashAsked.Answer answer) {
        this.names = new Names(book);
        this.week = week;
        this.answer = answer;
    }

    @Override
    public String name() {
        return "clash";
    }

    @Override
    public void print(Page page) {
        page.heading("What clashes in " + week);
        if (answer.clashes().isEmpty()) {
            page.say("Nothing clashes: every must can be kept, and each daily promise by itself as well.");
        }
        answer.clashes().forEach(c -> clash(page, c));
        if (!answer.cheaper().isEmpty()) {
            page.subheading("Broken in the plan, though nothing stands in the way");
            answer.cheaper().forEach(p -> page.item("- ", p.day().map(Dates::day).orElse("The week") + ": " + p.say()
                    + ". Breaking it costs " + new Cents(p.cents()) + ", and keeping it would cost the week more."));
        }
    }

    private void clash(Page page, Clash c) {
        page.subheading(c.of().map(p -> "This promise cannot be kept: " + promise((Clash.Promise) p))
                .orElse("No plan of this week can keep all of these:"));
        c.facts().forEach(f -> page.item("- ", say(f) + "."));
        page.say((c.facts().size() == 1 ? "That alone is enough. " : "Without any one of these " + c.facts().size()
                + " the others can hold: for each there is a plan. ") + (c.proved() ? "That they clash is proved."
                        : "That they clash is not proved: only no plan was found."));
        page.gap();
        TextTable table = new TextTable(TextTable.Column.words("what would mend it"), TextTable.Column.figure("price"),
                TextTable.Column.figure("the week is worth"));
        c.mends().forEach(m -> table.row(mend(m), m.worth().isEmpty() || !m.priced() ? "not known" : new Cents(m.price()).toString(),
                m.worth().map(w -> new Cents(w).toString()).orElse("no plan found")));
        page.table(table);
        page.say(c.mends().stream().allMatch(Clash.Mend::exact) ? "The price is what the week is worth less than if none of them "
                + "had been asked for." : "The price is what the week is worth less than if none of them had been asked for, as far "
                + "as short searches find.");
    }

    private static String promise(Clash.Promise p) {
        return p.say() + " on " + Dates.day(p.day());
    }

    private static String mass(long mg) {
        return CookAmounts.mass(Ratio.of(mg, 1000));
    }

    private String say(Clash.Told told) {
        if (told instanceof Clash.Pinned p) {
            return p.dish().isEmpty() ? "What is already made stands" : names.recipe(p.dish()) + (p.standing() ? " always stands on "
                    : " is kept on ") + p.slot();
        }
        if (told instanceof Clash.Comeback g) {
            return "A dish comes back after " + g.days() + " days at the earliest";
        }
        if (told instanceof Clash.Hands h) {
            return h.name() + (h.day().map(d -> " on " + Dates.day(d)).orElse(" in the week")) + ": there are " + h.there()
                    + (h.minutes() ? " minutes, overtime among them" : " units") + (h.needed() > h.there()
                            ? ", and these dishes take " + h.needed() : "");
        }
        if (told instanceof Clash.Supply s) {
            return supply(s);
        }
        if (told instanceof Clash.Minimum m) {
            return names.vendor(m.vendor()) + " brings nothing on " + Dates.day(m.delivery()) + " below " + new Cents(m.cents());
        }
        if (told instanceof Clash.Promised p) {
            return p.packs() + " packs of " + names.item(p.item()) + " of " + names.vendor(p.vendor()) + " are promised to be taken on "
                    + Dates.day(p.delivery());
        }
        if (told instanceof Clash.Life l) {
            return names.recipe(l.recipe()) + " is good for " + l.days() + (l.days() == 1 ? " day" : " days") + " and is made on prep "
                    + "days only";
        }
        return promise((Clash.Promise) told);
    }

    private String supply(Clash.Supply s) {
        List<Clash.Offered> all = s.offers();
        String offered = all.isEmpty() ? "nobody brings any this week" : all.stream().limit(3).map(o -> o.packs() + " x " + o.pack()
                + " from " + names.vendor(o.vendor()) + " on " + Dates.day(o.delivery())).collect(Collectors.joining(", "))
                + (all.size() > 3 ? " and " + (all.size() - 3) + " more deliveries" : "");
        return "Of " + names.item(s.item()) + " there is no more than " + (all.isEmpty() ? "is in the house: " + offered : offered)
                + (s.needed() > 0 ? "; these dishes take " + mass(s.needed()) : "") + (s.missing() > 0 ? ", and " + mass(s.missing())
                        + " cannot be had in time" : "");
    }

    private String mend(Clash.Mend m) {
        if (m.fact() instanceof Clash.Pinned p) {
            return p.dish().isEmpty() ? "nothing: it is made" : (p.standing() ? "leave " + names.recipe(p.dish()) + " off "
                    : "do not keep " + names.recipe(p.dish()) + " on ") + p.slot();
        }
        if (m.fact() instanceof Clash.Comeback) {
            return "let these dishes come back sooner";
        }
        if (m.fact() instanceof Clash.Hands h) {
            return m.least() + (h.minutes() ? " more minutes for " : " more units of ") + h.name()
                    + h.day().map(d -> " on " + Dates.day(d)).orElse("");
        }
        if (m.fact() instanceof Clash.Supply s) {
            return (m.least() > 0 ? mass(m.least()) + " more " : "more ") + names.item(s.item()) + (m.priced() ? "" : ", from anywhere");
        }
        if (m.fact() instanceof Clash.Minimum x) {
            return names.vendor(x.vendor()) + " brings less than its minimum on " + Dates.day(x.delivery());
        }
        if (m.fact() instanceof Clash.Promised p) {
            return "take fewer " + names.item(p.item()) + " from " + names.vendor(p.vendor()) + " than promised";
        }
        return m.fact() instanceof Clash.Life l ? names.recipe(l.recipe()) + " good for longer, or another prep day" : say(m.fact());
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("clash", "of", "fact", "proved", "mend", "price_usd", "worth_usd");
        int n = 0;
        for (Clash c : answer.clashes()) {
            n++;
            for (Clash.Mend m : c.mends()) {
                rows.add(n, c.of().map(p -> promise((Clash.Promise) p)), say(m.fact()), c.proved(), mend(m),
                        m.worth().isPresent() && m.priced() ? Rows.dollars(m.price()) : "", m.worth().map(Rows::dollars));
            }
        }
        return rows;
    }
}
