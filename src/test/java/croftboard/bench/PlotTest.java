package croftboard.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class PlotTest {
    private static String drawn() {
        return new Plot("Value & time", "seconds", "dollars", 60, 12_000, 19_000).draw(List.of(
                new Plot.Line("a < b", List.of(new double[] {0, 16_000}, new double[] {60, 16_000}), false),
                new Plot.Line("c", List.of(new double[] {1, 13_000}, new double[] {60, 16_010}), true)),
                List.of(new double[] {20, 15_000}));
    }

    @Test
    void drawing_isWellFormedAndHoldsEveryLineAndName() throws Exception {
        Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(drawn().getBytes(StandardCharsets.UTF_8)));
        assertThat(svg.getElementsByTagName("circle").getLength()).isEqualTo(1);
        assertThat(svg.getDocumentElement().getTextContent()).contains("a < b 16,000", "c 16,010", "Value & time");
    }

    @Test
    void names_ofLinesThatEndTogether_standApart() {
        String[] y = java.util.regex.Pattern.compile("y=\"([\\d.]+)\" text-anchor=\"start\"[^>]*>(a|c)").matcher(drawn())
                .results().map(m -> m.group(1)).toArray(String[]::new);
        assertThat(y).hasSize(2);
        assertThat(Math.abs(Double.parseDouble(y[0]) - Double.parseDouble(y[1]))).isGreaterThanOrEqualTo(14);
    }
}
