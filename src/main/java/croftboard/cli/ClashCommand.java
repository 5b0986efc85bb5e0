package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.ClashScreen;
import croftboard.plan.WeekPlan;
import croftboard.plan.ask.ClashAsked;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which facts of a week cannot all hold. */
@Command(name = "clash", sortOptions = false, description = "Where something kept or a must makes the week impossible, or a daily "
        + "promise cannot be kept: the facts that clash, and what would mend it at what price.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {"0:the week can be planned; promises that cannot be kept are told",
            Exit.OUR_FAULT_SAY, "2:wrong use, or the book has faults", "3:the week is impossible as it is; the clash is told"})
final class ClashCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "such as 2027-W33; what its plan keeps is kept, and it need not have a plan")
    private PlanRef ref;

    @Option(names = "--keep", paramLabel = "DAY/LINE=DISH", description = "keep this as well, such as "
            + "mon/hot-main-1=lentil-shepherds-pie; may be repeated")
    private List<String> keep = new ArrayList<>();

    @Mixin
    private AskedOf asked;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ClashCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        SortedMap<String, String> kept = KeepWords.read(keep);
        PlanStore plans = asked.at().plans();
        boolean planned = ref.version().isPresent() || plans.current(ref.week()).isPresent();
        Book book = asked.at().read(tools.books());
        QuietLibraries.hush();
        Optional<WeekPlan> plan = planned ? Optional.of(asked.question(setting, tools, ref).plan()) : Optional.empty();
        ClashAsked question = new ClashAsked(book, ref.week(), plan, plans.given(ref.week(), book), asked.moment(setting, book));
        ClashAsked.Answer answer = AskedOf.answered(() -> question.of(kept));
        AnswerPrint.print(new ClashScreen(book, planned ? asked.called(ref) : ref.week().toString(), answer), asked.format(), setting,
                spec.commandLine().getOut());
        return answer.impossible() ? Exit.INCOMPLETE : Exit.DONE;
    }
}
