package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.cli.screen.ScaleScreen;
import croftboard.measure.CookAmounts;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.CheapestPrices;
import croftboard.need.ScaledRecipe;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Scales a recipe with everything that goes into it. */
@Command(name = "scale", sortOptions = false,
        description = "Scale a recipe and all that goes into it: amounts, batches, equipment, cost, allergens.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, or the book has faults"})
final class ScaleCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "RECIPE", description = "a dish or component, by id or name")
    private String recipe;

    /** At most one of the three; none: one standard batch. */
    static final class Size {
        @Option(names = "--portions", paramLabel = "N", description = "so many portions of a dish")
        private Integer portions;

        @Option(names = "--times", paramLabel = "X", converter = Typed.Times.class,
                description = "so many standard batches, such as 2, 1.5 or 1-1/2 (default: 1)")
        private Ratio times;

        @Option(names = "--have", paramLabel = "\"AMOUNT UNIT ITEM\"",
                description = "what uses up an item as purchased, such as \"20 lb zucchini\"")
        private String have;
    }

    @ArgGroup
    private Size size = new Size();

    @Option(names = "--week", paramLabel = "WEEK", converter = Typed.Week.class,
            description = "week of the prices (default: this week)")
    private IsoWeek week;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text",
            converter = Typed.FormatWord.class, description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ScaleCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Book book = at.read(tools.books());
        Recipe found = RecipeWords.recipe(book, recipe);
        Sized sized = sized(book, found);
        IsoWeek of = week != null ? week
                : IsoWeek.of(LocalDate.ofInstant(setting.clock().instant(), book.kitchen().zone()));
        ScaleScreen screen = new ScaleScreen(book, ScaledRecipe.tree(book, found, sized.batches),
                new CheapestPrices(book, of), sized.why);
        PrintWriter out = spec.commandLine().getOut();
        out.print(ScreenPrint.as(format, screen, setting.page()));
        out.flush();
        return Exit.DONE;
    }

    /** @param why a clause that says how the size was found */
    private record Sized(Ratio batches, String why) { }

    private Sized sized(Book book, Recipe found) {
        if (size.portions != null) {
            if (!found.isDish() || size.portions < 1) {
                throw new WrongUse("--portions " + size.portions + " of " + found.id() + " -> " + (found.isDish()
                        ? "1 or more" : "a component has no portions: use --times or --have"));
            }
            return new Sized(ScaledRecipe.batchesForPortions(found, Ratio.of(size.portions)),
                    "for " + size.portions + " portions");
        }
        if (size.have != null) {
            RecipeWords.OnHand have = RecipeWords.onHand(book, found, size.have);
            Ratio batches = ScaledRecipe.batchesFromOnHand(book, found, have.item(), have.grams()).orElseThrow();
            return new Sized(batches, "from " + have.words());
        }
        Ratio times = size.times == null ? Ratio.ONE : size.times;
        return new Sized(times, CookAmounts.times(times) + " times the standard batch");
    }
}
