package croftboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The house: a room knows only rooms below it, and what is foreign comes in by one door each. */
class PackageArrowsTest {
    private static final Set<String> BELOW_SOLVERS = Set.of("measure", "book", "need", "safety", "forecast");
    /** What each room may know. */
    private static final Map<String, Set<String>> MAY_KNOW = Map.ofEntries(
            Map.entry("measure", Set.of()),
            Map.entry("book", Set.of("measure")),
            Map.entry("need", Set.of("measure", "book")),
            Map.entry("safety", Set.of("measure", "book")),
            Map.entry("forecast", Set.of("measure", "book")),
            Map.entry("ledger", Set.of("measure", "book")),
            Map.entry("sourcing", BELOW_SOLVERS),
            Map.entry("menu", BELOW_SOLVERS),
            Map.entry("plan", with(BELOW_SOLVERS, "ledger", "sourcing", "menu")),
            Map.entry("paper", with(BELOW_SOLVERS, "ledger", "sourcing", "menu", "plan")),
            Map.entry("cli", with(BELOW_SOLVERS, "ledger", "sourcing", "menu", "plan", "paper")));
    private static final Pattern OWN = Pattern.compile("\\bcroftboard\\.([a-z]+)\\b");
    private static final Pattern PACKAGE = Pattern.compile("(?m)^package [\\w.]+;");

    private static Set<String> with(Set<String> rooms, String... more) {
        Set<String> all = new HashSet<>(rooms);
        all.addAll(List.of(more));
        return Set.copyOf(all);
    }

    private static String room(Path file) {
        return Sources.MAIN.relativize(file).getName(0).toString();
    }

    private static String code(Path file) {
        return PACKAGE.matcher(Sources.parts(file).code()).replaceFirst("");
    }

    @Test
    void everyRoom_isOneOfTheHouse() {
        for (Path file : Sources.main()) {
            assertThat(MAY_KNOW).as(file.toString()).containsKey(room(file));
        }
    }

    @Test
    void arrows_pointDownOnly() {
        Set<String> upward = new TreeSet<>();
        for (Path file : Sources.main()) {
            Matcher m = OWN.matcher(code(file));
            while (m.find()) {
                String known = m.group(1);
                if (!known.equals(room(file)) && !MAY_KNOW.getOrDefault(room(file), Set.of()).contains(known)) {
                    upward.add(file + " knows " + known);
                }
            }
        }
        assertThat(upward).isEmpty();
    }

    /** A room's records stand without their files: only {@code X.file} knows {@code X}, or a room above both. */
    @Test
    void records_doNotKnowTheirFiles() {
        Set<String> wrong = new TreeSet<>();
        for (Path file : Sources.main()) {
            boolean own = file.getParent().endsWith("file");
            boolean records = !own && (code(file).contains("croftboard." + room(file) + ".file.")
                    || code(file).contains("croftboard." + room(file) + ".store.") && !file.getParent().endsWith("store"));
            if (records) {
                wrong.add(file.toString());
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void solversAndFormats_comeInByOneDoorEach() {
        Set<String> wrong = new TreeSet<>();
        for (Path file : Sources.main()) {
            String code = code(file);
            boolean files = file.getParent().endsWith("file");
            foreign(wrong, file, code, "com.google.ortools", room(file).equals("sourcing"));
            foreign(wrong, file, code, "org.optaplanner", room(file).equals("menu"));
            foreign(wrong, file, code, "com.fasterxml", files);
            foreign(wrong, file, code, "org.snakeyaml", files);
            foreign(wrong, file, code, "picocli", room(file).equals("cli"));
            boolean store = file.getParent().endsWith(Path.of("ledger", "store"));
            foreign(wrong, file, code, "java.sql", store);
            foreign(wrong, file, code, "javax.sql", store);
            foreign(wrong, file, code, "org.sqlite", store);
            foreign(wrong, file, code, "org.postgresql", store);
            foreign(wrong, file, code, "org.dhatim", files);
        }
        assertThat(wrong).isEmpty();
    }

    private static void foreign(Set<String> wrong, Path file, String code, String name, boolean allowed) {
        if (!allowed && Pattern.compile("\\b" + Pattern.quote(name) + "\\.").matcher(code).find()) {
            wrong.add(file + " knows " + name);
        }
    }

    /** A date of today makes a plan that cannot be made again: it enters from the command line only. */
    @Test
    void today_isKnownToTheCommandLineOnly() {
        Pattern now = Pattern.compile("\\b(LocalDate|LocalDateTime|Instant|ZonedDateTime|IsoWeek|Clock)"
                + "\\s*\\.\\s*(now|system\\w+)\\(");
        Set<String> wrong = new TreeSet<>();
        for (Path file : Sources.main()) {
            if (!room(file).equals("cli") && now.matcher(code(file)).find()) {
                wrong.add(file.toString());
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyPackage_saysWhatItIsFor() {
        List<String> silent = new ArrayList<>();
        Sources.main().stream().map(Path::getParent).distinct()
                .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                .forEach(folder -> silent.add(folder.toString()));
        assertThat(silent).isEmpty();
    }
}
