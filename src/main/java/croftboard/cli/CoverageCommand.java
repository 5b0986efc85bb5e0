package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.MonthCoverageScreen;
import croftboard.measure.WeekSpan;
import croftboard.plan.ahead.MonthCoverage;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Who finds a main on which days, over weeks that are planned. */
@Command(name = "coverage", sortOptions = false, description = "Who finds a main on which days over a month, and who eats poorly.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class CoverageCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FROM..TO", converter = Typed.Span.class,
            description = "weeks such as 2027-W36..2027-W39, one week, or a month such as 2027-09; each by its own plan, else by the rotation in force")
    private WeekSpan span;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text); csv and json have a row for each diet and day")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    CoverageCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        MonthCoverageScreen screen = new MonthCoverageScreen(book, MonthCoverage.of(book, span, new AheadWeeks(at).of(span)));
        PrintWriter out = spec.commandLine().getOut();
        out.print(ScreenPrint.as(format, screen, setting.page()));
        out.flush();
        return Exit.DONE;
    }
}
