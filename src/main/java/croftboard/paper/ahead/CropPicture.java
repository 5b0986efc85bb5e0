package croftboard.paper.ahead;

import croftboard.measure.IsoWeek;
import croftboard.paper.Called;
import croftboard.plan.ahead.CropUse;
import java.util.List;
import java.util.Locale;

/**
 * Crop use by week as a drawing in black: crops down, weeks across; a full bar for what is wanted, an open bar below it for
 * what growers expect, both in pounds and to the scale of the crop.
 */
final class CropPicture {
    private static final double POUND_MG = 453_592.37;
    private static final int NAME = 150;
    private static final int ROW = 30;
    private static final int HEAD = 24;
    private static final int BAR = 9;
    private static final int SIZE = 11;
    /** For the figures right of the bars. */
    private static final int FIGURES = 46;
    private final StringBuilder svg = new StringBuilder();
    private final List<IsoWeek> weeks;
    private final double column;

    /** @param wide points across */
    private CropPicture(List<IsoWeek> weeks, double wide) {
        this.weeks = weeks;
        this.column = (wide - NAME) / weeks.size();
    }

    /** Rows that a page of so many points holds. */
    static int rows(double high) {
        return (int) ((high - HEAD) / ROW);
    }

    static String svg(Called called, List<IsoWeek> weeks, List<CropUse.Crop> crops, double wide) {
        return new CropPicture(weeks, wide).draw(called, crops, wide);
    }

    private String draw(Called called, List<CropUse.Crop> crops, double wide) {
        int high = HEAD + ROW * crops.size();
        svg.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.1fpt\" height=\"%dpt\""
                + " viewBox=\"0 0 %.1f %d\" font-family=\"DejaVu Sans, sans-serif\">", wide, high, wide, high));
        for (int w = 0; w < weeks.size(); w++) {
            text(NAME + w * column, 15, "start", weeks.get(w).toString());
        }
        line(0, HEAD - 3, wide, 1.2);
        for (int c = 0; c < crops.size(); c++) {
            row(called, crops.get(c), HEAD + ROW * c);
            line(0, HEAD + ROW * (c + 1) - 3, wide, 0.4);
        }
        return svg.append("</svg>").toString();
    }

    private void row(Called called, CropUse.Crop crop, int top) {
        text(0, top + 14, "start", shortened(called.item(crop.item())));
        double most = crop.by().values().stream().mapToDouble(w -> Math.max(w.wanted(), w.expected())).max().orElse(1);
        double room = column - FIGURES - 8;
        for (int w = 0; w < weeks.size(); w++) {
            CropUse.Week week = crop.by().get(weeks.get(w));
            double x = NAME + w * column;
            double wanted = room * week.wanted() / Math.max(1, most);
            double expected = room * week.expected() / Math.max(1, most);
            rect(x, top + 1, wanted, BAR, true);
            rect(x, top + 13.5, expected, BAR, false);
            text(x + room + FIGURES, top + 9.5, "end", pounds(week.wanted()) + (week.wanted() > week.expected() ? " !" : "\u00a0\u00a0"));
            text(x + room + FIGURES, top + 22.5, "end", pounds(week.expected()) + "\u00a0\u00a0");
        }
    }

    private static String shortened(String name) {
        return name.codePointCount(0, name.length()) <= 22 ? name : name.substring(0, name.offsetByCodePoints(0, 21)) + "\u2026";
    }

    static String pounds(long mg) {
        double pounds = mg / POUND_MG;
        return mg > 0 && pounds < 9.95 ? String.format(Locale.ROOT, "%.1f", pounds) : String.format(Locale.ROOT, "%.0f", pounds);
    }

    private void rect(double x, double y, double wide, double high, boolean full) {
        if (wide > 0) {
            svg.append(String.format(Locale.ROOT, "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\"%s/>", x, y, Math.max(0.6, wide), high,
                    full ? "" : " fill=\"none\" stroke=\"#000\" stroke-width=\"0.9\""));
        }
    }

    private void line(double x, double y, double to, double thick) {
        svg.append(String.format(Locale.ROOT, "<line x1=\"%.2f\" y1=\"%.2f\" x2=\"%.2f\" y2=\"%.2f\" stroke=\"#000\" stroke-width=\"%.2f\"/>", x, y, to, y, thick));
    }

    private void text(double x, double y, String anchor, String words) {
        String safe = words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replaceAll("\\p{Cntrl}", " ");
        svg.append(String.format(Locale.ROOT, "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%d\" text-anchor=\"%s\">%s</text>", x, y, SIZE, anchor, safe));
    }
}
