package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.measure.Cents;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import croftboard.plan.ask.WhyNot;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** The week with something forced that the plan does not have, beside the plan. */
public final class WhyNotScreen implements Screen {
    private static final long TOLD = 100;
    private final Book book;
    private final String plan;
    private final String asked;
    private final WhyNot answer;

    /** @param plan how the plan is called. @param asked what was asked for, in words */
    public WhyNotScreen(Book book, String plan, String asked, WhyNot answer) {
        this.book = book;
        this.plan = plan;
        this.asked = asked;
        this.answer = answer;
    }

    @Override
    public String name() {
        return "why-not";
    }

    @Override
    public void print(Page page) {
        page.heading("Why not " + asked + "? " + plan);
        if (answer instanceof WhyNot.Cannot cannot) {
            page.say("It cannot be:");
            cannot.because().forEach(b -> page.item("- ", b + "."));
        } else if (answer instanceof WhyNot.Can can) {
            can(page, can);
        }
    }

    private void can(Page page, WhyNot.Can can) {
        long more = can.after().value() - can.before().value();
        page.say(verdict(can, more));
        String parts = parts(can.before().account(), can.after().account());
        if (!parts.isEmpty()) {
            page.say("Where it comes from: " + parts + ".");
        }
        page.say("Local share " + percent(can.before()) + " becomes " + percent(can.after()) + "; thrown away "
                + (can.wasteMg() == 0 ? "the same" : CookAmounts.mass(Ratio.of(Math.abs(can.wasteMg()), 1000))
                        + (can.wasteMg() > 0 ? " more" : " less")) + "; hands " + (can.minutes().isEmpty() ? "the same"
                                : can.minutes().stream().map(m -> Signs.number(m.minutes()) + " min " + m.station())
                                        .collect(Collectors.joining(", "))) + ".");
        page.say("What had to move, what was asked for among it: " + Signs.count(can.moved().dishes(), "dish", "dishes")
                + ", " + Signs.count(can.moved().orderLines(), "order line", "order lines") + ", "
                + Signs.count(can.moved().portions(), "portion", "portions") + (can.movedCents() == 0 ? "" : "; "
                        + new Cents(can.movedCents()) + " at the kitchen's price of a change, not counted above")
                + ". The rest was kept as close to the plan as a short search finds.");
        new ComparisonScreen(book, plan, "the week with it", can.differs()).differences(page);
    }

    private static String verdict(WhyNot.Can can, long more) {
        String value = new Cents(can.after().value()) + " instead of " + new Cents(can.before().value());
        if (more < 0) {
            return "Because the week would be worth " + new Cents(-more) + " less: " + value + ".";
        }
        if (more == 0) {
            return "It would be worth the same.";
        }
        return more <= can.movedCents() ? "Because it is not worth the bother: the week would be worth only " + new Cents(more)
                + " more, " + value + "." : "No reason was found: the week would be worth " + new Cents(more) + " more, " + value
                        + ". The plan is not the best there is.";
    }

    /** Differences of a dollar or more, the largest first. */
    private static String parts(Account before, Account after) {
        Map<String, Long> all = new LinkedHashMap<>();
        all.put("sales and left portions", after.sales() + after.eventSales() + after.left() - before.sales() - before.eventSales()
                - before.left());
        all.put("food with fees and waste, less what keeps", food(before) - food(after));
        all.put("overtime", before.overtime() - after.overtime());
        all.put("promises", before.brokenCents() - after.brokenCents());
        return all.entrySet().stream().filter(e -> Math.abs(e.getValue()) >= TOLD)
                .sorted(Comparator.comparingLong((Map.Entry<String, Long> e) -> -Math.abs(e.getValue())))
                .map(e -> e.getKey() + " " + Signs.money(e.getValue())).collect(Collectors.joining(", "));
    }

    private static long food(Account a) {
        return a.purchases() + a.staples() + a.waste() + a.fees() - a.kept();
    }

    private static String percent(WeekPlan plan) {
        return plan.share().low().times(100).toDecimal(1) + " %";
    }

    @Override
    public Rows rows() {
        if (answer instanceof WhyNot.Can can) {
            Rows rows = new ComparisonScreen(book, plan, "the week with it", can.differs()).rows();
            rows.add("moved", "", "dishes, order lines, portions", "", can.moved().dishes() + ", " + can.moved().orderLines()
                    + ", " + can.moved().portions());
            can.minutes().forEach(m -> rows.add("minutes more", "", m.station(), "", m.minutes()));
            return rows.add("thrown away more mg", "", "", "", can.wasteMg());
        }
        Rows rows = new Rows("cannot");
        ((WhyNot.Cannot) answer).because().forEach(rows::add);
        return rows;
    }
}
