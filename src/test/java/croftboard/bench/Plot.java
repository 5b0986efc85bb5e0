package croftboard.bench;

import static croftboard.bench.Figures.number;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A small line chart as SVG, legible in black and white: lines differ by their dashes and carry their names at the right
 * end; the one that matters is thick.
 */
final class Plot {
    private static final int WIDTH = 860;
    private static final int HEIGHT = 460;
    private static final int LEFT = 70;
    private static final int RIGHT = 250;
    private static final int TOP = 40;
    private static final int BOTTOM = 50;
    private static final int LINE = 15;
    private static final String[] DASHES = {"", "8 4", "2 3", "10 3 2 3", "5 2", "1 5", "14 4"};
    private final String title;
    private final String xWord;
    private final String yWord;
    private final double xMost;
    private final double yLeast;
    private final double yMost;

    /** @param points x, y in order. @param thick the line that matters */
    record Line(String name, List<double[]> points, boolean thick) { }

    Plot(String title, String xWord, String yWord, double xMost, double yLeast, double yMost) {
        this.title = title;
        this.xWord = xWord;
        this.yWord = yWord;
        this.xMost = xMost;
        this.yLeast = yLeast;
        this.yMost = yMost;
    }

    /** @param circles points marked by a circle */
    String draw(List<Line> lines, List<double[]> circles) {
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " "
                + HEIGHT + "\" width=\"" + WIDTH + "\" height=\"" + HEIGHT
                + "\" font-family=\"sans-serif\" font-size=\"12\">\n<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n"
                + "<clipPath id=\"area\"><rect x=\"" + LEFT + "\" y=\"" + TOP + "\" width=\"" + (WIDTH - LEFT - RIGHT)
                + "\" height=\"" + (HEIGHT - TOP - BOTTOM) + "\"/></clipPath>\n");
        svg.append(text(LEFT, TOP - 16, "start", title, " font-size=\"15\""));
        grid(svg);
        for (int n = 0; n < lines.size(); n++) {
            svg.append(path(lines.get(n), DASHES[n % DASHES.length]));
        }
        for (double[] c : circles) {
            svg.append(String.format(java.util.Locale.ROOT,
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4.5\" fill=\"white\" stroke=\"black\" stroke-width=\"1.6\"/>%n",
                    x(c[0]), y(c[1])));
        }
        names(svg, lines);
        return svg.append("</svg>\n").toString();
    }

    private double x(double value) {
        return LEFT + value / xMost * (WIDTH - LEFT - RIGHT);
    }

    private double y(double value) {
        return HEIGHT - BOTTOM - (value - yLeast) / (yMost - yLeast) * (HEIGHT - TOP - BOTTOM);
    }

    private void grid(StringBuilder svg) {
        double step = step(yMost - yLeast);
        for (double v = Math.ceil(yLeast / step) * step; v <= yMost; v += step) {
            svg.append(rule(LEFT, y(v), WIDTH - RIGHT, y(v))).append(text(LEFT - 6, y(v) + 4, "end",
                    number("%,.0f", v), ""));
        }
        double across = step(xMost);
        for (double v = 0; v <= xMost; v += across) {
            svg.append(rule(x(v), TOP, x(v), HEIGHT - BOTTOM)).append(text(x(v), HEIGHT - BOTTOM + 18, "middle",
                    number("%.0f", v), ""));
        }
        svg.append(text((LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 12, "middle", xWord, ""))
                .append(text(LEFT - 6, TOP - 2, "end", yWord, ""));
    }

    private static double step(double range) {
        double ten = Math.pow(10, Math.floor(Math.log10(range)));
        double parts = range / ten;
        return parts < 2 ? ten / 5 : parts < 5 ? ten / 2 : ten;
    }

    private static String rule(double x1, double y1, double x2, double y2) {
        return number("<path d=\"M%.1f", x1) + number(" %.1f", y1) + number(" L%.1f", x2) + number(" %.1f", y2)
                + "\" stroke=\"#cccccc\" fill=\"none\"/>\n";
    }

    private static String text(double x, double y, String anchor, String words, String more) {
        return number("<text x=\"%.1f\"", x) + number(" y=\"%.1f\"", y) + " text-anchor=\"" + anchor + "\"" + more + ">"
                + words.replace("&", "&amp;").replace("<", "&lt;") + "</text>\n";
    }

    private String path(Line line, String dash) {
        StringBuilder d = new StringBuilder();
        for (double[] p : line.points) {
            d.append(d.length() == 0 ? "M" : " L").append(number("%.1f", x(p[0]))).append(number(" %.1f", y(p[1])));
        }
        return "<path clip-path=\"url(#area)\" d=\"" + d + "\"" + stroke(line, dash);
    }

    private static String stroke(Line line, String dash) {
        return " fill=\"none\" stroke=\"black\" stroke-width=\"" + (line.thick ? "3" : "1.4") + "\""
                + (line.thick || dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"") + "/>\n";
    }

    /** Names at the right end, pushed apart where ends are close, each with a bit of its line. */
    private void names(StringBuilder svg, List<Line> lines) {
        List<Integer> order = new ArrayList<>();
        for (int n = 0; n < lines.size(); n++) {
            order.add(n);
        }
        order.sort(Comparator.comparingDouble((Integer n) -> -last(lines.get(n))));
        double above = TOP - LINE;
        for (int n : order) {
            Line line = lines.get(n);
            double end = Math.min(HEIGHT - BOTTOM, y(last(line)));
            above = Math.max(above + LINE, end);
            double x = WIDTH - RIGHT;
            svg.append(number("<path d=\"M%.1f", x)).append(number(" %.1f", end)).append(number(" L%.1f", x + 10))
                    .append(number(" %.1f", above)).append(number(" L%.1f", x + 34)).append(number(" %.1f\"", above))
                    .append(stroke(line, DASHES[n % DASHES.length]));
            svg.append(text(x + 38, above + 4, "start", line.name + number(" %,.0f", last(line)),
                    line.thick ? " font-weight=\"bold\"" : ""));
        }
    }

    private static double last(Line line) {
        return line.points.get(line.points.size() - 1)[1];
    }
}
