package croftboard.paper.report;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Promises.Coverage;
import croftboard.book.Recipe;
import croftboard.ledger.Ledger;
import croftboard.ledger.Left;
import croftboard.ledger.Sale;
import croftboard.safety.DishStatement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * On how many days the coverage promises were kept by what really stood in the case: the dishes of the production sheets, on
 * days without a sheet the dishes that sold. By today's recipes, as written; unknown keeps no promise.
 */
final class CoverageKept {
    private final Book book;
    private final Map<String, DishStatement> statements = new HashMap<>();

    private CoverageKept(Book book) {
        this.book = book;
    }

    /** A dish and the course of the line it stood on; empty course: not known. */
    private record Stood(String dish, String course) implements Comparable<Stood> {
        @Override
        public int compareTo(Stood o) {
            int dishes = dish.compareTo(o.dish);
            return dishes != 0 ? dishes : course.compareTo(o.course);
        }
    }

    static List<ReportFacts.Kept> of(Book book, Ledger ledger, LocalDate from, LocalDate to) {
        CoverageKept kept = new CoverageKept(book);
        Map<LocalDate, Set<Stood>> days = new TreeMap<>();
        ledger.entries(Left.class, from, to).forEach(l -> days.computeIfAbsent(l.date(), k -> new TreeSet<>())
                .add(new Stood(l.dish(), kept.course(l.line()))));
        Map<LocalDate, Set<Stood>> sold = new TreeMap<>();
        ledger.entries(Sale.class, from, to).stream().filter(s -> s.dish().isPresent() && !days.containsKey(s.date()))
                .forEach(s -> sold.computeIfAbsent(s.date(), k -> new TreeSet<>()).add(new Stood(s.dish().orElseThrow(), "")));
        days.putAll(sold);
        List<ReportFacts.Kept> all = new ArrayList<>();
        for (Coverage promise : book.kitchen().promises().coverage()) {
            int held = (int) days.values().stream().filter(d -> d.stream().filter(s -> kept.counts(s, promise)).map(Stood::dish)
                    .distinct().count() >= promise.atLeast()).count();
            all.add(new ReportFacts.Kept(promise.say(), held, days.size()));
        }
        return all;
    }

    private String course(String line) {
        return book.kitchen().lines().stream().filter(l -> l.id().equals(line)).map(Kitchen.ServiceLine::course).findFirst().orElse("");
    }

    private boolean counts(Stood stood, Coverage promise) {
        Recipe recipe = book.recipes().get(stood.dish);
        if (recipe == null || recipe.sale().isEmpty()) {
            return false;
        }
        boolean course = promise.course().isEmpty() || promise.course().get().equals(stood.course)
                || stood.course.isEmpty() && recipe.sale().get().fits().contains(promise.course().get());
        return course && statements.computeIfAbsent(stood.dish, d -> DishStatement.of(book, d)).keeps(promise);
    }
}
