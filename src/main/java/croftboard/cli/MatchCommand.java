package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.EntryWords;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.TakenScreen;
import croftboard.ledger.Booked;
import croftboard.ledger.Draft;
import croftboard.ledger.Entry;
import croftboard.ledger.Ledger;
import croftboard.ledger.Matching;
import croftboard.ledger.Meaning;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.StockCount;
import croftboard.ledger.VendorGoods;
import croftboard.ledger.Waste;
import croftboard.ledger.file.CountFile;
import croftboard.ledger.file.Memory;
import croftboard.ledger.file.SalesFile;
import croftboard.ledger.file.WasteFile;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what words on invoices, register lines, logs and counts mean, for what is booked and for the next file. */
@Command(name = "match", sortOptions = false, description = "Without words: list what is booked but not matched, with the nearest names. With words"
        + " and an id: from now on they mean that, and the entries that wait for it are corrected.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, "2:wrong use; nothing was changed"})
final class MatchCommand implements Callable<Integer> {
    private static final LocalDate FIRST = LocalDate.of(1900, 1, 1);
    private static final LocalDate LAST = LocalDate.of(9999, 12, 31);
    @Parameters(arity = "0..2", paramLabel = "WORDS ID", description = "the words as they are listed, or the code alone; an id of the book, not-food"
            + " or not-ours")
    private List<String> said = new ArrayList<>();

    @Mixin
    private TakingIn taking = new TakingIn();
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    MatchCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        if (said.size() == 1) {
            throw new WrongUse("what does it mean? -> croftboard match \"" + said.get(0) + "\" ID, not-food or not-ours");
        }
        Book book = at.read(tools.books());
        List<Entry> open = taking.asking(at.folder(), setting, MatchCommand::open);
        Page page = setting.page();
        if (said.isEmpty()) {
            list(book, open, page);
        } else {
            match(book, open, page);
        }
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }

    private static List<Entry> open(Ledger ledger) {
        List<Entry> all = new ArrayList<>(ledger.entries(Receipt.class, FIRST, LAST));
        all.addAll(ledger.entries(Sale.class, FIRST, LAST));
        all.addAll(ledger.entries(Waste.class, FIRST, LAST));
        all.addAll(ledger.entries(StockCount.class, FIRST, LAST));
        return all.stream().filter(e -> EntryWords.unmatched(e).isPresent()).toList();
    }

    private static String source(Entry e) {
        return e instanceof Receipt r ? r.vendor() : e instanceof Sale ? SalesFile.SOURCE : e instanceof Waste ? WasteFile.SOURCE : CountFile.SOURCE;
    }

    private void list(Book book, List<Entry> open, Page page) {
        if (open.isEmpty()) {
            page.say("Everything that is booked is matched.");
            return;
        }
        Map<String, Map<String, Long>> bySource = new TreeMap<>(open.stream().collect(Collectors.groupingBy(MatchCommand::source,
                Collectors.groupingBy(e -> EntryWords.unmatched(e).orElseThrow(), TreeMap::new, Collectors.counting()))));
        page.heading("Not matched: the money counts; what it is is not known");
        bySource.forEach((source, words) -> {
            page.subheading(source);
            Matching names = names(book, source);
            words.forEach((w, count) -> {
                List<String> near = names.nearest(w).stream().map(WasteCommand::bare).toList();
                page.item("- ", w + (count > 1 ? " (" + count + " lines)" : "") + ": " + (near.isEmpty() ? "nothing like it in the book"
                        : "perhaps " + String.join(", ", near)));
            });
        });
        page.gap();
        page.say("Say what they are: croftboard match \"WORDS\" ID (or not-food, not-ours).");
    }

    private static Matching names(Book book, String source) {
        return book.vendors().containsKey(source) ? new VendorGoods(book, book.vendor(source), Map.of()).matching()
                : source.equals(SalesFile.SOURCE) ? SoldCommand.dishes(book, Memory.read(new byte[0], new byte[0], new ArrayList<>()))
                : WasteCommand.goods(book, Map.of());
    }

    private boolean meant(Entry e) {
        String plain = Matching.plain(said.get(0));
        return EntryWords.unmatched(e).map(Matching::plain).equals(Optional.of(plain))
                || e instanceof Sale s && (Matching.plain(s.code()).equals(plain) || Matching.plain(s.words()).equals(plain));
    }

    private void match(Book book, List<Entry> open, Page page) {
        String means = said.get(1);
        List<Entry> meant = open.stream().filter(this::meant).toList();
        if (meant.isEmpty()) {
            throw new WrongUse("nothing that is not matched says '" + said.get(0) + "' -> croftboard match lists what there is");
        }
        Meaning meaning = new Meaning(book, means);
        String why = "'" + Page.plain(said.get(0)) + "' means " + means;
        List<Entry> now = new ArrayList<>();
        Memory memory = TakingIn.memory(at.folder());
        for (Entry e : meant) {
            meaning.of(e).ifPresent(m -> {
                now.add(m.stamped(Draft.correction(now.size() + 1, e.stamp().id(), why)));
                memory.rememberName(source(e), Page.plain(said.get(0)), means);
            });
        }
        if (now.isEmpty()) {
            List<String> near = names(book, source(meant.get(0))).nearest(means).stream().map(WasteCommand::bare).toList();
            throw new WrongUse("'" + Page.plain(means) + "' is not what such a line can be -> " + (near.isEmpty() ? "" : "perhaps "
                    + String.join(", ", near) + "; ") + (meant.get(0) instanceof Sale ? "a dish that is sold, or not-ours"
                    : meant.get(0) instanceof Receipt ? "an ingredient, or not-food" : "a dish or an ingredient"));
        }
        String ids = now.stream().map(e -> Long.toString(e.stamp().corrects().orElseThrow().entry())).collect(Collectors.joining(","));
        Draft draft = taking.draft(book, setting, "match", why, TakingIn.fingerprint("match", (why + ids).getBytes(StandardCharsets.UTF_8)), now);
        Booked booked = taking.book(at.folder(), setting, draft);
        if (!taking.dryRun()) {
            TakingIn.remember(at.folder(), memory);
        }
        if (booked instanceof Booked.Done done) {
            new TakenScreen(book, done.booking(), done.entries(), taking.dryRun(), List.of(), w -> List.of()).print(page);
        }
    }
}
