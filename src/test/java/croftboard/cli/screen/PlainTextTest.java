package croftboard.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTextTest {
    @Test
    void clean_makesOneLineWithoutControlOrDirectionCharacters() {
        assertThat(PlainText.clean(" a\tb\r\n  c\u202Ed\u001b[0m\u0000 ")).isEqualTo("a b cd [0m");
    }

    @Test
    void clean_keepsLettersOfEveryScript() {
        assertThat(PlainText.clean("Cr\u00e8me, \u05e9\u05dc\u05d5\u05dd, \u6f22")).isEqualTo("Cr\u00e8me, \u05e9\u05dc\u05d5\u05dd, \u6f22");
    }

    @Test
    void width_countsColumnsNotCharacters() {
        assertThat(PlainText.width("abc")).isEqualTo(3);
        assertThat(PlainText.width("\u6f22\u5b57")).isEqualTo(4);
        assertThat(PlainText.width("e\u0301")).isEqualTo(1);
        assertThat(PlainText.width("\ud83e\udd55")).isEqualTo(2);
    }

    @Test
    void cut_endsInAMarkOnlyWhenSomethingIsCut() {
        assertThat(PlainText.cut("carrots", 7)).isEqualTo("carrots");
        assertThat(PlainText.cut("carrots", 6)).isEqualTo("carr..");
        assertThat(PlainText.cut("\u6f22\u5b57\u6f22", 5)).isEqualTo("\u6f22..");
    }

    @Test
    void wrap_breaksAtBlanksAndInsideLongWords() {
        assertThat(PlainText.wrap("one two three", 7)).containsExactly("one two", "three");
        assertThat(PlainText.wrap("abcdefghij k", 4)).containsExactly("abcd", "efgh", "ij k");
        assertThat(PlainText.wrap("", 4)).containsExactly("");
        assertThat(PlainText.wrap("one two three four", 5, 2)).containsExactly("one", "two..");
    }
}
