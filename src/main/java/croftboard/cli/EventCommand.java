package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Fault;
import croftboard.book.Seasons.Event;
import croftboard.book.file.HeadCount;
import croftboard.cli.screen.EventScreen;
import croftboard.cli.screen.Page;
import croftboard.measure.IsoWeek;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists events, shows one, changes its head count in the book. */
@Command(name = "event", sortOptions = false, description = "List events, show one, or change its head count in the book.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, Exit.WRONG_USE_SAY})
final class EventCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "ID", description = "of the event, such as harvest-meal"
            + " (default: list all)")
    private String id;

    @Option(names = "--guarantee", paramLabel = "N", converter = Typed.Heads.class, description = "write this head count into seasons/events.yaml")
    private Integer guarantee;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print the events (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    EventCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if (guarantee != null && id == null) {
            throw new WrongUse("--guarantee " + guarantee + " of which event? -> croftboard event ID --guarantee " + guarantee);
        }
        Book book = at.read(tools.books());
        if (guarantee == null) {
            print(id == null ? EventScreen.all(book) : EventScreen.one(book, event(book)));
            return Exit.DONE;
        }
        Event event = event(book);
        if (event.guarantee() == guarantee) {
            say(setting.page(), event.name() + " is guaranteed for " + guarantee + " already: nothing was written.");
            return Exit.DONE;
        }
        change(event);
        return Exit.DONE;
    }

    private Event event(Book book) {
        return book.seasons().events().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow(() -> new WrongUse(
                "no event '" + id + "' -> " + (book.seasons().events().isEmpty() ? "the book has none: seasons/events.yaml"
                        : "one of " + String.join(", ", book.seasons().events().stream().map(Event::id).toList()))));
    }

    private void print(EventScreen screen) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(ScreenPrint.as(format, screen, setting.page()));
        out.flush();
    }

    private void change(Event event) {
        HeadCount.Outcome outcome = HeadCount.guarantee(at.folder(), event.id(), guarantee);
        if (outcome instanceof HeadCount.Refused refused) {
            throw new WrongUse(refused.faults().stream().map(Fault::toString).toList());
        }
        HeadCount.Edited edited = (HeadCount.Edited) outcome;
        if (!edited.isUnchanged()) {
            throw new WrongUse(edited.file() + " was changed in this moment by somebody else; nothing was written -> try again");
        }
        try {
            WholeFile.replace(edited.file(), edited.after());
        } catch (IOException e) {
            throw new UncheckedIOException(edited.file() + " cannot be written: " + e.getMessage(), e);
        }
        Page page = setting.page();
        EventScreen.changed(page, event, event(edited.now()));
        page.say("Written: " + edited.where() + ", guarantee: " + event.guarantee() + " -> " + guarantee + ".");
        planAgain(page, IsoWeek.of(event.date()));
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
    }

    private void planAgain(Page page, IsoWeek week) {
        PlanStore plans = at.plans();
        OptionalInt current = plans.current(week);
        if (current.isEmpty()) {
            page.say("There is no plan of " + week + " yet: croftboard plan " + week);
            return;
        }
        page.say("The plans of " + week + " still count with the old number"
                + (plans.postedVersion(week).isPresent() ? ", the posted version " + plans.postedVersion(week).getAsInt()
                        + " that people work from among them" : "")
                + ". Plan the week again: croftboard plan " + week + " --from " + week + "@" + current.getAsInt());
    }

    private void say(Page page, String words) {
        page.say(words);
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
    }
}
