package croftboard.menu;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.book.file.BookReading;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Prints search figures on a week of a book: {@code BookFigures FOLDER WEEK MILLIS LOCAL_WORTH MEMORY...}. */
public final class BookFigures {
    private BookFigures() { }

    public static void main(String[] args) {
        Book book = ((BookReading.Read) BookReader.read(Path.of(args[0]))).book();
        long t0 = System.nanoTime();
        WeekProblem week = ProblemBuilder.build(book, IsoWeek.parse(args[1]).orElseThrow(), Map.of(), Given.NOTHING,
                Optional.empty()).problem();
        System.out.printf("built in %d ms: %d slots, %d candidates, %d offers, %d deliveries%n",
                (System.nanoTime() - t0) / 1000000, week.slots().size(),
                week.slots().stream().mapToInt(s -> s.candidates().size()).sum(), week.offers().size(),
                week.deliveries().size());
        MenuSearch search = new MenuSearch(week, Double.parseDouble(args[3]));
        for (int a = 4; a < args.length; a++) {
            long t1 = System.nanoTime();
            MenuSearch.Found greedy = search.greedy();
            long t2 = System.nanoTime();
            MenuSearch.Found found = search.search(greedy.choice(), 1,
                    new MenuSearch.Effort(0, Long.parseLong(args[2]), Integer.parseInt(args[a])), () -> false);
            System.out.printf("memory %s greedy %.2f (%b) in %d ms -> %.2f (%b), %d tries in %d ms%n", args[a],
                    greedy.worthCents() / 100.0, greedy.keepsMusts(), (t2 - t1) / 1000000, found.worthCents() / 100.0,
                    found.keepsMusts(), found.tries(), (System.nanoTime() - t2) / 1000000);
        }
    }
}
