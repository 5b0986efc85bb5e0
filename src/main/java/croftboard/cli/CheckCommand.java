package croftboard.cli;

import croftboard.book.file.BookReading;
import croftboard.book.file.Counts;
import croftboard.cli.screen.Page;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Reads the whole book and says every fault, or what was read. */
@Command(name = "check", sortOptions = false, description = "Read the whole book; print every fault, or what was read.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, or the book has faults"})
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    CheckCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return at.reading(tools.books()).fold(this::read, this::faulty);
    }

    private int read(BookReading.Read read) {
        PrintWriter out = spec.commandLine().getOut();
        Counts c = read.counts();
        Page page = setting.page();
        page.say(read.book().kitchen().name() + ": no faults.");
        page.say("Read " + many(c.files(), "file") + ": " + many(c.ingredients(), "ingredient") + ", "
                + (c.dishes() == 1 ? "1 dish" : c.dishes() + " dishes") + ", " + many(c.components(), "component") + ", "
                + many(c.vendors(), "vendor") + " with " + many(c.offers(), "offer") + ", " + many(c.lines(), "line") + ", "
                + many(c.events(), "event") + ", " + many(c.listedOffers(), "row") + " of availability lists, "
                + many(c.onHand(), "row") + " of counted stock.");
        if (!read.warnings().isEmpty()) {
            page.say(many(read.warnings().size(), "thing") + " to look at:");
        }
        read.warnings().forEach(w -> page.item("- ", w.toString()));
        out.print(page);
        out.flush();
        return Exit.DONE;
    }

    private static String many(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** The faults are what was asked for: they go to stdout, one a line, for an editor to jump to. */
    private int faulty(BookReading.Faulty faulty) {
        PrintWriter out = spec.commandLine().getOut();
        faulty.faults().stream().map(f -> Page.plain(f.toString())).forEach(out::println);
        out.flush();
        PrintWriter err = spec.commandLine().getErr();
        err.println(many(faulty.faults().size(), "fault") + "; nothing was read.");
        err.flush();
        return Exit.WRONG_USE;
    }
}
