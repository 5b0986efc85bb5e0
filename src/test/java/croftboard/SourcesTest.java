package croftboard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SourcesTest {
    @Test
    void literalsAndComments_areToldApart() {
        Sources.Parts parts = Sources.parts("""
                /* "not" one */ int a; // "nor" this
                String s = "one \\" // still one";
                char q = '"';
                String t = \"""
                    block "of" text\""";
                int b;
                """);
        assertThat(parts.literals()).hasSize(2).first().isEqualTo("one \\\" // still one");
        assertThat(parts.literals().get(1)).contains("block \"of\" text");
        assertThat(parts.code()).contains("int a;", "int b;").doesNotContain("nor", "not", "still", "block");
    }
}
