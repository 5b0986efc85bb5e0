package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.TakenScreen;
import croftboard.ledger.Booked;
import croftboard.ledger.Entry;
import croftboard.ledger.TypedWords;
import croftboard.ledger.file.Memory;
import croftboard.safety.file.AllergenList;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BiFunction;
import picocli.CommandLine.Model.CommandSpec;

/** Books one typed line. */
final class TypedLine {
    private final Book book;
    private final BookAt at;
    private final Setting setting;
    private final TakingIn taking;

    TypedLine(Book book, BookAt at, Setting setting, TakingIn taking) {
        this.book = book;
        this.at = at;
        this.setting = setting;
        this.taking = taking;
    }

    int book(String line, CommandSpec spec, BiFunction<Book, List<Entry>, List<String>> alarms) {
        Memory memory = TakingIn.memory(at.folder());
        String plain = Page.plain(line);
        var now = taking.now(book, setting);
        TreeSet<String> allergens = new TreeSet<>(AllergenList.droppedNuts());
        AllergenList.all().forEach(a -> allergens.addAll(List.of(a.word(), a.group())));
        book.ingredients().values().forEach(i -> allergens.addAll(i.allergens().contains()));
        Entry entry = taking.asking(at.folder(), setting, ledger -> {
            try {
                return new TypedWords(book, ledger, now.toLocalDate(), allergens, memory::names).entry(plain);
            } catch (TypedWords.Wrong e) {
                throw new WrongUse(e.getMessage() + "; nothing was booked");
            }
        });
        String fingerprint = TakingIn.fingerprint("typed", (now.toLocalDate() + " " + plain).getBytes(StandardCharsets.UTF_8));
        Booked booked = taking.book(at.folder(), setting, taking.draft(book, setting, "receive", croftboard.ledger.Booking.TYPED, fingerprint,
                List.of(entry)));
        if (booked instanceof Booked.Already already) {
            Page page = setting.page();
            page.say("This very line was booked already today, as booking " + already.booking().number()
                    + ": nothing was booked again. Did the same come twice? Then say something more in the line, such as its pack or temperature.");
            spec.commandLine().getOut().print(page);
            spec.commandLine().getOut().flush();
            return Exit.DONE;
        }
        Booked.Done done = (Booked.Done) booked;
        TakenScreen screen = new TakenScreen(book, done.booking(), done.entries(), taking.dryRun(), List.of(), w -> List.of());
        RestingOn.print(screen, alarms.apply(book, done.entries()), taking.format(), setting, spec);
        return Exit.DONE;
    }
}
