package croftboard.paper.report;

import croftboard.ledger.share.Miles;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Food money by how far the food has come, as bars beside their figures; black on white. */
final class MilesBars {
    private static final int WIDE = 640;
    private static final int ROW = 17;
    private static final int NAMES = 118;
    private static final int FIGURES = 190;
    private static final int SIZE = 12;

    private MilesBars() { }

    static String svg(Map<Miles, Long> bands) {
        long all = bands.values().stream().mapToLong(c -> c).sum();
        long most = Math.max(1, bands.values().stream().mapToLong(c -> c).max().orElse(1));
        int high = ROW * bands.size() + 4;
        StringBuilder svg = new StringBuilder(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%dmm\" "
                + "height=\"%.1fmm\" viewBox=\"0 0 %d %d\" font-family=\"DejaVu Sans, sans-serif\">", 176, 176.0 * high / WIDE, WIDE, high));
        int y = 0;
        for (Map.Entry<Miles, Long> band : bands.entrySet()) {
            double wide = Math.max(0, band.getValue()) * (WIDE - NAMES - FIGURES) / (double) most;
            svg.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"%d\" font-size=\"%d\" text-anchor=\"end\">%s</text>", NAMES - 8, y + 13, SIZE,
                    band.getKey()));
            svg.append(band.getKey() == Miles.UNKNOWN
                    ? String.format(Locale.ROOT, "<rect x=\"%d\" y=\"%.1f\" width=\"%.1f\" height=\"12\" fill=\"none\" stroke=\"#000\" "
                            + "stroke-width=\"1.2\"/>", NAMES, y + 2.5, Math.max(1.2, wide))
                    : String.format(Locale.ROOT, "<rect x=\"%d\" y=\"%.1f\" width=\"%.1f\" height=\"12\"/>", NAMES, y + 2.5, Math.max(0.8, wide)));
            svg.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"%d\" font-size=\"%d\" text-anchor=\"end\">%s</text>", WIDE - 62, y + 13, SIZE,
                    new Cents(band.getValue())));
            svg.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"%d\" font-size=\"%d\" text-anchor=\"end\">%s</text>", WIDE, y + 13, SIZE,
                    all > 0 ? Percent.of(Ratio.of(band.getValue(), all)) : ""));
            y += ROW;
        }
        return svg.append("</svg>").toString();
    }

    static String alt(Map<Miles, Long> bands) {
        List<String> words = new ArrayList<>();
        bands.forEach((band, cents) -> words.add(band + " " + new Cents(cents)));
        return "Food money by miles: " + String.join(", ", words);
    }
}
