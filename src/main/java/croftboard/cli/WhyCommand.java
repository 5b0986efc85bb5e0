package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Nearest;
import croftboard.cli.screen.WhyScreen;
import croftboard.plan.ask.Question;
import croftboard.plan.ask.Why;
import croftboard.plan.ask.WhyDish;
import croftboard.plan.ask.WhyOrder;
import croftboard.plan.ask.WhyWeek;
import croftboard.plan.file.PlanRef;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Why this dish, why this order, what the promises cost. */
@Command(name = "why", sortOptions = false, description = "Why this dish, this order: what it brings, which promise it keeps, "
        + "what the next best would lose. Without one: what the promises of the week cost and who keeps them.",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY, AnswerPrint.WRONG_SAY})
final class WhyCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WEEK[@VERSION]", converter = Typed.Plan.class, description = "such as 2027-W33")
    private PlanRef ref;

    @Parameters(index = "1", arity = "0..1", paramLabel = "DAY/LINE|VENDOR/ITEM",
            description = "a place of the menu such as mon/hot-main-1, or an order such as hollow-brook/carrot")
    private String what;

    @Mixin
    private AskedOf asked;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    WhyCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Question question = asked.question(setting, tools, ref);
        Why why = AskedOf.answered(() -> answer(question));
        AnswerPrint.print(new WhyScreen(question.book(), asked.called(ref), why), asked.format(), setting,
                spec.commandLine().getOut());
        return Exit.DONE;
    }

    private Why answer(Question question) {
        if (what == null) {
            return new WhyWeek(question).of();
        }
        String[] parts = what.split("/", -1);
        if (parts.length != 2 || parts[0].isBlank() || parts[1].isBlank()) {
            throw new WrongUse("'" + what + "' -> DAY/LINE such as mon/hot-main-1, or VENDOR/ITEM such as hollow-brook/carrot");
        }
        Book book = question.book();
        if (question.plan().menu().stream().anyMatch(r -> r.slot().equals(what)) || isDay(parts[0])) {
            return new WhyDish(question).of(what);
        }
        if (!book.vendors().containsKey(parts[0])) {
            throw new WrongUse("no place and no vendor " + parts[0] + new Nearest().of(parts[0], book.vendors().keySet())
                    .map(n -> " -> did you mean " + n + "?").orElse(" -> an id as in farms/, or a place such as mon/hot-main-1"));
        }
        if (!book.ingredients().containsKey(parts[1])) {
            throw new WrongUse("no item " + parts[1] + new Nearest().of(parts[1], book.ingredients().keySet())
                    .map(n -> " -> did you mean " + n + "?").orElse(" -> an id as in kitchen/ingredients/"));
        }
        return new WhyOrder(question).of(parts[0], parts[1]);
    }

    private static boolean isDay(String word) {
        return word.matches("mon|tue|wed|thu|fri|sat|sun");
    }
}
