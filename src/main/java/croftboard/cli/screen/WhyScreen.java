package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import croftboard.plan.ask.Why;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Why a dish, an order, a week is as it is. */
public final class WhyScreen implements Screen {
    private static final int SHOWN = 8;
    private static final double MG_PER_POUND = 453_592.37;
    private final Names names;
    private final String plan;
    private final Why why;

    /** @param plan how the plan is called, such as {@code 2027-W33@1} */
    public WhyScreen(Book book, String plan, Why why) {
        this.names = new Names(book);
        this.plan = plan;
        this.why = why;
    }

    @Override
    public String name() {
        return "why";
    }

    @Override
    public void print(Page page) {
        if (why instanceof Why.Dish d) {
            dish(page, d);
        } else if (why instanceof Why.Order o) {
            order(page, o);
        } else if (why instanceof Why.Week w) {
            week(page, w);
        }
    }

    private static String mass(long mg) {
        return CookAmounts.mass(Ratio.of(mg, 1000));
    }

    private void dish(Page page, Why.Dish d) {
        page.heading("Why " + names.recipe(d.row().recipe().orElseThrow()) + " on " + d.row().slot() + ", " + plan);
        page.say(d.row().portions() + " portions. " + (d.kept() ? "It was kept there by hand. " : "")
                + (d.made() ? "It is made: nothing else can stand there any more." : ""));
        page.subheading("What it brings, against nothing in that place and the orders made anew");
        TextTable table = new TextTable(TextTable.Column.words("in the week"), TextTable.Column.figure("money"));
        lines(d.with(), d.without()).forEach((say, cents) -> table.row(say, Signs.money(cents)));
        page.table(table);
        if (!d.minutes().isEmpty()) {
            page.say("Hands: " + d.minutes().stream().map(m -> Signs.number(m.minutes()) + " min " + m.station())
                    .collect(Collectors.joining(", ")) + ".");
        }
        if (!d.promises().isEmpty()) {
            page.subheading("Promises that it keeps");
            d.promises().forEach(p -> page.item("- ", p.day().map(Dates::day).orElse("The week") + ": " + p.say() + ", "
                    + new Cents(p.cents()) + "."));
        }
        if (!d.usesUp().isEmpty()) {
            page.subheading("Of packs that are bought anyway it uses up");
            page.say(d.usesUp().stream().limit(SHOWN).map(u -> mass(u.mg()) + " " + names.item(u.item()))
                    .collect(Collectors.joining(", ")) + (d.usesUp().size() > SHOWN ? " and " + (d.usesUp().size() - SHOWN)
                    + " more" : "") + ".");
        }
        others(page, d);
    }

    private static Map<String, Long> lines(Account with, Account without) {
        Map<String, Long> lines = new LinkedHashMap<>();
        lines.put("sales, and what left portions still bring", with.sales() + with.left() - without.sales() - without.left());
        lines.put("food: orders, staples, fees, waste, less what keeps", food(without) - food(with));
        lines.put("overtime", without.overtime() - with.overtime());
        lines.put("promises, the empty place among them", without.brokenCents() - with.brokenCents());
        lines.put("all together", with.value() - without.value());
        return lines;
    }

    private static long food(Account a) {
        return a.purchases() + a.staples() + a.waste() + a.fees() - a.kept();
    }

    private void others(Page page, Why.Dish d) {
        if (d.made()) {
            return;
        }
        page.subheading("What else could stand there");
        if (d.others().isEmpty()) {
            page.say(d.looked() == 0 ? "No other dish fits that place this week."
                    : "None of " + d.looked() + " other dishes can stand there beside the rest of the menu"
                            + (d.tooNear() == 0 ? "." : "; " + tooNear(d)));
            return;
        }
        TextTable table = new TextTable(TextTable.Column.words("instead"), TextTable.Column.figure("the plan would be"),
                TextTable.Column.figure("sales"), TextTable.Column.figure("food"), TextTable.Column.figure("promises"),
                TextTable.Column.figure("other"));
        d.others().forEach(o -> table.row(names.recipe(o.recipe()), Signs.money(-o.lose()), Signs.money(o.sales()),
                Signs.money(o.food()), Signs.money(o.promises()), Signs.money(o.rest())));
        page.table(table);
        page.say("The best of " + d.looked() + " other dishes, each with orders made anew and the rest of the menu as it is"
                + (d.tooNear() == 0 ? ". " : "; " + tooNear(d) + " ")
                + (d.others().stream().allMatch(Why.Other::proved) ? "For these no order is better by more than a cent."
                        : "Their orders are found by search, not proved the best."));
        if (d.others().get(0).lose() < 0) {
            page.say("The first is worth more than the plan: planning again may take it.");
        }
    }

    private static String tooNear(Why.Dish d) {
        return d.tooNear() + " of them " + (d.tooNear() == 1 ? "stands" : "stand") + " too near elsewhere in the week.";
    }

