package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.RotationShown;
import croftboard.cli.screen.Screen;
import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import croftboard.plan.Rotation;
import croftboard.plan.RotationRequest;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.RotationStore;
import java.io.PrintWriter;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans several weeks as one, keeps them as a rotation, and prints it. */
@Command(name = "rotate", sortOptions = false, description = "Plan the weeks of a month or a season as one rotation.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY,
            "3:a week is not complete: printed and kept, to be planned again when its list arrives", Exit.STOPPED_SAY})
final class RotateCommand implements Callable<Integer> {
    private static final int MOST_WEEKS = 53;
    private static final int WEEK = 7;
    private static final int WEEKS_UNSAID = 4;

    @Parameters(index = "0", paramLabel = "FROM", converter = Typed.Weeks.class,
            description = "first week, such as 2027-W36, or a month, such as 2027-09 (the weeks whose Thursday is in it)")
    private Typed.FromWeek from;

    @Option(names = "--weeks", paramLabel = "N", description = "how many weeks, 1 to 53 (default: 4, or those of the month)")
    private Integer weeks;

    @Option(names = "--cycle", paramLabel = "K", description = "plan K weeks (1 to 5) and repeat them, swapping only what the "
            + "calendar forces")
    private Integer cycle;

    @Option(names = "--time", paramLabel = "TIME", converter = Typed.Time.class,
            description = "how long to look for better ones, such as 60s or 5min (default: 60s, or 5s a week beyond 12)")
    private Duration time;

    @Option(names = "--steps", paramLabel = "N",
            description = "look at so many menus instead: the same book, plans, weeks, seed and steps give the same rotation")
    private Long steps;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "where the search starts (default: 1)")
    private long seed;

    @Option(names = "--replace", description = "take other rotations that have some of these weeks out of force")
    private boolean replace;

    @Option(names = "--format", paramLabel = "text|json", defaultValue = "text",
            converter = Typed.FormatWord.class, description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    RotateCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        WeekSpan span = span();
        QuietLibraries.hush();
        Book book = at.read(tools.books());
        LocalDateTime now = LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone());
        RotationStore rotations = new RotationStore(at.folder());
        List<WeekSpan> instead = refuse(span, book, now, rotations);
        try (StopSignal stop = setting.stop().start()) {
            RotationProgress progress = new RotationProgress(spec.commandLine().getErr(), setting.terminal(), setting.width());
            Rotation rotation = Wiring.rotate(book, now, new RotationRequest(span, cycle == null ? OptionalInt.empty()
                    : OptionalInt.of(cycle), seed, time(span), steps == null ? OptionalLong.empty() : OptionalLong.of(steps),
                    week -> rotations.given(week, book, span), rotations.served(), progress, stop::asked));
            progress.clear();
            int version = rotations.write(rotation, instead);
            PrintWriter err = spec.commandLine().getErr();
            instead.forEach(old -> err.println("croftboard: the rotation " + old + " is out of force; its files stay"));
            err.println("croftboard: kept as " + span + "@" + version);
            int code = rotation.complete() ? Exit.DONE : stop.asked() ? Exit.STOPPED : Exit.INCOMPLETE;
            print(new RotationShown(book, rotation, Optional.of(version), now, Wiring.checked(book, rotation)));
            stop.finished(code);
            return code;
        }
    }

    private WeekSpan span() {
        List<String> wrong = new ArrayList<>();
        if (time != null && steps != null) {
            wrong.add("--time and --steps together -> one of the two");
        }
        if (steps != null && steps < 1) {
            wrong.add("--steps " + steps + " -> 1 or more");
        }
        if (weeks != null && (weeks < 1 || weeks > MOST_WEEKS)) {
            wrong.add("--weeks " + weeks + " -> 1 to " + MOST_WEEKS);
        }
        if (cycle != null && (cycle < 1 || cycle > croftboard.plan.Rotator.AS_ONE)) {
            wrong.add("--cycle " + cycle + " -> 1 to " + croftboard.plan.Rotator.AS_ONE + " weeks");
        }
        if (format == Format.CSV) {
            wrong.add("--format csv: a rotation is more than one table -> croftboard show FROM..TO menu --format csv");
        }
        int count = weeks != null ? weeks : from.weeks().orElse(WEEKS_UNSAID);
        if (wrong.isEmpty() && cycle != null && cycle >= count) {
            wrong.add("--cycle " + cycle + " of " + count + " weeks: nothing is repeated -> more --weeks, or no --cycle");
        }
        if (!wrong.isEmpty()) {
            throw new WrongUse(wrong);
        }
        return WeekSpan.of(from.first(), count);
    }

    private Duration time(WeekSpan span) {
        int count = span.weeks().size();
        return time != null ? time : Duration.ofSeconds(Math.max(60, 5L * count));
    }

    /** @return rotations that are taken out of force. @throws WrongUse with every reason why these weeks cannot be planned */
    private List<WeekSpan> refuse(WeekSpan span, Book book, LocalDateTime now, RotationStore rotations) {
        List<String> wrong = new ArrayList<>();
        if (!span.first().monday().isAfter(now.toLocalDate())) {
            wrong.add(span.first() + " has begun or is past -> begin with " + Weeks.next(book, now) + " or later");
        }
        if (cycle != null && cycle * WEEK < book.kitchen().gapDays()) {
            wrong.add("--cycle " + cycle + ": a dish would come back after " + cycle * WEEK + " days, the kitchen's gap is "
                    + book.kitchen().gapDays() + " -> a longer cycle");
        }
        PlanStore plans = at.plans();
        span.weeks().stream().filter(w -> plans.postedVersion(w).isPresent()).forEach(w -> wrong.add(w
                + " has a posted plan that people work from -> plan weeks before or after it"));
        List<WeekSpan> others = rotations.overlapping(span);
        if (!replace) {
            others.forEach(o -> wrong.add(span + " has weeks of the rotation " + o + " -> begin with "
                    + o.last().plusWeeks(1) + ", or take that one out of force with --replace"));
        }
        if (!wrong.isEmpty()) {
            throw new WrongUse(wrong);
        }
        return others;
    }

    private void print(RotationShown shown) {
        List<Screen> screens = RotationPrint.ofANewOne(shown);
        PrintWriter to = spec.commandLine().getOut();
        to.print(format == Format.JSON ? RotationPrint.json(shown, screens)
                : RotationPrint.text(shown, screens, setting.page()) + "\nThe menus: croftboard show "
                        + shown.rotation().span() + " menu\n");
        to.flush();
    }
}
