package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.FoodCostScreen;
import croftboard.ledger.share.FoodCost;
import croftboard.ledger.store.LedgerStore;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the food that was sold in a month had cost. */
@Command(name = "food-cost", sortOptions = false, description = "What the food sold in a month had cost, from counts and receipts.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, there is no ledger, or the book has faults"})
final class FoodCostCommand implements Callable<Integer> {
    @Option(names = "--month", paramLabel = "MONTH", converter = Typed.Month.class, description = "such as 2027-08 (default: last month)")
    private YearMonth month;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private LedgerAt ledgerAt;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    FoodCostCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        LocalDate today = LocalDate.ofInstant(setting.clock().instant(), book.kitchen().zone());
        YearMonth asked = month != null ? month : YearMonth.from(today).minusMonths(1);
        PrintWriter out = spec.commandLine().getOut();
        try (LedgerStore ledger = ledgerAt.toRead(at.folder(), setting)) {
            out.print(ScreenPrint.as(format, new FoodCostScreen(FoodCost.of(ledger, asked), book.kitchen().promises().foodCost()),
                    setting.page()));
        }
        out.flush();
        return Exit.DONE;
    }
}
