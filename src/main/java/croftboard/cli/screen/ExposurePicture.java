package croftboard.cli.screen;

import croftboard.measure.Cents;
import croftboard.plan.ask.Exposure;
import java.util.Locale;

/** The margins of all runs as a picture: bars by how many runs, the plan as a dashed line. Black on white, no colour needed. */
public final class ExposurePicture {
    private static final int WIDTH = 860;
    private static final int HEIGHT = 440;
    private static final int LEFT = 60;
    private static final int RIGHT = 30;
    private static final int TOP = 84;
    private static final int BOTTOM = 70;
    private static final int BARS = 30;
    /** So many of a hundred runs that lie lowest share the first bar, so that the others can be told apart. */
    private static final int REST_OF_HUNDRED = 2;
    private final Exposure e;
    private final long least;
    private final long most;
    private final long worst;

    public ExposurePicture(Exposure exposure) {
        this.e = exposure;
        long[] margins = e.runs().stream().mapToLong(Exposure.Outcome::margin).sorted().toArray();
        long lo = Math.min(e.planned().margin(), margins[margins.length * REST_OF_HUNDRED / 100]);
        long hi = Math.max(e.planned().margin(), margins[margins.length - 1]);
        this.worst = margins[0];
        this.least = Math.floorDiv(lo, 100) * 100;
        this.most = Math.max(least + BARS * 100L, (Math.floorDiv(hi, 100) + 1) * 100);
    }

    public String svg() {
        StringBuilder s = new StringBuilder();
        s.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ").append(WIDTH).append(' ').append(HEIGHT)
                .append("\" font-family=\"sans-serif\" font-size=\"13\" fill=\"black\">\n")
                .append("<rect width=\"").append(WIDTH).append("\" height=\"").append(HEIGHT).append("\" fill=\"white\"/>\n");
        text(s, LEFT, 24, "start", "Margin of " + ExposureScreen.weeks(e) + " in " + e.runs().size()
                + " runs with random yields, seed " + e.seed());
        bars(s);
        axis(s);
        mark(s, e.planned().margin(), "6 4", "planned " + new Cents(e.planned().margin()), 44);
        Exposure.Spread m = e.margins();
        mark(s, m.low(), "2 3", "5 of 100 below " + new Cents(m.low()), 58);
        return s.append("</svg>\n").toString();
    }

    private double x(long cents) {
        return LEFT + (WIDTH - LEFT - RIGHT) * (cents - least) / (double) (most - least);
    }

    private void bars(StringBuilder s) {
        int[] count = new int[BARS];
        e.runs().forEach(o -> count[(int) Math.max(0, Math.min(BARS - 1, (o.margin() - least) * BARS / (most - least)))]++);
        int highest = Math.max(1, java.util.Arrays.stream(count).max().orElse(1));
        double room = HEIGHT - TOP - BOTTOM;
        for (int n = 0; n < BARS; n++) {
            if (count[n] > 0) {
                double from = x(least + (most - least) * n / BARS);
                double to = x(least + (most - least) * (n + 1) / BARS);
                double high = Math.max(1, room * count[n] / highest);
                s.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#bbb\" "
                        + "stroke=\"black\"/>\n", from, HEIGHT - BOTTOM - high, to - from, high));
                text(s, (from + to) / 2, HEIGHT - BOTTOM - high - 3, "middle", Integer.toString(count[n]));
            }
        }
    }

    private void axis(StringBuilder s) {
        s.append(String.format(Locale.ROOT, "<path d=\"M%d %d H%d\" stroke=\"black\"/>\n", LEFT, HEIGHT - BOTTOM, WIDTH - RIGHT));
        for (int n = 0; n <= 5; n++) {
            long cents = least + (most - least) * n / 5;
            text(s, x(cents), HEIGHT - BOTTOM + 20, "middle", new Cents(cents / 100 * 100).toString().replaceAll("\\.00$", ""));
        }
        text(s, LEFT, HEIGHT - 22, "start", "Bars: how many runs end with a margin there. Margin is before the price of broken promises."
                + (worst < least ? " The first bar holds all below it too, down to " + new Cents(worst) + "." : ""));
    }

    private void mark(StringBuilder s, long cents, String dashes, String words, int y) {
        double x = x(cents);
        s.append(String.format(Locale.ROOT, "<path d=\"M%.1f %d V%d\" stroke=\"black\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>\n",
                x, y, HEIGHT - BOTTOM, dashes));
        boolean right = x > WIDTH / 2.0;
        text(s, right ? x - 5 : x + 5, y + 4, right ? "end" : "start", words);
    }

    private static void text(StringBuilder s, double x, double y, String anchor, String words) {
        s.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>\n", x, y, anchor,
                words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")));
    }
}