    private void order(Page page, Why.Order o) {
        page.heading("Why " + names.item(o.item()) + " from " + names.vendor(o.vendor()) + ", " + plan);
        page.say("Ordered: " + o.offers().stream().filter(c -> c.bought() > 0 && c.vendor().equals(o.vendor()))
                .sorted(Comparator.comparing(Why.Choice::delivery)).map(c -> Dates.day(c.delivery()) + " " + c.bought() + " x "
                        + c.pack() + " at " + new Cents(c.priceCents())).collect(Collectors.joining(", ")) + "; together "
                + new Cents(o.lines().stream().mapToLong(WeekPlan.OrderLine::cost).sum())
                + (o.lines().stream().anyMatch(WeekPlan.OrderLine::promised) ? ". Some of it is promised to be taken." : "."));
        page.subheading("Who takes it");
        page.say(o.uses().isEmpty() ? "No dish of this week: it is stock." : o.uses().stream().limit(SHOWN).map(u -> mass(u.mg())
                + " for " + names.recipe(u.recipe()) + " (" + u.slot() + ")").collect(Collectors.joining(", ")) + (o.uses().size()
                > SHOWN ? " and " + (o.uses().size() - SHOWN) + " more" : "") + ".");
        offers(page, o);
        page.subheading("Without it");
        if (o.without().isEmpty()) {
            page.say("The menu could not be made:");
            o.missing().forEach(m -> page.item("- ", m + "."));
            return;
        }
        Account then = o.without().get();
        long lose = o.with().value() - then.value();
        page.say("The plan would be worth " + new Cents(Math.abs(lose)) + (lose >= 0 ? " less" : " more") + " with the best other "
                + "orders found: food costs " + moreOrLess(food(then) - food(o.with())) + ", broken promises "
                + moreOrLess(then.brokenCents() - o.with().brokenCents()) + ", local money is "
                + moreOrLess(then.localPurchases() - o.with().localPurchases()) + ". The menu stays as it is.");
        if (!o.instead().isEmpty()) {
            TextTable table = new TextTable(TextTable.Column.words("in its place"), TextTable.Column.mark("delivery"),
                    TextTable.Column.words("item"), TextTable.Column.figure("packs now"), TextTable.Column.figure("then"));
            o.instead().stream().limit(SHOWN).forEach(i -> table.row(names.vendor(i.vendor()), Dates.day(i.delivery()),
                    names.item(i.item()) + ", " + i.pack(), Integer.toString(i.before()), Integer.toString(i.after())));
            page.table(table);
            if (o.instead().size() > SHOWN) {
                page.say("And " + (o.instead().size() - SHOWN) + " more lines.");
            }
        }
    }

    private static String moreOrLess(long cents) {
        return cents == 0 ? "the same" : new Cents(Math.abs(cents)) + (cents > 0 ? " more" : " less");
    }

    private void offers(Page page, Why.Order o) {
        page.subheading("Who offers it this week");
        TextTable table = new TextTable(TextTable.Column.words("vendor"), TextTable.Column.mark("delivery"),
                TextTable.Column.words("pack"), TextTable.Column.figure("price"), TextTable.Column.figure("a pound"),
                TextTable.Column.mark("local"), TextTable.Column.figure("offered"), TextTable.Column.figure("ordered"));
        o.offers().forEach(c -> table.row(names.vendor(c.vendor()), Dates.day(c.delivery()), c.pack(),
                new Cents(c.priceCents()).toString(), new Cents(Math.round(c.priceCents() * MG_PER_POUND / c.packMg())).toString(),
                c.local() ? "yes" : "-", Integer.toString(c.most()), c.bought() == 0 ? "-" : Integer.toString(c.bought())));
        page.table(table);
    }

    private void week(Page page, Why.Week w) {
        page.heading("What the promises of the week cost, " + plan);
        page.say("The plan is worth " + new Cents(w.value()) + ". Beside each promise: what a week near this plan could be worth "
                + "more if nobody had promised it, as far as a short search finds, and who keeps it.");
        TextTable table = new TextTable(TextTable.Column.words("promise"), TextTable.Column.figure("costs"),
                TextTable.Column.figure("broken for"), TextTable.Column.words("kept above all by"));
        w.promises().forEach(p -> table.row(p.say(), new Cents(p.costs()).toString(), p.broken() == 0 ? "-"
                : new Cents(p.broken()).toString(), carriers(p)));
        page.table(table);
        page.say("One place or one order: croftboard why WEEK DAY/LINE, or why WEEK VENDOR/ITEM.");
    }

    private String carriers(Why.Promise p) {
        List<String> called = p.carriedBy().stream().map(id -> p.how() == Why.Carried.VENDORS ? names.vendor(id)
                : names.recipe(id)).toList();
        return called.isEmpty() ? "-" : String.join(", ", called);
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("of", "what", "day", "amount_usd", "more");
        if (why instanceof Why.Dish d) {
            lines(d.with(), d.without()).forEach((say, cents) -> rows.add("brings", say, "", Rows.dollars(cents), ""));
            d.minutes().forEach(m -> rows.add("minutes", m.station(), "", "", m.minutes()));
            d.promises().forEach(p -> rows.add("promise kept", p.say(), p.day().map(LocalDate::toString), Rows.dollars(p.cents()),
                    ""));
            d.usesUp().forEach(u -> rows.add("uses up mg", u.item(), "", "", u.mg()));
            d.others().forEach(o -> rows.add("instead", o.recipe(), "", Rows.dollars(-o.lose()), o.proved()));
        } else if (why instanceof Why.Order o) {
            o.uses().forEach(u -> rows.add("use mg", u.recipe() + " " + u.slot(), "", "", u.mg()));
            o.offers().forEach(c -> rows.add("offer", c.vendor() + ", " + c.pack(), c.delivery(), Rows.dollars(c.priceCents()),
                    c.bought()));
            o.without().ifPresent(a -> rows.add("without it", "the plan would be worth", "", Rows.dollars(a.value()
                    - o.with().value()), ""));
            o.missing().forEach(m -> rows.add("without it", m, "", "", ""));
        } else if (why instanceof Why.Week w) {
            w.promises().forEach(p -> rows.add("promise", p.say(), "", Rows.dollars(p.costs()), String.join(" ", p.carriedBy())));
        }
        return rows;
    }
}
