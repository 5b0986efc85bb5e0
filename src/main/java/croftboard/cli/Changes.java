package croftboard.cli;

import croftboard.book.Book;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.Change;
import croftboard.plan.change.ChangeGrammar;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The facts that a plan is changed for: those it was changed for before, and those said now.
 *
 * @param said now, a sentence each
 * @param all earlier ones first; one that contradicts what is said now is left out
 */
record Changes(List<String> said, List<Change> all) {
    private static final long MOST_BYTES = 100_000;
    private static final int MOST = 200;

    /** @throws WrongUse with every sentence that cannot be so */
    static Changes of(Book book, WeekPlan plan, List<String> sentences, Path file, LocalDateTime now) {
        List<String> words = new ArrayList<>(sentences);
        if (file != null) {
            words.addAll(lines(file));
        }
        if (words.size() > MOST) {
            throw new WrongUse(words.size() + " changes at once -> at most " + MOST);
        }
        ChangeGrammar grammar = new ChangeGrammar(book);
        ChangeGrammar.Read read = grammar.read(words);
        refuse(read.faults());
        if (read.changes().isEmpty()) {
            throw new WrongUse("nothing has changed -> say what, such as --change \"closed thu\"; all sentences: "
                    + "croftboard short --help");
        }
        List<Change> fresh = read.changes().stream().map(c -> dated(c, now)).toList();
        List<Change> earlier = grammar.read(plan.inputs().revision().map(WeekPlan.Revision::changes).orElse(List.of()))
                .changes().stream().filter(c -> fresh.stream().allMatch(f -> grammar.agree(c, f))).toList();
        return new Changes(fresh.stream().map(Change::sentence).toList(), Stream.concat(earlier.stream(), fresh.stream())
                .toList());
    }

    static void refuse(List<String> faults) {
        if (!faults.isEmpty()) {
            throw new WrongUse(faults);
        }
    }

    /** What is lost today was not lost on the day on which the plan is changed again. */
    private static Change dated(Change change, LocalDateTime now) {
        return change instanceof Change.Lost lost && lost.day().isEmpty()
                ? new Change.Lost(lost.item(), lost.amount(), Optional.of(now.getDayOfWeek())) : change;
    }

    private static List<String> lines(Path file) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                throw new WrongUse("--changes " + file + ": no text file of at most 100 kB -> one sentence a line");
            }
            return Files.readAllLines(file);
        } catch (CharacterCodingException e) {
            throw new WrongUse("--changes " + file + " is no UTF-8 text -> one sentence a line");
        } catch (IOException e) {
            throw new WrongUse("--changes " + file + " cannot be read -> " + e.getMessage());
        }
    }

    /** With more facts, which nobody said now. */
    Changes and(List<Change> more) {
        return new Changes(said, Stream.concat(all.stream(), more.stream()).toList());
    }

    List<String> sentences() {
        return all.stream().map(Change::sentence).collect(Collectors.toList());
    }
}
