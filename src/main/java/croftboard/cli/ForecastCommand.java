package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Fault;
import croftboard.book.ManagersFigure;
import croftboard.book.file.BookReading;
import croftboard.book.file.BookWith;
import croftboard.book.file.LearnedText;
import croftboard.cli.screen.ForecastScreen;
import croftboard.cli.screen.Page;
import croftboard.measure.Amount;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.WholeFile;
import croftboard.plan.look.WeekForecast;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what a week is expected to sell; takes the manager's own figure. */
@Command(name = "forecast", sortOptions = false, description = "Show what a week is expected to sell, its range, and how likely the plan's"
        + " portions run out; put a figure of your own in its place.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class ForecastCommand implements Callable<Integer> {
    private static final Pattern SET = Pattern.compile("([a-z][a-z0-9-]{0,59})/([a-zA-Z]{3})=(.+)");
    private static final int MOST = 100_000;
    /** An edit upward by so much is wrong more often than not. */
    private static final double LARGE = 1.25;

    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "such as 2027-W33 (with its current plan) or 2027-W33@2")
    private PlanRef ref;

    @Option(names = "--set", paramLabel = "LINE/DAY=PORTIONS", description = "your own figure, such as hot-main-1/fri=60: portions of a dish of"
            + " average draw that day. Kept in seasons/overrides.yaml and judged later")
    private String set;

    @Option(names = "--reason", paramLabel = "WORDS", description = "why; needed with --set")
    private String reason;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ForecastCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if ((set == null) != (reason == null) || reason != null && reason.isBlank()) {
            throw new WrongUse(set == null ? "--reason of which figure? -> --set hot-main-1/fri=60 --reason \"" + reason + "\""
                    : "--set needs its reason, so that it can be judged later -> --set " + set + " --reason \"parade on Main Street\"");
        }
        Book book = at.read(tools.books());
        Page page = setting.page();
        if (set != null) {
            book = written(book, page);
        }
        OptionalInt version = ref.version().isPresent() ? ref.version() : at.plans().current(ref.week());
        Optional<WeekPlan> plan = version.isPresent() ? Optional.of(Kept.plan(at.plans(), ref)) : Optional.empty();
        ForecastScreen screen = new ForecastScreen(book, WeekForecast.of(book, ref.week(), plan),
                plan.map(p -> ref.week() + "@" + version.getAsInt()));
        PrintWriter out = spec.commandLine().getOut();
        out.print(switch (format) {
            case TEXT -> {
                screen.print(page);
                yield page.toString();
            }
            case CSV -> PlanPrint.csv(screen.rows());
            case JSON -> JsonText.of(JsonText.objects(screen.rows()));
        });
        out.flush();
        return Exit.DONE;
    }

    private Book written(Book book, Page page) {
        ManagersFigure own = own(book);
        Path file = at.folder().resolve(LearnedText.OVERRIDES);
        try {
            String before = Files.exists(file) ? Files.readString(file) : "# yaml-language-server: $schema=../docs/schema/overrides.schema.json\n"
                    + "# What the manager expects in place of the forecast; croftboard look-back WEEK tells how it did.\n";
            String text = before + (before.isEmpty() || before.endsWith("\n") ? "" : "\n") + LearnedText.of(own);
            BookReading now = BookWith.reading(at.folder(), LearnedText.OVERRIDES, text);
            if (now instanceof BookReading.Faulty faulty) {
                throw new WrongUse(faulty.faults().stream().map(Fault::toString).toList());
            }
            WholeFile.replace(Files.exists(file) ? file.toRealPath() : file, text.getBytes(StandardCharsets.UTF_8));
            page.say("Written: " + LearnedText.OVERRIDES + ". The plan of " + ref.week() + " takes it up when it is made again: croftboard plan "
                    + ref.week() + ".");
            double ratio = own.insteadOf().filter(i -> i.signum() > 0).map(i -> own.portions().toDouble() / i.toDouble()).orElse(1.0);
            if (ratio > LARGE) {
                page.say("That is " + Math.round(100 * ratio - 100) + " % above the forecast. Large edits upward are often wrong; look back at it later.");
            }
            page.gap();
            return now.orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
        }
    }

    private ManagersFigure own(Book book) {
        Matcher m = SET.matcher(set.trim());
        Optional<DayOfWeek> day = m.matches() ? Arrays.stream(DayOfWeek.values())
                .filter(d -> d.name().substring(0, 3).equalsIgnoreCase(m.group(2))).findFirst() : Optional.empty();
        Optional<Ratio> portions = day.isPresent() ? Amount.number(m.group(3).trim()).filter(n -> n.compareTo(Ratio.of(MOST)) <= 0)
                : Optional.empty();
        if (portions.isEmpty()) {
            throw new WrongUse("--set " + set + " cannot be read -> line, day and portions, such as --set hot-main-1/fri=60");
        }
        String line = m.group(1);
        if (!book.seasons().demand().containsKey(line)) {
            throw new WrongUse("no line '" + line + "' -> one of " + String.join(", ", book.seasons().demand().keySet()));
        }
        IsoWeek week = ref.week();
        Optional<ManagersFigure> other = book.seasons().override(line, day.get(), week);
        if (other.isPresent()) {
            throw new WrongUse(line + " has a figure of yours for that day already: " + ForecastScreen.figure(other.get().portions()) + ", \""
                    + other.get().reason() + "\" -> change it in " + LearnedText.OVERRIDES);
        }
        return new ManagersFigure(week, line, day.get(), portions.get(), Optional.of(Ratio.of(book.seasons().forecast(line, day.get(), week)
                .toDecimal(1))), reason.strip());
    }
}
