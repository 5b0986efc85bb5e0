package croftboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What people read speaks of the kitchen: no word of the solvers, and no claim that is never derived. */
class WordsTest {
    private static final Pattern SOLVER = Pattern.compile(
            "\\b(scor(e|es|ed|ing)|constraints?|infeasib\\w+|feasib\\w+|hard|soft|solvers?"
            + "|heuristics?|penalt(y|ies)|penali[sz]e\\w*)\\b");
    /** Words of diets and allergens that the tool never derives. */
    private static final Pattern CLAIM = Pattern.compile("gluten[- ]?free|free of gluten|(no|without) gluten|halal"
            + "|kosher|dairy[- ]free|nut[- ]free|allergen[- ]free|free of allergens|low[- ]lactose|diabetic");

    private static Set<String> found(Pattern word, Set<String> rooms) {
        Set<String> found = new TreeSet<>();
        for (Path file : Sources.main()) {
            if (rooms.isEmpty() || rooms.contains(Sources.MAIN.relativize(file).getName(0).toString())) {
                for (String literal : Sources.parts(file).literals()) {
                    if (word.matcher(literal.toLowerCase(Locale.ROOT)).find()) {
                        found.add(file + ": " + literal);
                    }
                }
            }
        }
        return found;
    }

    @Test
    void noSolverWord_standsInWhatPeopleRead() {
        assertThat(found(SOLVER, Set.of("cli", "paper", "plan", "book", "safety", "measure"))).isEmpty();
    }

    @Test
    void solverWords_areRecognised() {
        assertThat("the score is infeasible").containsPattern(SOLVER);
        assertThat("a hardened shelf, softly").doesNotContainPattern(SOLVER);
    }

    @Test
    void noClaim_standsInAnyText() {
        assertThat(found(CLAIM, Set.of())).isEmpty();
        assertThat("a gluten-free bun").containsPattern(CLAIM);
    }
}
