package croftboard.demo;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The demo book as a whole: it reads, it is large enough, its lines are served, its names are its own. */
class DemoBookTest {
    private static final Pattern SCHEMA = Pattern.compile("# yaml-language-server: \\$schema=(\\S+)");
    private final Book book = DemoBook.BOOK;

    @Test
    void reading_findsNoFaults() {
        assertThat(DemoBook.READING.faultsFound()).isEmpty();
    }

    @Test
    void size_isThatOfARealKitchen() {
        assertThat(DemoBook.dishes().count()).isGreaterThanOrEqualTo(110);
        assertThat(DemoBook.components().count()).isGreaterThanOrEqualTo(35);
        assertThat(book.ingredients()).hasSizeGreaterThanOrEqualTo(130);
        assertThat(book.vendors()).hasSize(15);
        assertThat(book.seasons().events()).hasSize(2);
        assertThat(book.lists().keySet()).containsExactlyInAnyOrder(new IsoWeek(2027, 33),
                new IsoWeek(2027, 34),
                new IsoWeek(2027, 41));
    }

    @Test
    void week_hasFortyTwoSlotsAndOneStandingDish() {
        assertThat(book.kitchen().lines().stream().filter(l -> l.standing().isEmpty())
                .mapToInt(this::slots).sum()).isEqualTo(42);
        assertThat(book.kitchen().lines().stream().filter(l -> l.standing().isPresent())).hasSize(1);
    }

    private int slots(Kitchen.ServiceLine line) {
        return (book.kitchen().open().size() + line.runDays() - 1) / line.runDays();
    }

    @Test
    void everyCourseInEveryWeek_hasTwiceAsManyDishesAsSlots() {
        Map<String, Integer> slots = new TreeMap<>();
        book.kitchen().lines().stream().filter(l -> l.standing().isEmpty())
                .forEach(l -> slots.merge(l.course(), slots(l), Integer::sum));
        List<String> thin = new ArrayList<>();
        slots.forEach((course, needed) -> {
            for (int week = 1; week <= 53; week++) {
                int w = week;
                long fitting = DemoBook.dishes().filter(d -> d.sale().orElseThrow().fits().contains(course))
                        .filter(d -> DemoBook.weeksOf(d).contains(w)).count();
                if (fitting < 2L * needed) {
                    thin.add(course + " W" + week + ": " + fitting + " dishes for " + needed + " slots");
                }
            }
        });
        assertThat(thin).isEmpty();
    }

    @Test
    void names_areNeverUsedTwice() {
        assertThat(book.recipes().values()).extracting(r -> r.name().toLowerCase(Locale.ROOT))
                .doesNotHaveDuplicates();
        assertThat(book.ingredients().values()).extracting(i -> i.name().toLowerCase(Locale.ROOT))
                .doesNotHaveDuplicates();
        assertThat(book.vendors().values()).extracting(Vendor::name).doesNotHaveDuplicates();
    }

    /**
     * On a board of one course a guest tells two dishes apart: they share less than three quarters of
     * their words.
     */
    @Test
    void dishesOfOneCourse_areNotNamedNearlyAlike() {
        List<Recipe> all = DemoBook.dishes().toList();
        List<String> alike = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int k = i + 1; k < all.size(); k++) {
                if (all.get(i).sale().orElseThrow().fits().equals(all.get(k).sale().orElseThrow().fits())
                        && sharedWords(all.get(i).name(), all.get(k).name()) >= 0.75) {
                    alike.add(all.get(i).name() + " / " + all.get(k).name());
                }
            }
        }
        assertThat(alike).isEmpty();
    }

    private static double sharedWords(String a, String b) {
        List<String> little = List.of("with", "and", "of", "in", "a", "the", "on", "or", "over");
        List<String> x = Stream.of(a.toLowerCase(Locale.ROOT).split("[^a-z]+"))
                .filter(w -> !little.contains(w)).distinct().toList();
        List<String> y = Stream.of(b.toLowerCase(Locale.ROOT).split("[^a-z]+"))
                .filter(w -> !little.contains(w)).distinct().toList();
        return (double) x.stream().filter(y::contains).count() / Math.min(x.size(), y.size());
    }

    @Test
    void events_fallOnOpenDays() {
        assertThat(book.seasons().events()).extracting(Seasons.Event::date).allMatch(d ->
                book.kitchen().open().contains(d.getDayOfWeek()) && !book.seasons().closures()
                        .containsKey(d));
    }

    @Test
    void everyYamlFile_namesItsSchema_andItIsThere() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (String folder : List.of("kitchen", "recipes", "farms", "seasons")) {
            try (Stream<Path> files = Files.walk(DemoBook.ROOT.resolve(folder))) {
                for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                    Matcher m = SCHEMA.matcher(Files.readAllLines(file).get(0));
                    if (!m.matches() || !Files.exists(file.resolveSibling(m.group(1)).normalize())) {
                        wrong.add(DemoBook.ROOT.relativize(file) + ": " + Files.readAllLines(file).get(0));
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
    }
}
