package croftboard.cli;

import croftboard.book.Book;
import croftboard.plan.change.ChangeGrammar;
import croftboard.plan.file.PlanRef;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Repairs the plan that people work from when something has changed. */
@Command(name = "short", sortOptions = false, description = {"Repair the posted plan: what is done stays, the rest changes as"
        + " little as it can.", "Prints what changes, first an answer at once, then the settled one, which is kept as the next"
        + " version: a draft until it is posted."},
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, no posted plan, or the plan was changed by somebody else meanwhile; nothing was written",
            "3:something cannot be had or done: kept, but it cannot be posted", Exit.STOPPED_SAY})
final class ShortCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "such as 2027-W33 (the posted version) or 2027-W33@2")
    private PlanRef ref;

    @Option(names = "--change", paramLabel = "SENTENCE", description = "what is different now, a sentence as below; may be repeated")
    private List<String> changes = new ArrayList<>();

    @Option(names = "--changes", paramLabel = "FILE", description = "the same from a file, a sentence a line")
    private Path file;

    @Option(names = "--now", paramLabel = "TIME", converter = Typed.Moment.class,
            description = "as of that moment, such as 2027-08-17T07:00 (default: now); what is past then stays")
    private LocalDateTime now;

    @Option(names = "--time", paramLabel = "TIME", converter = Typed.Time.class,
            description = "how long to look for a better way out (default: 11s)")
    private Duration time;

    @Option(names = "--steps", paramLabel = "N",
            description = "look at so many menus instead: the same plan, changes, moment and steps give the same answer")
    private Long steps;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "where the search starts (default: 1)")
    private long seed;

    @Option(names = "--accept-statement-change",
            description = "a substitute may be used also where an allergen or an unknown is added or a diet lost")
    private boolean accept;

    @Option(names = "--dry-run", description = "only tell; write nothing")
    private boolean dryRun;

    @Option(names = "--format", paramLabel = "text|json", defaultValue = "text",
            converter = Typed.FormatWord.class, description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ShortCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    /** The sentences that are understood, for the end of the help. */
    static String[] grammar() {
        List<String> lines = new ArrayList<>(List.of("", "Sentences (days: mon tue wed thu fri sat sun):"));
        ChangeGrammar.shapes().forEach(s -> lines.add(("  " + s.shape() + "\n      " + s.means()).replace("%", "%%")));
        return lines.stream().flatMap(String::lines).toArray(String[]::new);
    }

    @Override
    public Integer call() {
        if (time != null && steps != null) {
            throw new WrongUse("--time and --steps together -> one of the two");
        }
        if (steps != null && steps < 1) {
            throw new WrongUse("--steps " + steps + " -> 1 or more");
        }
        if (format == Format.CSV) {
            throw new WrongUse("--format csv: what changes is more than one table -> text or json");
        }
        QuietLibraries.hush();
        croftboard.sourcing.Natives.startLoading();
        Book book = at.read(tools.books());
        return new ShortRun(setting, tools, at.folder(), spec.commandLine().getOut(), spec.commandLine().getErr()).run(book,
                new ShortRun.Asked(ref, changes, file, Optional.ofNullable(now), time == null ? Duration.ofSeconds(11) : time,
                        steps == null ? OptionalLong.empty() : OptionalLong.of(steps), seed, dryRun, accept, format));
    }
}
