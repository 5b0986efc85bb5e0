package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.measure.IsoWeek;
import java.time.LocalDateTime;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fix a dish, a day or an order line: plan and short leave it. */
@Command(name = "keep", sortOptions = false, description = "Fix a dish, a day or an order line: plan and short leave it.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class KeepCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK", converter = Typed.Week.class, description = "such as 2027-W33")
    private IsoWeek week;

    @Parameters(index = "1", paramLabel = "WHAT", description = "DAY/LINE[=DISH], DAY, or VENDOR/ITEM[=PACKS]")
    private String what;

    @Option(names = "--who", required = true, paramLabel = "NAME", description = "who decides")
    private String who;

    @Option(names = "--why", required = true, paramLabel = "REASON", description = "for what reason")
    private String why;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    KeepCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        Page page = setting.page();
        new KeepRun(at, book, LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone())).keep(week, what, who, why)
                .forEach(page::say);
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }
}
