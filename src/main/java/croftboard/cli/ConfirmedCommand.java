package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.measure.IsoWeek;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Marks an order of the posted plan as confirmed. */
@Command(name = "confirmed", sortOptions = false, description = "Mark an order of the posted plan as confirmed by its vendor.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class ConfirmedCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK", converter = Typed.Week.class, description = "such as 2027-W33")
    private IsoWeek week;

    @Parameters(index = "1", paramLabel = "VENDOR", description = "the vendor's id, as its file in farms/ is called")
    private String vendor;

    @Parameters(index = "2", arity = "0..1", paramLabel = "FILE", description = "the vendor's reply, kept beside the plan")
    private Path reply;
    @Option(names = "--delivery", paramLabel = "DAY", defaultValue = "",
            description = "which of its deliveries, such as mon or 2027-08-16; needed when there are several")
    private String delivery;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ConfirmedCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Page page = setting.page();
        page.say(new OrderCommand(setting, at, at.read(tools.books())).confirmed(week, vendor, delivery, reply));
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }
}
