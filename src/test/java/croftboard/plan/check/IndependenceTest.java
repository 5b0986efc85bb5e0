package croftboard.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.file.SmallKitchen;
import croftboard.plan.Given;
import croftboard.plan.file.RandomPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class IndependenceTest {
    private static final Pattern OWN = Pattern.compile("croftboard\\.(?!plan\\.check)[a-z.]+\\.[A-Z]\\w+");

    /** Of what changed under way it knows the sentences as records, not how a week is changed. */
    @Test
    void checker_knowsTheBookAndThePlansDataOnly() throws IOException {
        TreeSet<String> used = new TreeSet<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/croftboard/plan/check"))) {
            for (Path file : files.toList()) {
                Matcher m = OWN.matcher(Files.readString(file));
                while (m.find()) {
                    used.add(m.group());
                }
            }
        }
        used.removeIf(name -> name.startsWith("croftboard.measure.") || name.startsWith("croftboard.book."));
        assertThat(used).containsExactly("croftboard.need.Account", "croftboard.need.WeekProblem", "croftboard.plan.Given",
                "croftboard.plan.WeekPlan", "croftboard.plan.change.Change");
    }

    /** Of the problem's class only the three words of locality, of the account only its rows. */
    @Test
    void checker_callsNothingThatReckons() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/java/croftboard/plan/check"))) {
            for (Path file : files.toList()) {
                assertThat(Files.readString(file)).doesNotContainPattern("WeekProblem\\.(?!Locality)")
                        .doesNotContain("Account.of(").doesNotContain("book.file");
            }
        }
    }

    @Test
    void nonsense_isFoundAndNeverEndsTheCheck() {
        Book small = SmallKitchen.book();
        for (long seed = 0; seed < 300; seed++) {
            Book book = seed % 2 == 0 ? small : RandomBook.of(seed);
            Verdict verdict = PlanChecker.check(book, RandomPlan.of(seed, RandomBook.WEEK), Given.NOTHING, Optional.empty());
            assertThat(verdict.ok()).isFalse();
            assertThat(verdict.findings()).allSatisfy(f -> assertThat(f).isNotBlank());
        }
    }
}
