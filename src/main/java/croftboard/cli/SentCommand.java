package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.measure.IsoWeek;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Marks an order of the posted plan as sent. */
@Command(name = "sent", sortOptions = false, description = "Mark an order of the posted plan as sent: past its"
        + " cut-off and not sent, nothing comes.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class SentCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK", converter = Typed.Week.class, description = "such as 2027-W33")
    private IsoWeek week;

    @Parameters(index = "1", paramLabel = "VENDOR", description = "the vendor's id, as its file in farms/ is called")
    private String vendor;

    @Option(names = "--delivery", paramLabel = "DAY", defaultValue = "",
            description = "which of its deliveries, such as mon or 2027-08-16; needed when there are several")
    private String delivery;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    SentCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Page page = setting.page();
        page.say(new OrderCommand(setting, at, at.read(tools.books())).sent(week, vendor, delivery));
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }
}
