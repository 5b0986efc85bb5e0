package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Nearest;
import croftboard.cli.screen.WhyNotScreen;
import croftboard.plan.ask.Question;
import croftboard.plan.ask.WhyNot;
import croftboard.plan.ask.WhyNotAsked;
import croftboard.plan.file.PlanRef;
import java.util.Collection;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The week again with something forced. */
@Command(name = "why-not", sortOptions = false, description = "Why not another dish, another vendor, local food: the week again "
        + "with it forced, the rest kept as close as possible, and what had to move.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, AnswerPrint.WRONG_SAY})
final class WhyNotCommand implements Callable<Integer> {
    private static final String FORMS = "DAY/LINE RECIPE, VENDOR, VENDOR/ITEM, or \"local ITEM\"";

    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class, description = "such as 2027-W33")
    private PlanRef ref;

    @Parameters(index = "1", paramLabel = "DAY/LINE|VENDOR|VENDOR/ITEM|\"local ITEM\"",
            description = "a place such as mon/hot-main-1; a vendor; an item of a vendor; \"local carrot\"")
    private String what;

    @Parameters(index = "2", arity = "0..1", paramLabel = "RECIPE", description = "with a place: the dish that could stand there")
    private String dish;

    @Mixin
    private AskedOf asked;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    WhyNotCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Question question = asked.question(setting, tools, ref);
        WhyNotAsked again = new WhyNotAsked(question);
        Book book = question.book();
        String words = what.strip().replaceAll("\\s+", " ");
        if ("local".equals(words) && dish != null) {
            words = "local " + dish;
            dish = null;
        }
        Form form = form(book, words);
        WhyNot answer = AskedOf.answered(() -> form.of(again));
        AnswerPrint.print(new WhyNotScreen(book, asked.called(ref), form.say(), answer), asked.format(), setting,
                spec.commandLine().getOut());
        return Exit.DONE;
    }

    private interface Asking {
        WhyNot of(WhyNotAsked again);
    }

    /** @param say what is asked for, in words */
    private record Form(String say, Asking asking) {
        WhyNot of(WhyNotAsked again) {
            return asking.of(again);
        }
    }

    private Form form(Book book, String words) {
        if (dish != null) {
            if (!book.recipes().containsKey(dish) || !book.recipe(dish).isDish()) {
                throw unknown("dish", dish, book.recipes().values().stream().filter(r -> r.isDish()).map(r -> r.id()).toList(),
                        "recipes/");
            }
            return new Form(book.recipe(dish).name() + " on " + words, a -> a.dish(words, dish));
        }
        if (words.startsWith("local ")) {
            String item = item(book, words.substring("local ".length()));
            return new Form("local " + book.ingredient(item).name(), a -> a.local(item));
        }
        String[] parts = words.split("/", -1);
        if (parts.length == 2 && (parts[0].matches("mon|tue|wed|thu|fri|sat|sun") || parts[1].isBlank())) {
            throw new WrongUse("'" + words + "' alone -> " + FORMS);
        }
        if (parts.length > 2 || !book.vendors().containsKey(parts[0])) {
            throw unknown("vendor", parts[0], book.vendors().keySet(), "farms/");
        }
        String vendor = parts[0];
        if (parts.length == 1) {
            return new Form(book.vendor(vendor).name(), a -> a.vendor(vendor));
        }
        String item = item(book, parts[1]);
        return new Form(book.ingredient(item).name() + " from " + book.vendor(vendor).name(), a -> a.order(vendor, item));
    }

    private static String item(Book book, String id) {
        if (!book.ingredients().containsKey(id)) {
            throw unknown("item", id, book.ingredients().keySet(), "kitchen/ingredients/");
        }
        return id;
    }

    private static WrongUse unknown(String what, String id, Collection<String> ids, String where) {
        return new WrongUse("no " + what + " " + id + " in " + where + new Nearest().of(id, ids)
                .map(n -> " -> did you mean " + n + "?").orElse(" -> an id as in " + where + "; the question is " + FORMS));
    }
}
