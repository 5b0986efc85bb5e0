package croftboard.cli;

import croftboard.cli.screen.ExposurePicture;
import croftboard.cli.screen.ExposureScreen;
import croftboard.measure.IsoWeek;
import croftboard.plan.ask.Exposure;
import croftboard.plan.ask.ExposureAsked;
import croftboard.plan.ask.Question;
import croftboard.plan.file.PlanRef;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What weeks would come to if food failed. */
@Command(name = "exposure", sortOptions = false, description = "What a failure would cost: every vendor and every crop failing alone, "
        + "then random yields; which dishes survive, whose loss costs most, which back-up is worth most. Writes a picture.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, AnswerPrint.WRONG_SAY})
final class ExposureCommand implements Callable<Integer> {
    private static final int MOST_RUNS = 100_000;
    private static final int MOST_WEEKS = 60;

    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]|FROM..TO",
            description = "a week such as 2027-W33, or several such as 2027-W30..2027-W35, each with its plan")
    private String weeks;

    @Option(names = "--runs", paramLabel = "N", defaultValue = "1000", description = "weeks with random yields (default: 1000)")
    private int runs;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "same seed, same answer (default: 1)")
    private long seed;

    @Option(names = "--picture", paramLabel = "FILE", description = "where the picture goes (default: exposure-WEEK.svg here)")
    private Path picture;

    @Mixin
    private AskedOf asked;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ExposureCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if (runs < 1 || runs > MOST_RUNS) {
            throw new WrongUse("--runs " + runs + " -> 1 to " + MOST_RUNS);
        }
        List<PlanRef> refs = refs();
        Path to = picture != null ? picture : Path.of("exposure-" + weeks.replace("..", "-to-").replace("@", "-") + ".svg");
        OutFile.check(to);
        List<Question> questions = refs.stream().map(r -> asked.question(setting, tools, r)).toList();
        PrintWriter err = spec.commandLine().getErr();
        ShareDone progress = new ShareDone(err, setting.terminal());
        Exposure exposure = AskedOf.answered(() -> new ExposureAsked(questions, seed).of(runs, progress::done));
        progress.end();
        OutFile.write(to, new ExposurePicture(exposure).svg());
        err.println("croftboard: picture written to " + to);
        AnswerPrint.print(new ExposureScreen(questions.get(0).book(), exposure), asked.format(), setting, spec.commandLine().getOut());
        return Exit.DONE;
    }

    private List<PlanRef> refs() {
        String[] ends = weeks.split("\\.\\.", -1);
        if (ends.length == 1) {
            return List.of(PlanRef.parse(weeks).orElseThrow(() -> new WrongUse("'" + weeks + "' is no plan -> a week such as 2027-W33, "
                    + "or several such as 2027-W30..2027-W35")));
        }
        IsoWeek from = week(ends[0]);
        IsoWeek to = week(ends[ends.length - 1]);
        List<PlanRef> all = new ArrayList<>();
        for (IsoWeek w = from; w.compareTo(to) <= 0 && all.size() <= MOST_WEEKS; w = w.plusWeeks(1)) {
            all.add(new PlanRef(w, OptionalInt.empty()));
        }
        if (ends.length > 2 || all.isEmpty() || all.size() > MOST_WEEKS) {
            throw new WrongUse("'" + weeks + "' -> FROM..TO, the earlier week first, at most " + MOST_WEEKS + " weeks");
        }
        return all;
    }

    private static IsoWeek week(String word) {
        return IsoWeek.parse(word).orElseThrow(() -> new WrongUse("'" + word + "' is no week -> such as 2027-W30..2027-W35"));
    }
}
