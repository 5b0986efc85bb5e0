package croftboard.paper.report;

import croftboard.ledger.share.FoodCost;
import croftboard.ledger.share.MenuMix;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.paper.Block;
import croftboard.paper.Called;
import croftboard.paper.Data;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The report to the board: sales, food cost, labour, plan against actual, menu mix; behind it what the members read. */
public final class BoardReport {
    private static final List<String> CLASSES = List.of("keep", "raise price or cut cost", "promote", "drop unless needed");
    private final ReportFacts facts;
    private final BoardFacts board;
    private final Called called;
    private final List<Block> blocks = new ArrayList<>();

    private BoardReport(ReportFacts facts, BoardFacts board) {
        this.facts = facts;
        this.board = board;
        this.called = new Called(facts.book());
    }

    public static Sheet of(ReportFacts facts, BoardFacts board) {
        BoardReport report = new BoardReport(facts, board);
        report.money();
        report.labour();
        report.actual();
        report.mix();
        report.blocks.add(new Block.NewPage());
        report.blocks.addAll(MembersReport.blocks(facts));
        return new Sheet(SheetKind.REPORT, MembersReport.id("board", facts), "Report to the board", List.of(MembersReport.under(facts)),
                report.blocks, monthData(board), Sheet.Look.PLAIN);
    }

    private void say(String words) {
        blocks.add(new Block.Text(words));
    }

    private static String dollars(long cents) {
        return new Cents(cents).toString();
    }

    private void money() {
        blocks.add(new Block.Heading(1, "Sales, food cost and margin"));
        List<Block.Row> rows = new ArrayList<>();
        long sales = 0;
        long cost = 0;
        long known = 0;
        long waste = 0;
        for (BoardFacts.Month m : board.months()) {
            FoodCost c = m.cost();
            rows.add(row(MembersReport.month(c.month()), c.sales(), c.cost(), c.sales(), m.wasteCents()));
            sales += c.sales();
            cost += c.cost().orElse(0L);
            known += c.cost().isPresent() ? c.sales() : 0;
            waste += m.wasteCents();
        }
        Block.Row all = row("All", sales, known == sales || known > 0 ? Optional.of(cost) : Optional.empty(), known, waste);
        rows.add(Block.Row.total(all.cells().toArray(String[]::new)));
        blocks.add(new Block.Table(List.of(Block.Column.words("Month", 24), Block.Column.figure("Sales", 16), Block.Column.figure("Food cost", 16),
                Block.Column.figure("Of sales", 11), Block.Column.figure("Margin", 16), Block.Column.figure("Waste", 14)), rows));
        say("Sales: before tax, as the register told. Food cost: opening count + purchases of food - credits received + transfers in"
                + " - transfers out - staff meals - closing count; waste is in it, delivery fees are not. Margin: sales less food cost, before"
                + " wages. Waste: what was written down with a cost. Whole months; \"-\" where a count is missing"
                + (known < sales ? ", and the last row compares only months with both counts" : "") + "."
                + facts.book().kitchen().promises().foodCost().map(p -> " The book promises at most " + Percent.of(p.atMost()) + ".").orElse(""));
    }

    /** @param of sales that the cost belongs to */
    private static Block.Row row(String name, long sales, Optional<Long> cost, long of, long waste) {
        return Block.Row.of(name, dollars(sales), cost.map(BoardReport::dollars).orElse("-"),
                of > 0 ? cost.map(c -> Percent.of(Ratio.of(c, of))).orElse("-") : "-", cost.map(c -> dollars(of - c)).orElse("-"), dollars(waste));
    }

    private void labour() {
        blocks.add(new Block.Heading(1, "Labour"));
        if (board.plans().isEmpty()) {
            say("No week of these days has a posted plan, so that no hours were planned. Hours paid are not in the ledger.");
            return;
        }
        long minutes = board.plans().stream().mapToLong(BoardFacts.Planned::minutes).sum();
        long taken = board.plans().stream().mapToLong(BoardFacts.Planned::taken).sum();
        long expected = board.plans().stream().mapToLong(BoardFacts.Planned::expected).sum();
        say("In the " + board.plans().size() + " of " + board.weeks() + " weeks with a posted plan, " + Ratio.of(minutes, 60).round()
                + " hours were planned at the benches. Sales: " + dollars(taken) + " taken, " + dollars(expected) + " expected"
                + (minutes > 0 ? "; " + dollars(Ratio.of(taken).times(60).over(minutes).round()) + " taken for each planned hour" : "")
                + ". Planned hours at the benches, not hours paid: serving, washing up and breaks are not in them.");
    }

