package croftboard.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextTableTest {
    private static TextTable table() {
        return new TextTable(TextTable.Column.words("item"), TextTable.Column.figure("money"))
                .row("crushed tomatoes, No. 10 can", "$103.50").row("salt", "$1.00");
    }

    @Test
    void widePage_oneLineARow_figuresToTheRight() {
        assertThat(table().lines(60)).containsExactly(
                "item                            money",
                "----------------------------  -------",
                "crushed tomatoes, No. 10 can  $103.50",
                "salt                            $1.00");
    }

    @Test
    void narrowPage_wordsFold_figuresStayWhole() {
        assertThat(table().lines(24)).containsExactly(
                "item               money",
                "---------------  -------",
                "crushed          $103.50",
                "tomatoes, No.",
                "10 can",
                "salt               $1.00");
    }

    @Test
    void tooNarrowForColumns_everyRowBecomesAList() {
        assertThat(table().lines(16)).containsExactly(
                "* item: crushed", "  tomatoes, No.", "  10 can", "  money: $103.50", "* item: salt", "  money: $1.00");
    }
}
