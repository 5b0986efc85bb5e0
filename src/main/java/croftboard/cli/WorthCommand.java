package croftboard.cli;

import croftboard.cli.screen.WorthScreen;
import croftboard.plan.ask.Question;
import croftboard.plan.ask.Worth;
import croftboard.plan.ask.WorthAsked;
import croftboard.plan.file.PlanRef;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What one more of each scarce thing would be worth. */
@Command(name = "worth", sortOptions = false, description = "What one more of each scarce thing would be worth: a pack of an offer "
        + "that is used up, an hour at a station, a unit of equipment, a recipe on one more line; the ten worth most.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, AnswerPrint.WRONG_SAY})
final class WorthCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class, description = "such as 2027-W33")
    private PlanRef ref;

    @Mixin
    private AskedOf asked;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    WorthCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Question question = asked.question(setting, tools, ref);
        Worth worth = AskedOf.answered(() -> new WorthAsked(question).of());
        AnswerPrint.print(new WorthScreen(question.book(), asked.called(ref), worth), asked.format(), setting,
                spec.commandLine().getOut());
        return Exit.DONE;
    }
}
