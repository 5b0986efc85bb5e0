package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.SeasonScreen;
import croftboard.measure.WeekSpan;
import croftboard.plan.ahead.Season;
import croftboard.plan.ahead.SeasonReading;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a season asks of the growers. */
@Command(name = "season", sortOptions = false, description = "The season ahead: what to ask growers to plant, promise, and where it is thin.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class SeasonCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FROM..TO", converter = Typed.Span.class,
            description = "weeks such as 2027-W36..2028-W35; each by its own plan, else by the rotation in force")
    private WeekSpan span;

    @Parameters(index = "1", arity = "0..1", paramLabel = "PART", converter = Typed.SeasonPart.class,
            description = "demand, commitments, gaps, freezing or dishes (default: all)")
    private SeasonScreen.Part part;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text); csv takes one part")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    SeasonCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if (format == Format.CSV && part == null) {
            throw new WrongUse("--format csv: one table at a time -> croftboard season " + span
                    + " commitments --format csv (or demand, gaps, freezing, dishes)");
        }
        Book book = at.read(tools.books());
        Season season = SeasonReading.of(book, span, new AheadWeeks(at).of(span));
        List<SeasonScreen> screens = Optional.ofNullable(part).map(List::of).orElse(List.of(SeasonScreen.Part.values())).stream()
                .map(p -> new SeasonScreen(book, season, p)).toList();
        PrintWriter out = spec.commandLine().getOut();
        out.print(switch (format) {
            case TEXT -> text(season, screens);
            case CSV -> PlanPrint.csv(screens.get(0).rows());
            case JSON -> {
                Map<String, Object> all = new LinkedHashMap<>();
                screens.forEach(s -> all.put(s.name(), JsonText.objects(s.rows())));
                yield JsonText.of(all);
            }
        });
        out.flush();
        return Exit.DONE;
    }

    private String text(Season season, List<SeasonScreen> screens) {
        Page page = setting.page();
        SeasonScreen.head(season, page);
        screens.forEach(s -> s.print(page));
        return page.toString();
    }
}
