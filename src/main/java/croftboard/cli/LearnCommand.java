package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Fault;
import croftboard.book.Learned;
import croftboard.book.file.BookReading;
import croftboard.book.file.BookWith;
import croftboard.book.file.LearnedText;
import croftboard.cli.screen.LearnScreen;
import croftboard.cli.screen.Page;
import croftboard.forecast.Figures;
import croftboard.forecast.Learner;
import croftboard.forecast.Learning;
import croftboard.forecast.Prior;
import croftboard.ledger.store.LedgerStore;
import croftboard.measure.IsoWeek;
import croftboard.plan.file.WholeFile;
import croftboard.plan.look.SoldDays;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Learns demand from the ledger and writes it into the book. */
@Command(name = "learn", sortOptions = false, description = "Learn from what sold, was left and ran out how much to make, and say what changed.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class LearnCommand implements Callable<Integer> {
    /** Copies of every version, beside plans/. */
    private static final String COPIES = "learned";

    @Parameters(index = "0", paramLabel = "WEEK|all", description = "learn from everything up to the end of that week, such as 2027-W32,"
            + " or from all that is booked")
    private String until;

    @Option(names = "--dry-run", description = "say what would change, write nothing")
    private boolean dryRun;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Mixin
    private LedgerAt ledgerAt;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    LearnCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Optional<IsoWeek> asked = week();
        Book book = at.read(tools.books());
        Path folder = at.folder();
        try (LedgerStore ledger = ledgerAt.toRead(folder, setting)) {
            IsoWeek last = asked.isPresent() ? asked.get() : Seen.lastOrNone(ledger);
            SoldDays days = Seen.until(ledger, book, at.plans(), last);
            Learning learning = new Learner(Prior.of(book), days.curve()).learn(days.all(), last.plusWeeks(1));
            if (learning.seen() == 0) {
                throw new WrongUse("nothing can be learned up to " + last + ": " + (days.all().isEmpty() ? "no sale of a dish of the book and"
                        + " no production sheet is booked" : "none of " + days.all().size() + " days can be used, " + learning.passed().get(0).why())
                        + " -> croftboard sold FILE, croftboard left FILE");
            }
            int version = book.seasons().learned().map(Learned::version).orElse(0);
            Learned same = Figures.of(learning, days.all(), Math.max(1, version));
            boolean isNew = book.seasons().learned().map(l -> !l.equals(same)).orElse(true);
            Learned now = isNew ? Figures.of(learning, days.all(), version + 1) : same;
            if (isNew && !dryRun) {
                write(folder, now);
            }
            print(new LearnScreen(book, now, learning), now, isNew);
            return Exit.DONE;
        }
    }

    private Optional<IsoWeek> week() {
        if (until.equalsIgnoreCase("all")) {
            return Optional.empty();
        }
        return Optional.of(IsoWeek.parse(until).orElseThrow(() -> new WrongUse("'" + until
                + "' is no week -> a year and a week of it, such as 2027-W32, or all")));
    }

    private void write(Path folder, Learned now) {
        String text = LearnedText.of(now);
        if (BookWith.reading(folder, LearnedText.FILE, text) instanceof BookReading.Faulty faulty) {
            throw new WrongUse(faulty.faults().stream().map(Fault::toString).toList());
        }
        Path file = folder.resolve(LearnedText.FILE);
        try {
            WholeFile.makeFolder(folder.resolve(COPIES));
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            WholeFile.replace(folder.resolve(COPIES).resolve(now.version() + ".yaml"), bytes);
            WholeFile.replace(Files.exists(file) ? file.toRealPath() : file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be written: " + e.getMessage(), e);
        }
    }

    private void print(LearnScreen screen, Learned now, boolean isNew) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(switch (format) {
            case CSV -> PlanPrint.csv(screen.rows());
            case JSON -> JsonText.of(JsonText.objects(screen.rows()));
            case TEXT -> {
                Page page = setting.page();
                screen.print(page);
                page.gap();
                page.say(!isNew ? "Nothing new: " + LearnedText.FILE + " says this already (version " + now.version() + ")."
                        : dryRun ? "Nothing was written (--dry-run)."
                        : "Written: " + LearnedText.FILE + ", version " + now.version() + ", with a copy in " + COPIES + "/"
                        + now.version() + ".yaml. Plans made from now on use it: croftboard plan.");
                yield page.toString();
            }
        });
        out.flush();
    }
}
