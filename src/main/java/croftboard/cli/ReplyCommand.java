package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Fault;
import croftboard.book.Reply;
import croftboard.book.file.ReplyReader;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.ReplyScreen;
import croftboard.paper.ahead.AheadContext;
import croftboard.plan.ChangedFacts;
import croftboard.plan.RotationChange;
import croftboard.plan.ahead.Notice;
import croftboard.plan.ahead.ReplyBook;
import croftboard.plan.file.RotationRef;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a grower's answer to a notice and says what it does to the rotation. */
@Command(name = "reply", sortOptions = false, description = "Read a grower's answer to a notice: what it does to the rotation.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, the answer or the book has faults; nothing was written",
            "3:with this answer something of the rotation cannot be had"})
final class ReplyCommand implements Callable<Integer> {
    private static final long MOST_BYTES = 5_000_000;
    private static final int STEPS = 300;

    @Parameters(index = "0", paramLabel = "FILE", description = "the notice's table, filled in: CSV or XLSX")
    private Path file;

    @Option(names = "--take", description = "write the answer into farms/lists/, one list a week, so that plans rest on it")
    private boolean take;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print the changes (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ReplyCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Reply reply = ReplyReader.read(String.valueOf(file.getFileName()), content()).fold(r -> r, faults -> {
            throw new WrongUse(faults.stream().map(Fault::toString).toList());
        });
        Book book = at.read(tools.books());
        RotationRef ref = RotationRef.parse(reply.rotation()).orElseThrow(() -> new WrongUse(reply.file() + ": '" + reply.rotation()
                + "' is no rotation -> leave the column rotation as it was sent"));
        AheadContext context = new KeptRotation(at, ref).context(book, setting);
        Notice notice = notice(book, context, reply);
        ReplyBook said = new ReplyBook(book, context.rotation(), reply);
        ReplyLists lists = take ? new ReplyLists(at.folder(), book, reply, said.lists()) : null;
        RotationChange change = new ChangedFacts(said.book(), context.rotation(), w -> at.plans().given(w, book), Optional.empty(), STEPS,
                () -> false).change();
        Page page = setting.page();
        StringBuilder text = new StringBuilder(ScreenPrint.as(format, new ReplyScreen(book, reply, notice, change), page));
        if (lists != null) {
            List<Path> written = lists.write();
            if (format == Format.TEXT) {
                Page more = setting.page();
                more.gap();
                written.forEach(f -> more.item("wrote ", f.toString()));
                text.append(more);
            }
        } else if (format == Format.TEXT) {
            Page more = setting.page();
            more.say("Nothing was written. To let plans rest on this answer: croftboard reply " + file + " --take");
            text.append(more);
        }
        PrintWriter to = spec.commandLine().getOut();
        to.print(text);
        to.flush();
        return change.weeks().stream().allMatch(w -> w.is().complete()) ? Exit.DONE : Exit.INCOMPLETE;
    }

    private byte[] content() {
        if (!Files.isRegularFile(file)) {
            throw new WrongUse(file + ": there is no such file -> the table that the grower sent back");
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new WrongUse(file + " is larger than any answer -> the table of the notice, filled in");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    private Notice notice(Book book, AheadContext context, Reply reply) {
        List<Notice> all = Notice.all(book, context.rotation());
        Notice notice = all.stream().filter(n -> n.vendor().equals(reply.vendor()) && book.vendors().containsKey(n.vendor())).findFirst()
                .orElseThrow(() -> new WrongUse(reply.file() + ": the vendor '" + Page.plain(reply.vendor()) + "' was not asked by "
                        + context.name() + " -> " + String.join(", ", all.stream().map(Notice::vendor).toList())));
        List<String> unasked = ReplyScreen.unasked(reply, notice);
        if (!unasked.isEmpty()) {
            throw new WrongUse(unasked);
        }
        return notice;
    }
}
