package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.file.Packet;
import croftboard.paper.file.PaperFormat;
import croftboard.paper.served.HomeCards;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.OrderLife;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.WeekNotes;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the sheets that people work from. */
@Command(name = "paper", sortOptions = false, description = "Print a plan: orders, lists, labels, cards, logs.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY,
            "3:printed, but the plan is not complete: every page says so first"})
final class PaperCommand implements Callable<Integer> {
    private static final int SHOWN_LINES = 12;

    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class,
            description = "such as 2027-W33 (the current version) or 2027-W33@2")
    private PlanRef ref;

    @Option(names = "--sheet", paramLabel = "NAME", split = ",", converter = Typed.Sheets.class,
            description = "only these, with commas between: order, order-calendar, prep, pull, batch, production, label, "
                    + "case-card, coverage, members, home-card, log, function (default: all but home-card)")
    private List<SheetKind> sheets = List.of();

    @Option(names = "--day", paramLabel = "DAY", converter = Typed.Day.class,
            description = "only this day's: mon .. sun of the week, or a date; orders by their delivery")
    private Typed.DayWord day;

    @Option(names = "--vendor", paramLabel = "V", description = "only this vendor's orders, by its id")
    private String vendor;

    @Option(names = "--dish", paramLabel = "ID", description = "only the home card of this dish, by its id or name")
    private String dish;

    @Option(names = "--servings", paramLabel = "N", defaultValue = "4", converter = Typed.Servings.class,
            description = "servings on home cards (default: 4)")
    private int servings;

    @Option(names = "--out", paramLabel = "DIR", description = "folder for the files (default: paper/WEEK in the book)")
    private Path out;

    @Option(names = "--format", paramLabel = "pdf|html|csv|text", defaultValue = "pdf",
            converter = Typed.PaperWord.class, description = "how the sheets are written (default: pdf)")
    private PaperFormat format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    PaperCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        if (vendor != null && !book.vendors().containsKey(vendor)) {
            throw new WrongUse("--vendor " + vendor + ": no vendor has this id -> "
                    + String.join(", ", book.vendors().keySet()));
        }
        PaperContext context = context(book);
        Set<SheetKind> kinds = kinds();
        Optional<String> only = Optional.ofNullable(dish).map(d -> RecipeWords.recipe(book, d)).map(r -> {
            if (!r.isDish()) {
                throw new WrongUse("--dish " + dish + ": a component, which is served in no portions -> the id of a dish");
            }
            return r.id();
        });
        List<Sheet> made = SheetMakers.make(context, kinds, new HomeCards(servings, only));
        boolean part = day != null || vendor != null || dish != null;
        Path folder = folder(context);
        try {
            tell(folder, Packet.write(context, folder, made, part ? Set.of() : kinds, format), context);
        } catch (IOException e) {
            throw new UncheckedIOException(folder + " cannot be written: " + e.getMessage(), e);
        }
        return context.plan().complete() ? Exit.DONE : Exit.INCOMPLETE;
    }

    /** Home cards are many pages that nobody hangs up: they are made when they are asked for. */
    private Set<SheetKind> kinds() {
        if (!sheets.isEmpty()) {
            return EnumSet.copyOf(sheets);
        }
        if (dish != null) {
            return EnumSet.of(SheetKind.HOME_CARD);
        }
        return vendor != null ? EnumSet.of(SheetKind.ORDER) : EnumSet.complementOf(EnumSet.of(SheetKind.HOME_CARD));
    }

    private PaperContext context(Book book) {
        PlanStore plans = at.plans();
        int version = Kept.version(plans, ref);
        WeekPlan plan = Kept.plan(plans, new PlanRef(ref.week(), OptionalInt.of(version)));
        boolean posted = plans.postedVersion(ref.week()).stream().anyMatch(v -> v == version);
        LocalDateTime now = LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone());
        Optional<LocalDate> only = Optional.ofNullable(day).map(d -> d.in(plan.week()));
        OrderLife.Doubts life = new WeekNotes(at.folder()).orders(ref.week()).doubts(plan, posted, now);
        return new PaperContext(book, plan, version, posted, now,
                new PaperContext.Filters(only, Optional.ofNullable(vendor)), keys(life.notSent()),
                new PaperContext.Doubtful(keys(life.notRecorded()), keys(life.changed())));
    }

    private static Set<OrderKey> keys(List<WeekPlan.Order> orders) {
        return orders.stream().map(OrderKey::of).collect(Collectors.toSet());
    }

    private Path folder(PaperContext context) {
        Path folder = out != null ? out : at.folder().resolve("paper").resolve(context.plan().week().toString());
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new WrongUse("--out " + folder + " is a file -> name a folder; it is made when it is not there");
        }
        return folder;
    }

    private void tell(Path folder, Packet.Written written, PaperContext context) {
        PrintWriter to = spec.commandLine().getOut();
        Page page = setting.page();
        for (Packet.Again again : written.changed()) {
            page.say(again.title() + " (" + again.id() + ") differs from the one printed from " + again.from()
                    + ". Take the old page down:");
            again.lines().stream().limit(SHOWN_LINES).forEach(l -> page.item("  " + l.charAt(0) + " ", l.substring(2)));
            if (again.lines().size() > SHOWN_LINES) {
                page.item("    ", "and " + (again.lines().size() - SHOWN_LINES) + " lines more.");
            }
        }
        if (!written.gone().isEmpty()) {
            page.say("Printed before and no longer in the plan, take them down: " + String.join(", ", written.gone()) + ".");
        }
        if (!context.notSent().isEmpty()) {
            page.say(many(context.notSent()) + " past the cut-off and not sent: the pages that rest on what they bring say so first.");
        }
        if (!context.doubtful().notRecorded().isEmpty()) {
            page.say(many(context.doubtful().notRecorded()) + " past the cut-off and not recorded as sent: the kitchen's pages say so"
                    + " first. When it was sent: croftboard sent " + context.plan().week() + " VENDOR.");
        }
        if (!context.doubtful().changed().isEmpty()) {
            page.say(many(context.doubtful().changed()) + " changed since it was sent: send it again, then croftboard sent "
                    + context.plan().week() + " VENDOR.");
        }
        if (!context.plan().fingerprint().equals(context.book().fingerprint())) {
            page.say("The book has changed since this plan was made: names, recipes and prices may differ from it.");
        }
        if (written.files().isEmpty()) {
            page.say("Nothing to print: the plan has no such sheet.");
        }
        files(folder, written, page);
        to.print(page);
        to.flush();
    }

    private static String many(Set<OrderKey> orders) {
        return orders.size() + (orders.size() == 1 ? " order is" : " orders are");
    }

    /** The files at the top one by one, those in folders by their number. */
    private static void files(Path folder, Packet.Written written, Page page) {
        written.files().stream().filter(f -> f.getParent().equals(folder)).forEach(f -> page.item("wrote ", f.toString()));
        written.files().stream().map(Path::getParent).filter(p -> !p.equals(folder)).distinct().forEach(p ->
                page.item("wrote ", p + java.io.File.separator + " ("
                        + written.files().stream().filter(f -> f.getParent().equals(p)).count() + " files)"));
        if (written.pages() > 0) {
            page.say(written.pages() + (written.pages() == 1 ? " page." : " pages."));
        }
    }
}