    private void actual() {
        blocks.add(new Block.Heading(1, "Plan against actual"));
        BoardFacts.Actual a = board.actual();
        if (a.rows() == 0) {
            say("No production sheet was read back in these days.");
            return;
        }
        say("By " + String.format(Locale.ROOT, "%,d", a.rows()) + " rows of production sheets (a dish on a day): " + portions(a.planned1000())
                + " portions planned, " + portions(a.sold1000()) + " sold, " + portions(a.left1000()) + " left at closing; "
                + String.format(Locale.ROOT, "%,d", a.ranOut()) + " rows ran out before closing (" + Percent.of(Ratio.of(a.ranOut(), a.rows())) + ").");
    }

    private static String portions(long thousandths) {
        return String.format(Locale.ROOT, "%,d", Ratio.of(thousandths, 1000).round());
    }

    private void mix() {
        blocks.add(new Block.Heading(1, "Menu mix"));
        MenuMix mix = board.mix();
        if (mix.dishes().isEmpty()) {
            say("No dish was sold whose ingredients all have a price.");
            return;
        }
        List<Block.Row> rows = new ArrayList<>();
        for (String word : CLASSES) {
            List<MenuMix.Dish> here = mix.dishes().stream().filter(d -> d.word().equals(word)).toList();
            long units = here.stream().mapToLong(d -> d.sold().units()).sum();
            rows.add(Block.Row.of(MembersReport.sentence(word), Integer.toString(here.size()), portions(units),
                    String.join("; ", here.stream().limit(1).map(d -> called.recipe(d.sold().dish())).toList())));
        }
        blocks.add(new Block.Table(List.of(Block.Column.words("Class", 24), Block.Column.figure("Dishes", 8),
                Block.Column.figure("Portions", 10), Block.Column.words("Sold most", 56)), rows));
        say("Popular: more than " + Percent.of(mix.popular()) + " of an even share of portions, here more than "
                + mix.threshold().over(1000).toDecimal(1) + ". Earns: more than the average margin of a portion, "
                + dollars(mix.average().round()) + ". Popular and earns: keep; popular only: raise price or cut cost; earns only: promote;"
                + " neither: drop, unless it keeps a promise. Margin: money taken less the recipe's ingredients at the average price paid, or the book's cheapest where none was bought."
                + (board.unpriced().isEmpty() ? "" : " " + board.unpriced().size()
                        + " dishes are left out: something in them has no price."));
    }

    /** Everything in the report as tables. */
    public static Map<String, Data> tables(ReportFacts facts, BoardFacts board) {
        Map<String, Data> all = new LinkedHashMap<>();
        all.put("money", monthData(board));
        Data.Building plans = Data.of("week", "expected_sales_usd", "taken_usd", "planned_minutes");
        board.plans().forEach(p -> plans.row(p.week(), ReportTables.usd(p.expected()), ReportTables.usd(p.taken()), p.minutes()));
        all.put("plans", plans.done());
        Data.Building mix = Data.of("dish", "portions", "margin_usd_a_portion", "popular", "earns", "method_says");
        board.mix().dishes().forEach(d -> mix.row(d.sold().dish(), Ratio.of(d.sold().units(), 1000).toDecimal(3),
                d.sold().margin().over(100).toDecimal(4), d.popular() ? "yes" : "no", d.earns() ? "yes" : "no", d.word()));
        all.put("menu-mix", mix.done());
        all.putAll(ReportTables.all(facts));
        return all;
    }

    private static Data monthData(BoardFacts board) {
        Data.Building data = Data.of("month", "sales_usd", "food_cost_usd", "of_sales", "margin_usd", "waste_usd");
        board.months().forEach(m -> data.row(m.cost().month(), ReportTables.usd(m.cost().sales()),
                m.cost().cost().map(c -> ReportTables.usd(c).toString()).orElse(""), ReportTables.part(m.cost().ofSales()),
                m.cost().cost().map(c -> ReportTables.usd(m.cost().sales() - c).toString()).orElse(""), ReportTables.usd(m.wasteCents())));
        return data.done();
    }
}
