package croftboard.paper.report;

import croftboard.measure.Ratio;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The share by month as columns: black what is local, an outline up to what it would be at most, a thick line at the target.
 * Black on white only.
 */
final class MonthBars {
    private static final int WIDE = 640;
    private static final int HIGH = 160;
    private static final int LEFT = 44;
    private static final int TOP = 24;
    private static final int FLOOR = 122;
    private final StringBuilder svg = new StringBuilder();
    private final int scale;

    private MonthBars(int scale) {
        this.scale = scale;
    }

    static String svg(List<ReportFacts.Month> months) {
        double most = months.stream().flatMap(m -> java.util.stream.Stream.of(m.money().high(), m.target())).flatMap(Optional::stream)
                .mapToDouble(Ratio::toDouble).max().orElse(1);
        int scale = Math.min(100, Math.max(20, (int) Math.ceil(most * 5 + 0.25) * 20));
        return new MonthBars(scale).draw(months);
    }

    private String draw(List<ReportFacts.Month> months) {
        svg.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%dmm\" height=\"%.1fmm\" "
                + "viewBox=\"0 0 %d %d\" font-family=\"DejaVu Sans, sans-serif\">", 176, 176.0 * HIGH / WIDE, WIDE, HIGH));
        for (int percent = 0; percent <= scale; percent += scale > 40 ? 20 : 10) {
            line(LEFT, y(percent / 100.0), WIDE, y(percent / 100.0), 0.3);
            text(LEFT - 6, y(percent / 100.0) + 4, 12, "end", percent + " %");
        }
        double step = (WIDE - LEFT) / (double) months.size();
        for (int i = 0; i < months.size(); i++) {
            month(months.get(i), LEFT + i * step, step, months.size() > 14, i);
        }
        return svg.append("</svg>").toString();
    }

    private void month(ReportFacts.Month m, double x, double step, boolean many, int index) {
        double wide = Math.min(44, step * 0.62);
        double left = x + (step - wide) / 2;
        String name = m.month().getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        if (!many || index % 3 == 0) {
            text(x + step / 2, FLOOR + 16, 12, "middle", name);
        }
        if (m.month().getMonthValue() == 1 || index == 0) {
            text(x + step / 2, FLOOR + 31, 12, "middle", Integer.toString(m.month().getYear()));
        }
        m.money().share().ifPresent(s -> {
            double share = clip(s);
            double high = clip(m.money().high().orElse(s));
            svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>", left, y(share), wide,
                    FLOOR - y(share)));
            if (high > share) {
                svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"none\" "
                        + "stroke=\"#000\" stroke-width=\"1.2\"/>", left + 0.6, y(high), wide - 1.2, y(share) - y(high)));
            }
            if (!many) {
                figure(x + step / 2, y(Math.max(high, m.target().map(MonthBars::clip).orElse(0.0))) - 5,
                        s.times(100).toDecimal(0).toPlainString());
            }
        });
        m.target().ifPresent(t -> target(x, step, y(clip(t))));
    }

    /** On white, so that no line runs through it. */
    private void figure(double x, double y, String words) {
        svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"22\" height=\"12\" fill=\"#fff\"/>", x - 11, y - 10.5));
        text(x, y, 12, "middle", words);
    }

    /** White around it, so that it shows on black. */
    private void target(double x, double step, double y) {
        svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"7\" fill=\"#fff\"/>", x + 2, y - 3.5,
                step - 4));
        line(x + 2, y, x + step - 2, y, 2.6);
    }

    private static double clip(Ratio share) {
        return Math.max(0, Math.min(1, share.toDouble()));
    }

    private double y(double share) {
        return FLOOR - (FLOOR - TOP) * share * 100 / scale;
    }

    private void line(double x1, double y1, double x2, double y2, double wide) {
        svg.append(String.format(Locale.ROOT, "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#000\" stroke-width=\"%.1f\"/>",
                x1, y1, x2, y2, wide));
    }

    private void text(double x, double y, int size, String anchor, String words) {
        svg.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%d\" text-anchor=\"%s\">%s</text>", x, y, size, anchor,
                words));
    }

    /** What the picture shows, in words. */
    static String alt(List<ReportFacts.Month> months) {
        return "Local share by month: " + String.join(", ", months.stream().map(m -> m.month() + " "
                + m.money().share().map(Percent::of).orElse("no food") + m.target().map(t -> " of " + Percent.of(t)).orElse("")).toList());
    }
}
