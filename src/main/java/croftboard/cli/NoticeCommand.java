package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.cli.screen.NoticeScreen;
import croftboard.cli.screen.Page;
import croftboard.paper.ahead.AheadContext;
import croftboard.paper.ahead.NoticeLetter;
import croftboard.paper.ahead.NoticeSheet;
import croftboard.paper.ahead.NoticeTable;
import croftboard.paper.file.AheadFiles;
import croftboard.paper.file.PaperFormat;
import croftboard.plan.ahead.Notice;
import croftboard.plan.file.RotationRef;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells growers ahead what a rotation will want of them. */
@Command(name = "notice", sortOptions = false, description = "Tell growers ahead what a rotation will want: sheet, letter, table to fill in.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class NoticeCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "ROTATION[@VERSION]", converter = Typed.RotationName.class,
            description = "by its weeks, such as 2027-W36..2027-W39")
    private RotationRef ref;

    @Option(names = "--vendor", paramLabel = "V", description = "only this vendor, by its id (default: all but distributors)")
    private String vendor;

    @Option(names = "--out", paramLabel = "DIR", description = "folder for the files (default: paper/ROTATION/notice in the book)")
    private Path out;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text, and the files are written; csv and json write none)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    NoticeCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        AheadContext context = new KeptRotation(at, ref).context(book, setting);
        List<Notice> notices = asked(book, context);
        NoticeScreen screen = new NoticeScreen(book, context.name(), notices);
        Page page = setting.page();
        String text = format == Format.TEXT ? written(context, notices, screen, page) : ScreenPrint.as(format, screen, page);
        PrintWriter to = spec.commandLine().getOut();
        to.print(text);
        to.flush();
        return Exit.DONE;
    }

    private List<Notice> asked(Book book, AheadContext context) {
        List<Notice> all = Notice.all(book, context.rotation());
        if (vendor == null) {
            return all.stream().filter(n -> !book.vendors().containsKey(n.vendor())
                    || book.vendor(n.vendor()).kind() != Vendor.Kind.DISTRIBUTOR).toList();
        }
        if (!book.vendors().containsKey(vendor)) {
            throw new WrongUse("--vendor " + vendor + ": no vendor has this id -> " + String.join(", ", book.vendors().keySet()));
        }
        List<Notice> one = all.stream().filter(n -> n.vendor().equals(vendor)).toList();
        if (one.isEmpty()) {
            throw new WrongUse("--vendor " + vendor + ": the rotation " + context.name() + " wants nothing of this vendor -> "
                    + String.join(", ", all.stream().map(Notice::vendor).toList()));
        }
        return one;
    }

    private String written(AheadContext context, List<Notice> notices, NoticeScreen screen, Page page) {
        Path folder = out != null ? out : at.folder().resolve("paper").resolve(context.rotation().span().toString()).resolve("notice");
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new WrongUse("--out " + folder + " is a file -> name a folder; it is made when it is not there");
        }
        screen.print(page);
        page.gap();
        if (notices.isEmpty()) {
            page.say("The rotation wants nothing of any grower: nothing was written.");
            return page.toString();
        }
        if (!context.rotation().fingerprint().equals(context.book().fingerprint())) {
            page.say("The book has changed since this rotation was made: what farms expect may differ from it.");
        }
        try {
            AheadFiles files = new AheadFiles(context.origin());
            for (Notice n : notices) {
                String name = "notice-" + n.vendor();
                files.sheets(name, List.of(NoticeSheet.of(context, n)), PaperFormat.PDF);
                files.text(name + ".txt", NoticeLetter.of(context, n));
                files.table(name, NoticeTable.of(context, n));
                files.workbook(name, Map.of("notice", NoticeTable.of(context, n)));
            }
            files.into(folder);
            page.item("wrote ", folder + java.io.File.separator + " (of each: sheet .pdf, letter .txt, table .csv and .xlsx to be filled in)");
        } catch (IOException e) {
            throw new UncheckedIOException(folder + " cannot be written: " + e.getMessage(), e);
        }
        page.say("When an answer comes: croftboard reply FILE");
        return page.toString();
    }
}
