package croftboard.cli.screen;

import croftboard.forecast.Backtest;
import java.util.Locale;
import java.util.Map;

/** How far each way of forecasting was off. */
public final class BacktestScreen implements Screen {
    private final Backtest.Report report;

    public BacktestScreen(Backtest.Report report) {
        this.report = report;
    }

    @Override
    public String name() {
        return "backtest";
    }

    @Override
    public void print(Page page) {
        page.heading("Forecasts of " + report.from() + " to " + report.to() + " against what sold");
        page.say(report.days() + " days of a dish on a line, " + report.soldOut() + " of which ran out. Each forecast knows only the weeks before."
                + " Off: between what a forecast would have had sold of what was put out, and what did sell; so a day that ran out"
                + " counts only when the forecast was below what sold.");
        page.gap();
        TextTable table = new TextTable(TextTable.Column.words("forecast"), TextTable.Column.figure("portions off a day"),
                TextTable.Column.figure("of what sold"), TextTable.Column.figure("of last week's"));
        double naive = report.off().get(Backtest.Way.LAST_WEEK);
        report.off().forEach((way, off) -> table.row(way.toString(), figure(off / report.days(), 2), figure(100 * off / report.sold(), 1) + " %",
                figure(100 * off / naive, 0) + " %"));
        page.table(table);
        page.gap();
        double learned = report.off().get(Backtest.Way.LEARNED);
        String best = report.off().entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow().getKey().toString();
        page.say(report.off().values().stream().allMatch(o -> learned <= o) ? "The learned forecast was off least."
                : "Off least: " + best + ". The learned forecast is not the best here: with few weeks, or a week unlike the others, that happens.");
    }

    private static String figure(double of, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", of);
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("forecast", "from", "to", "days", "ran_out", "sold", "off_portions");
        report.off().forEach((way, off) -> rows.add(way.toString(), report.from().toString(), report.to().toString(), report.days(), report.soldOut(),
                report.sold(), figure(off, 2)));
        return rows;
    }
}
