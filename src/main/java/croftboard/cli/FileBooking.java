package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.TakenScreen;
import croftboard.ledger.Booked;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.Ledger;
import croftboard.ledger.Revision;
import croftboard.ledger.file.Intake;
import croftboard.ledger.file.Memory;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How one file goes into the ledger: once, and what it changes only when that is said. */
final class FileBooking {
    @Option(names = "--correct", description = "days that are booked already: take the lines that differ as corrections (the old ones are kept)")
    private boolean correct;

    @Option(names = "--also", description = "days that are booked already: this file comes on top of them")
    private boolean also;

    @Mixin
    private TakingIn taking = new TakingIn();

    /** What the file is about. @param source under which its columns are remembered */
    record File(Book book, Path folder, Setting setting, String command, Path path, byte[] content, Memory memory, String source) {
        String fingerprint() {
            return TakingIn.fingerprint(command, content);
        }
    }

    /**
     * How entries of one kind are told apart.
     *
     * @param kinds of entries that such a file makes. @param about which booked entries a file may revise. @param key what an entry is about
     * @param keep the newer entry with what only the older one knows
     * @param whole a file holds all of its days: what is missing in the newer one never happened
     */
    record Revising<E extends Entry>(List<Class<? extends E>> kinds, Predicate<E> about, Function<E, Object> key, BinaryOperator<E> keep, boolean whole) {
        List<E> of(List<Entry> entries) {
            List<E> mine = new ArrayList<>();
            entries.forEach(e -> kinds.stream().filter(k -> k.isInstance(e)).forEach(k -> mine.add(k.cast(e))));
            return mine;
        }

        List<E> booked(Ledger ledger, LocalDate first, LocalDate last) {
            List<E> mine = new ArrayList<>();
            kinds.forEach(k -> mine.addAll(ledger.entries(k, first, last)));
            return mine;
        }
    }

    TakingIn taking() {
        return taking;
    }

    /** @throws WrongUse with every fault of the file */
    static Intake.Read good(Path path, Intake intake) {
        if (intake instanceof Intake.Faulty faulty) {
            throw new WrongUse(faulty.faults().stream().map(f -> path.getFileName() + ": " + f).toList());
        }
        return (Intake.Read) intake;
    }

    /** @param nearest candidates for words that are not matched */
    <E extends Entry> int book(File file, Intake.Read read, Revising<E> revising, Function<String, List<String>> nearest, PrintWriter out) {
        if (correct && also) {
            throw new WrongUse("--correct and --also contradict each other -> one of them");
        }
        List<Entry> entries = entries(file, read, revising, out);
        Draft draft = taking.draft(file.book, file.setting, file.command, file.path.getFileName().toString(), file.fingerprint(), entries);
        Booked booked = taking.book(file.folder, file.setting, draft);
        boolean news = !read.columns().isEmpty() && file.memory.rememberColumns(file.source, read.columns());
        if (!taking.dryRun()) {
            TakingIn.remember(file.folder, file.memory);
        }
        if (booked instanceof Booked.Already already) {
            Page page = file.setting.page();
            page.say(file.path.getFileName() + " was booked already, on " + already.booking().at() + " as booking " + already.booking().number()
                    + ": nothing was booked again.");
            out.print(page);
            out.flush();
            return Exit.DONE;
        }
        Booked.Done done = (Booked.Done) booked;
        List<String> said = new ArrayList<>(read.guesses());
        if (news && !taking.dryRun()) {
            said.add("The columns are remembered in " + Memory.COLUMNS + " for the next file of " + file.source + ".");
        }
        TakenScreen screen = new TakenScreen(file.book, done.booking(), done.entries(), taking.dryRun(), said, nearest);
        out.print(ScreenPrint.as(taking.format(), screen, file.setting.page()));
        out.flush();
        return Exit.DONE;
    }

    private <E extends Entry> List<Entry> entries(File file, Intake.Read read, Revising<E> revising, PrintWriter out) {
        List<E> now = revising.of(read.entries());
        if (also || now.isEmpty()) {
            return read.entries();
        }
        Set<LocalDate> days = new HashSet<>(now.stream().map(Entry::date).toList());
        LocalDate first = days.stream().min(Comparator.naturalOrder()).orElseThrow();
        LocalDate last = days.stream().max(Comparator.naturalOrder()).orElseThrow();
        return taking.asking(file.folder, file.setting, ledger -> {
            if (ledger.bookings().stream().anyMatch(b -> b.fingerprint().equals(file.fingerprint()))) {
                return read.entries();
            }
            List<E> booked = revising.booked(ledger, first, last).stream().filter(e -> days.contains(e.date())).filter(revising.about).toList();
            if (booked.isEmpty()) {
                return read.entries();
            }
            if (!correct) {
                throw new WrongUse(file.path.getFileName() + ": " + booked.size() + (booked.size() == 1 ? " line" : " lines") + " of these days "
                        + (booked.size() == 1 ? "is" : "are") + " booked already, from " + booked.get(0).stamp().booking().name()
                        + " -> --correct takes what differs as corrections, --also books this file on top; nothing was booked");
            }
            return revised(file, read, now, booked, revising, out);
        });
    }

    private <E extends Entry> List<Entry> revised(File file, Intake.Read read, List<E> now, List<E> booked, Revising<E> revising, PrintWriter out) {
        Revision<E> revision = Revision.of(booked, now, revising.key, revising.keep, "newer file " + file.path.getFileName());
        if (revising.whole) {
            revision.withdrawMissing("not in the newer file " + file.path.getFileName());
        }
        Page page = file.setting.page();
        page.say("Against what is booked: " + revision.same().size() + " the same, " + revision.changed().size() + " corrected, "
                + revision.added().size() + " new, " + revision.missing().size() + " not in this file"
                + (revision.missing().isEmpty() ? "." : revising.whole ? " and withdrawn." : " and kept."));
        if (taking.format() == Format.TEXT) {
            out.print(page);
        }
        List<Entry> all = new ArrayList<>(revision.entries());
        read.entries().stream().filter(e -> revising.kinds.stream().noneMatch(k -> k.isInstance(e))).forEach(all::add);
        return all;
    }
}
