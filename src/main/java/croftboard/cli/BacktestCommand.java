package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.BacktestScreen;
import croftboard.forecast.Backtest;
import croftboard.forecast.Prior;
import croftboard.ledger.store.LedgerStore;
import croftboard.measure.IsoWeek;
import croftboard.plan.look.SoldDays;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Forecasts weeks that are over from what was known before each, and says how far each way was off. */
@Command(name = "backtest", sortOptions = false, description = "Forecast weeks that are over from the weeks before each, and say how far off it was.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class BacktestCommand implements Callable<Integer> {
    private static final int MOST_WEEKS = 104;

    @Option(names = "--weeks", paramLabel = "N", defaultValue = "8", description = "so many weeks up to the last that is booked (default: 8)")
    private int weeks;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Mixin
    private LedgerAt ledgerAt;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    BacktestCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if (weeks < 1 || weeks > MOST_WEEKS) {
            throw new WrongUse("--weeks " + weeks + " -> 1 to " + MOST_WEEKS);
        }
        Book book = at.read(tools.books());
        try (LedgerStore ledger = ledgerAt.toRead(at.folder(), setting)) {
            IsoWeek last = Seen.lastOrNone(ledger);
            SoldDays days = Seen.until(ledger, book, at.plans(), last);
            Backtest.Report report = new Backtest(Prior.of(book), days.curve(), days.all()).over(last.plusWeeks(1 - weeks), last);
            if (report.days() == 0 || report.sold() == 0) {
                throw new WrongUse("no day of " + last.plusWeeks(1 - weeks) + " to " + last + " has the same weekday before it"
                        + " -> fewer weeks with --weeks, or wait until more is booked");
            }
            BacktestScreen screen = new BacktestScreen(report);
            PrintWriter out = spec.commandLine().getOut();
            out.print(ScreenPrint.as(format, screen, setting.page()));
            out.flush();
            return Exit.DONE;
        }
    }
}
