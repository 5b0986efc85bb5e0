package croftboard.bench;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.book.file.BookReading;
import croftboard.measure.IsoWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Weeks of the repository's own book. */
final class Demo {
    private static final List<String> WEEKS = List.of("2027-W33", "2027-W03", "2027-W16", "2027-W41");

    private Demo() { }

    static String measure(Request request) {
        StringBuilder text = new StringBuilder();
        List<Integer> seeds = request.seedsOr("1-5", "1");
        for (int seconds : request.secondsOr("20", "5")) {
            List<Solved> typical = new ArrayList<>();
            for (WeekProblem week : weeks(request.folder())) {
                typical.add(middle(solved(week, seconds, seeds)));
            }
            text.append(seconds).append(" s a week; of the plans of so many seeds the one of median value: ")
                    .append(seeds.size()).append("; money in dollars.\n\n").append(Quality.table(typical))
                    .append("\n");
        }
        return text.toString();
    }

    static List<WeekProblem> weeks(Path folder) {
        Book book = ((BookReading.Read) BookReader.read(folder)).book();
        return WEEKS.stream().map(w -> ProblemBuilder.build(book, IsoWeek.parse(w).orElseThrow(), Map.of(),
                Given.NOTHING, Optional.empty()).problem()).toList();
    }

    private static List<Solved> solved(WeekProblem week, int seconds, List<Integer> seeds) {
        List<Solved> all = new ArrayList<>();
        seeds.forEach(seed -> all.add(Solved.week(week, seconds, seed)));
        return all;
    }

    private static Solved middle(List<Solved> plans) {
        return plans.stream().sorted(Comparator.comparingLong(Solved::value)).toList().get(plans.size() / 2);
    }
}
