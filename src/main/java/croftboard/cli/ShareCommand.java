package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.LocalRules.Definition;
import croftboard.cli.screen.LedgerShareScreen;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.ShareGroups;
import croftboard.cli.screen.ShareTrail;
import croftboard.cli.screen.SharesShown;
import croftboard.ledger.Ledger;
import croftboard.ledger.file.PublishedDefinitions;
import croftboard.ledger.share.Counted;
import croftboard.ledger.share.Definitions;
import croftboard.ledger.share.DishSpread;
import croftboard.ledger.share.Money;
import croftboard.ledger.share.Period;
import croftboard.ledger.share.Share;
import croftboard.ledger.share.Target;
import croftboard.ledger.store.LedgerStore;
import croftboard.measure.Ratio;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which share of the money paid for food was paid for local food, by which definition, with every line behind it. */
@Command(name = "share", sortOptions = false, description = "The local share of what was paid for food, from receipts.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, there is no ledger, or the book has faults"})
final class ShareCommand implements Callable<Integer> {
    @Mixin
    private Span span;

    @Option(names = "--definition", paramLabel = "NAME",
            description = "what local means: one of the book's or a published one, such as within-100 (default: the one in force)")
    private String definition;

    @Option(names = "--by", paramLabel = "vendor|crop|dish|month", converter = Typed.By.class,
            description = "divide the money by vendor, crop, dish or month")
    private ShareBy by;

    @Option(names = "--trail", description = "list every receipt line behind the number")
    private boolean trail;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text); csv is one table: the trail, the division or the definitions")
    private Format format;

    @Mixin
    private LedgerAt ledgerAt;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ShareCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        LocalDate today = LocalDate.ofInstant(setting.clock().instant(), book.kitchen().zone());
        Definitions definitions = Definitions.of(book.kitchen().local(), PublishedDefinitions.of(book.kitchen().place().state()));
        Definition asked = asked(definitions);
        LocalDate from = span.from(today);
        PrintWriter out = spec.commandLine().getOut();
        try (LedgerStore ledger = ledgerAt.toRead(at.folder(), setting)) {
            SharesShown shown = shown(book, ledger, definitions, asked, Period.read(ledger, from, span.to(today)));
            out.print(switch (format) {
                case TEXT -> text(shown);
                case CSV -> PlanPrint.csv((trail ? new ShareTrail(shown) : by != null ? new ShareGroups(shown)
                        : new LedgerShareScreen(shown)).rows());
                case JSON -> json(shown);
            });
        }
        out.flush();
        return Exit.DONE;
    }

    private Definition asked(Definitions definitions) {
        if (definition == null) {
            return definitions.first();
        }
        return definitions.named(definition).orElseThrow(() -> new WrongUse("--definition " + definition
                + ": there is no such definition -> " + String.join(", ", definitions.all().stream().map(Definition::id).toList())));
    }

    private SharesShown shown(Book book, Ledger ledger, Definitions definitions, Definition asked, Period period) {
        List<Definition> all = new ArrayList<>(definitions.all());
        all.remove(asked);
        all.add(0, asked);
        List<Share> shares = all.stream().map(d -> Share.of(period, d, book.kitchen().place(), book.vendors())).toList();
        boolean inForce = definitions.inForce().equals(Optional.of(asked.id()));
        Optional<Ratio> target = inForce ? Target.of(book.seasons(), shares.get(0).lines()) : Optional.empty();
        return new SharesShown(book, definitions, shares, target, Optional.ofNullable(by).map(ShareBy::toString),
                by == null ? new TreeMap<>() : groups(book, ledger, shares.get(0)));
    }

    private SortedMap<String, Money> groups(Book book, Ledger ledger, Share share) {
        return switch (by) {
            case VENDOR -> share.by(l -> l.receipt().vendor());
            case CROP -> share.by(l -> l.receipt().item().orElse(""));
            case MONTH -> share.by(Counted::month);
            case DISH -> DishSpread.of(share, DishSpread.sold(ledger, share.from(), share.to()), DishUses.of(book));
        };
    }

    private String text(SharesShown shown) {
        Page page = setting.page();
        new LedgerShareScreen(shown).print(page);
        if (by != null) {
            new ShareGroups(shown).print(page);
        }
        if (trail) {
            new ShareTrail(shown).print(page);
        }
        return page.toString();
    }

    private String json(SharesShown shown) {
        Map<String, Object> all = new LinkedHashMap<>();
        LedgerShareScreen screen = new LedgerShareScreen(shown);
        all.put("from", shown.shares().get(0).from());
        all.put("to", shown.shares().get(0).to());
        all.put("definition", shown.shares().get(0).definition().id());
        all.put("target", shown.target().map(t -> t.toDecimal(6)));
        all.put("definitions", JsonText.objects(screen.rows()));
        all.put("near", JsonText.objects(screen.nearRows()));
        all.put("in_neither_number", JsonText.objects(screen.asideRows()));
        if (by != null) {
            all.put("by_" + by, JsonText.objects(new ShareGroups(shown).rows()));
        }
        if (trail) {
            all.put("trail", JsonText.objects(new ShareTrail(shown).rows()));
        }
        return JsonText.of(all);
    }
}
