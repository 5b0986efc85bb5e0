package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.DifferenceScreen;
import croftboard.cli.screen.MenuScreen;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.ProvedScreen;
import croftboard.cli.screen.Screen;
import croftboard.cli.screen.Shown;
import croftboard.measure.IsoWeek;
import croftboard.plan.PlanRequest;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.Overrides;
import croftboard.plan.file.PlanFile;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.WeekNotes;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a week's plan, keeps it as a new draft, and prints it. */
@Command(name = "plan", sortOptions = false, description = "Make a week's plan: menu, orders, and what they are worth.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY,
            "3:the plan is not complete: printed and kept, but it cannot be posted", Exit.STOPPED_SAY})
final class PlanCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "WEEK", converter = Typed.Week.class,
            description = "such as 2027-W33 (default: the next week whose first cut-off is not past)")
    private IsoWeek week;

    @Option(names = "--time", paramLabel = "TIME", converter = Typed.Time.class,
            description = "how long to look for better plans, such as 20s or 5min (default: 20s)")
    private Duration time;

    @Option(names = "--steps", paramLabel = "N",
            description = "look at so many menus instead: the same book, week, seed and steps give the same plan")
    private Long steps;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "where the search starts (default: 1)")
    private long seed;

    @Option(names = "--prove", description = "go on until no plan can be worth more than 0.1 %% more, or the time ends "
            + "(default then: 5min)")
    private boolean prove;

    @Option(names = "--keep", paramLabel = "DAY/LINE=DISH",
            description = "keep a dish where you want it, such as mon/hot-main-1=lentil-shepherds-pie; may be repeated")
    private List<String> keep = new ArrayList<>();

    @Option(names = "--from", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "start from that plan and list what differs")
    private PlanRef from;

    @Option(names = "--out", paramLabel = "FILE", description = "write the plan to this file, not into plans/")
    private Path out;

    @Option(names = "--format", paramLabel = "text|json", defaultValue = "text",
            converter = Typed.FormatWord.class, description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    PlanCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        checkUse();
        QuietLibraries.hush();
        Book book = at.read(tools.books());
        LocalDateTime now = LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone());
        IsoWeek of = week != null ? week : Weeks.next(book, now);
        try (StopSignal stop = setting.stop().start()) {
            ProgressLine progress = new ProgressLine(spec.commandLine().getErr(), setting.terminal(), setting.width(),
                    first -> menu(book, first, now));
            Optional<WeekPlan> start = Optional.ofNullable(from).map(ref -> Kept.plan(at.plans(), ref));
            PlanRun.Outcome outcome = search(book, now, of, start, stop, progress);
            if (outcome.plan().isEmpty()) {
                spec.commandLine().getErr().println("croftboard: ended before there was a plan; nothing was written");
                stop.finished(Exit.STOPPED);
                return Exit.STOPPED;
            }
            WeekPlan plan = outcome.plan().get();
            int code = plan.complete() ? Exit.DONE : outcome.stopped() ? Exit.STOPPED : Exit.INCOMPLETE;
            OptionalInt version = write(plan);
            print(book, plan, version, now, start, progress.seconds());
            stop.finished(code);
            return code;
        }
    }

    private void checkUse() {
        if (time != null && steps != null) {
            throw new WrongUse("--time and --steps together -> one of the two");
        }
        if (prove && steps != null) {
            throw new WrongUse("--prove and --steps together -> proving goes by the clock: --prove --time 5min");
        }
        if (steps != null && steps < 1) {
            throw new WrongUse("--steps " + steps + " -> 1 or more");
        }
        if (format == Format.CSV) {
            throw new WrongUse("--format csv: a plan is more than one table -> croftboard show WEEK orders --format csv");
        }
        if (out != null) {
            OutFile.check(out);
        }
    }

    private PlanRun.Outcome search(Book book, LocalDateTime now, IsoWeek of, Optional<WeekPlan> start,
            StopSignal stop, ProgressLine progress) {
        PlanStore plans = at.plans();
        Overrides kept = new WeekNotes(at.folder()).kept(of);
        SortedMap<String, String> dishes = kept.dishes();
        dishes.putAll(KeepWords.read(keep));
        PlanRequest request = new PlanRequest(of, seed, time != null ? time : Duration.ofSeconds(prove ? 300 : 20),
                steps == null ? OptionalLong.empty() : OptionalLong.of(steps), dishes,
                start, plans.given(of, book), progress, stop::asked, prove, kept.packs());
        return new PlanRun(progress, stop).run(() -> tools.planner().plan(book, now, request));
    }

    private String menu(Book book, WeekPlan first, LocalDateTime now) {
        Page page = setting.page();
        new MenuScreen(new Shown(book, first, Optional.empty(), false, now, "")).print(page);
        return page.toString();
    }

    /** @return the version, when the plan is kept in the book */
    private OptionalInt write(WeekPlan plan) {
        PrintWriter err = spec.commandLine().getErr();
        if (out != null) {
            OutFile.write(out, PlanFile.write(plan));
            err.println("croftboard: written to " + out);
            return OptionalInt.empty();
        }
        PlanStore plans = at.plans();
        OptionalInt posted = plans.postedVersion(plan.week());
        int version = plans.writeDraft(plan);
        err.println("croftboard: kept as " + plan.week() + "@" + version + (posted.isPresent()
                ? ", a new draft beside the posted version " + posted.getAsInt() : ", a draft"));
        return OptionalInt.of(version);
    }

    private void print(Book book, WeekPlan plan, OptionalInt version, LocalDateTime now, Optional<WeekPlan> start,
            double seconds) {
        Shown shown = new Shown(book, plan, version.isPresent() ? Optional.of(version.getAsInt()) : Optional.empty(),
                false, now, tools.check()
                .check(book, plan, at.plans().given(plan.week(), book), Optional.of(now)).sentence());
        List<Screen> screens = new ArrayList<>(
                format == Format.JSON ? Part.ALL.screens(shown) : Part.ofANewPlan(shown));
        start.ifPresent(before -> screens.add(screens.size() - 1, new DifferenceScreen(shown, before)));
        if (prove) {
            screens.add(screens.size() - 1, new ProvedScreen(plan));
        }
        PrintWriter to = spec.commandLine().getOut();
        to.print(format == Format.JSON ? PlanPrint.json(shown, screens, OptionalDouble.of(seconds))
                : PlanPrint.text(shown, screens, setting.page()));
        to.flush();
    }
}
