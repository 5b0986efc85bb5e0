package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Nearest;
import croftboard.book.Vendor;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.Shown;
import croftboard.cli.screen.SurplusScreen;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.change.Change;
import croftboard.plan.change.ChangeGrammar;
import croftboard.plan.change.Surplus;
import croftboard.plan.file.OrderLife;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.WeekNotes;
import java.io.PrintWriter;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Answers a vendor who has more than was planned: how many to take. Writes nothing unless so many are taken. */
@Command(name = "surplus", sortOptions = false, description = "A vendor has more than announced: how many packs to take, and what for.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, no posted plan, or the plan was changed by somebody else meanwhile; nothing was written",
            Exit.INCOMPLETE_SAY, Exit.STOPPED_SAY})
final class SurplusCommand implements Callable<Integer> {
    private static final Pattern OFFER = Pattern.compile("([1-9]\\d{0,2}) (?:([a-z-]+) (?:of )?)?(.{1,60}?) at (\\$[0-9.]{1,9})(?: each)?");

    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "such as 2027-W33 (the posted version)")
    private PlanRef ref;

    @Parameters(index = "1", paramLabel = "VENDOR", description = "the vendor's id, as its file in farms/ is called")
    private String vendor;

    @Parameters(index = "2", paramLabel = "OFFER", description = "such as \"12 boxes tomato at $18\"; packs as in its file")
    private String offer;

    @Option(names = "--by", required = true, paramLabel = "DAY", converter = Typed.Weekday.class, description = "the day on which they come")
    private DayOfWeek by;

    @Option(names = "--take", paramLabel = "N", description = "take so many: repairs the plan and keeps it as the next version")
    private Integer take;

    @Option(names = "--now", paramLabel = "TIME", converter = Typed.Moment.class,
            description = "as of that moment, such as 2027-08-17T07:00 (default: now)")
    private LocalDateTime now;

    @Option(names = "--time", paramLabel = "TIME", converter = Typed.Time.class, description = "how long to look (default: 10s)")
    private Duration time;

    @Option(names = "--steps", paramLabel = "N", description = "look at so many menus instead: repeatable")
    private Long steps;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text",
            converter = Typed.FormatWord.class, description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    SurplusCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if (steps != null && (time != null || steps < 1)) {
            throw new WrongUse(time != null ? "--time and --steps together -> one of the two" : "--steps " + steps + " -> 1 or more");
        }
        QuietLibraries.hush();
        Book book = at.read(tools.books());
        Change.More more = offer(book);
        Duration looks = time == null ? Duration.ofSeconds(10) : time;
        OptionalLong fixed = steps == null ? OptionalLong.empty() : OptionalLong.of(steps);
        PrintWriter out = spec.commandLine().getOut();
        if (take == null) {
            return ask(book, more, looks, fixed, out);
        }
        if (take < 1 || take > more.packs() || format == Format.CSV) {
            throw new WrongUse(format == Format.CSV ? "--format csv with --take -> text or json" : "--take " + take + " -> from 1 to "
                    + more.packs());
        }
        String sentence = new Change.Take(more.vendor(), more.item(), take, more.price(), more.day()).sentence();
        return new ShortRun(setting, tools, at.folder(), out, spec.commandLine().getErr()).run(book, new ShortRun.Asked(ref,
                List.of(sentence), null, Optional.ofNullable(now), looks, fixed, 1, false, false, format));
    }

    private int ask(Book book, Change.More more, Duration looks, OptionalLong fixed, PrintWriter out) {
        PlanStore plans = at.plans();
        int version = ShortRun.version(plans, ref);
        WeekPlan plan = Kept.plan(plans, new PlanRef(ref.week(), OptionalInt.of(version)));
        LocalDateTime as = now != null ? now : LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone());
        ShortRun.checkMoment(plan, as);
        Given given = plans.given(plan.week(), book);
        List<Change> earlier = new ChangeGrammar(book).read(plan.inputs().revision().map(WeekPlan.Revision::changes)
                .orElse(List.of())).changes();
        Changes.refuse(Surplus.faults(book, plan, given, earlier, more, as));
        try (StopSignal stop = setting.stop().start()) {
            Surplus surplus = new Surplus(book, plan, version, given, earlier, more, as);
            Surplus.Answer answer = surplus.answer(new WeekRun.Effort(1, looks, fixed, stop::asked));
            SurplusScreen screen = new SurplusScreen(shown(book, plan, version, as), more, answer,
                    surplus.replaces(answer, as));
            out.print(switch (format) {
                case TEXT -> PlanPrint.text(screen, setting.page());
                case CSV -> PlanPrint.csv(screen.rows());
                case JSON -> JsonText.of(java.util.Map.of("surplus", JsonText.objects(screen.rows())));
            });
            out.flush();
            stop.finished(Exit.DONE);
            return Exit.DONE;
        }
    }

    private Shown shown(Book book, WeekPlan plan, int version, LocalDateTime as) {
        boolean posted = at.plans().postedVersion(plan.week()).stream().anyMatch(v -> v == version);
        return new Shown(book, plan, Optional.of(version), posted, as, "", posted ? new WeekNotes(at.folder())
                .orders(plan.week()).doubts(plan, true, as) : OrderLife.Doubts.NONE);
    }

    private Change.More offer(Book book) {
        if (!book.vendors().containsKey(vendor)) {
            throw new WrongUse("no vendor " + Page.plain(vendor) + " in farms/" + new Nearest().of(vendor, book.vendors().keySet())
                    .map(n -> " -> did you mean " + n + "?").orElse(" -> an id as in the book"));
        }
        Matcher m = OFFER.matcher(offer.strip().replaceAll("\\s+", " "));
        if (!m.matches()) {
            throw new WrongUse("\"" + Page.plain(offer.substring(0, Math.min(100, offer.length()))) + "\" is no offer -> packs, item,"
                    + " price of one pack, such as \"12 boxes tomato at $18\"");
        }
        Cents price = Cents.parse(m.group(4)).orElseThrow(() -> new WrongUse(m.group(4) + " is no price -> such as $18 or $3.40"));
        return new Change.More(vendor, item(book, m), Integer.parseInt(m.group(1)), price, by);
    }

    private String item(Book book, Matcher m) {
        List<String> items = book.vendor(vendor).offers().stream().map(Vendor.Offer::item).distinct().toList();
        for (String words : m.group(2) == null ? List.of(m.group(3)) : List.of(m.group(3), m.group(2) + " " + m.group(3))) {
            String id = words.toLowerCase(Locale.ROOT).replace(' ', '-');
            Optional<String> one = items.stream().filter(i -> i.equals(id) || (i + "s").equals(id) || (i + "es").equals(id)
                    || book.ingredient(i).name().equalsIgnoreCase(words)).findFirst();
            if (one.isPresent()) {
                return one.get();
            }
        }
        throw new WrongUse(vendor + " sells no " + Page.plain(m.group(3)) + new Nearest().of(m.group(3), items)
                .map(n -> " -> did you mean " + n + "?").orElse(" -> one of " + String.join(", ", items)));
    }
}
