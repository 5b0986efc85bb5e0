package croftboard.cli;

import croftboard.book.Book;
import croftboard.plan.WeekPlan;
import croftboard.plan.ask.Question;
import croftboard.plan.ask.Unanswerable;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.OptionalInt;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What every question about a plan has: its moment, its format, the book. */
final class AskedOf {
    @Option(names = "--now", paramLabel = "DATE-TIME",
            description = "ask as of that moment, such as 2027-08-17T07:00: what is past by then stays (default: the clock)")
    private String now;

    @Option(names = "--format", paramLabel = "text|csv|json", defaultValue = "text", converter = Typed.FormatWord.class,
            description = "how to print it (default: text)")
    private Format format;

    @Mixin
    private BookAt at;

    Format format() {
        return format;
    }

    BookAt at() {
        return at;
    }

    /** @throws WrongUse when there is no such plan, or it cannot be asked about with today's book */
    Question question(Setting setting, Tools tools, PlanRef ref) {
        QuietLibraries.hush();
        Book book = at.read(tools.books());
        PlanStore plans = at.plans();
        WeekPlan plan = Kept.plan(plans, ref);
        if (!plan.fingerprint().equals(book.fingerprint())) {
            throw new WrongUse("the book has changed since " + called(ref) + " was made, so nothing can be asked of it any more -> "
                    + "croftboard plan " + ref.week() + " --from " + ref);
        }
        return new Question(book, plan, plans.given(ref.week(), book), moment(setting, book));
    }

    LocalDateTime moment(Setting setting, Book book) {
        if (now == null) {
            return LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone());
        }
        try {
            return LocalDateTime.parse(now.replace(' ', 'T'));
        } catch (DateTimeParseException e) {
            throw new WrongUse("--now " + now + " -> a date and a time such as 2027-08-17T07:00");
        }
    }

    /** Exactly: with the version. */
    String called(PlanRef ref) {
        return new PlanRef(ref.week(), OptionalInt.of(Kept.version(at.plans(), ref))).toString();
    }

    /** What makes no sense of this plan is wrong use. */
    static <T> T answered(Supplier<T> answer) {
        try {
            return answer.get();
        } catch (Unanswerable e) {
            throw new WrongUse(e.lines());
        }
    }
}
