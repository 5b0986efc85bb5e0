package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.Sources;
import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * 21 CFR 101.91: gluten-free means below 20 ppm by a person's confirmation; a recipe without a test never
 * says it. Halal and kosher rest on supervision (21 CFR 101.29, state rules). No code may offer to derive any
 * of them.
 */
class NeverDerivedOutsideTest {
    private static final Pattern CLAIM = Pattern.compile("(?i)gluten_?free|free_?of_?gluten|no_?gluten|without_?gluten"
            + "|halal|kosher|dairy_?free|nut_?free|allergen_?free");

    private static Class<?> loaded(Path file) throws ClassNotFoundException {
        String name = Path.of("src", "main", "java").relativize(file).toString().replace(".java", "");
        return Class.forName(name.replace(java.io.File.separatorChar, '.'), false, Sources.class.getClassLoader());
    }

    private static void claims(Class<?> type, Set<String> found) {
        note(type.getSimpleName(), type, found);
        for (Method method : type.getDeclaredMethods()) {
            note(method.getName(), type, found);
        }
        for (java.lang.reflect.Field field : type.getDeclaredFields()) {
            note(field.getName(), type, found);
        }
        for (Class<?> inner : type.getDeclaredClasses()) {
            claims(inner, found);
        }
    }

    private static void note(String name, Class<?> type, Set<String> found) {
        if (CLAIM.matcher(name).find()) {
            found.add(type.getName() + " " + name);
        }
    }

    @Test
    void noTypeMethodFieldOrEnumWord_offersTheClaim() throws ClassNotFoundException {
        Set<String> found = new TreeSet<>();
        int types = 0;
        for (Path file : Sources.main()) {
            if (!file.endsWith("package-info.java")) {
                claims(loaded(file), found);
                types++;
            }
        }
        assertThat(types).isGreaterThan(40);
        assertThat(found).isEmpty();
        assertThat("isGlutenFree").containsPattern(CLAIM);
        assertThat("GLUTEN_FREE").containsPattern(CLAIM);
    }
}
