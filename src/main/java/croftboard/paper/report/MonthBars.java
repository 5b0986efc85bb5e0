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
    private static final double GAP = 3.5;
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
            line(LEFT - 4, y(percent / 100.0), LEFT, y(percent / 100.0), 1);
            text(LEFT - 8, y(percent / 100.0) + 4, 12, "end", percent + " %");
        }
        line(LEFT, FLOOR, WIDE, FLOOR, 1);
        line(LEFT, TOP, LEFT, FLOOR, 1);
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
        double target = m.target().map(t -> y(clip(t))).orElse(Double.NaN);
        m.money().share().ifPresent(s -> {
            double share = y(clip(s));
            double high = y(clip(m.money().high().orElse(s)));
            bar(left, wide, share, FLOOR, target);
            if (high < share) {
                outline(left, wide, high, share, target);
            }
            if (!many) {
                text(x + step / 2, Math.min(high, m.target().isPresent() ? target : high) - 5, 12, "middle",
                        s.times(100).toDecimal(0).toPlainString());
            }
        });
        if (m.target().isPresent()) {
            line(x + 2, target, x + step - 2, target, 2.6);
        }
    }

    /** Black, with free room around the target's line, so that it shows. */
    private void bar(double left, double wide, double top, double bottom, double target) {
        if (target > top - GAP && target < bottom + GAP) {
            black(left, wide, top, target - GAP);
            black(left, wide, target + GAP, bottom);
        } else {
            black(left, wide, top, bottom);
        }
    }

    private void black(double left, double wide, double top, double bottom) {
        if (bottom > top) {
            svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>", left, top, wide,
                    bottom - top));
        }
    }

    private void outline(double left, double wide, double top, double bottom, double target) {
        double right = left + wide - 0.6;
        line(left, top, left + wide, top, 1.2);
        for (double x : new double[] {left + 0.6, right}) {
            boolean cut = target > top && target < bottom;
            line(x, top, x, cut ? Math.max(top, target - GAP) : bottom, 1.2);
            if (cut) {
                line(x, Math.min(bottom, target + GAP), x, bottom, 1.2);
            }
        }
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
