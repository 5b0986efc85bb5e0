package croftboard.paper;

import croftboard.book.LabelStock;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * In which size of type a label's words fit it. A label holds headings, texts, notices and pictures; the measures here
 * are those of the style sheet, with a margin, so that what fits here fits on paper.
 */
public final class LabelFit {
    /** Free edge inside a label, micrometres. */
    public static final int EDGE_X = 2_500;
    public static final int EDGE_Y = 1_500;
    /** Sizes of headings of level 1 to 3 beside the text. */
    public static final double[] HEADINGS = {1.3, 1.1, 1.0};
    public static final double LINE = 1.15;
    public static final double AFTER = 0.15;
    private static final double MARGIN = 0.97;
    private static final double POINTS_A_MICROMETRE = 72.0 / 25_400;
    private static final double BOX = 0.4;
    private static final Pattern HEIGHT = Pattern.compile("<svg[^>]*\\sheight=\"([0-9.]+)(mm|in|pt)\"");

    private LabelFit() { }

    /** The largest size of type, in points from {@code least} to {@code most}, in which all of it fits. Empty: none. */
    public static OptionalInt type(LabelStock stock, List<Block> blocks, int least, int most) {
        double width = (stock.width() - 2 * EDGE_X) * POINTS_A_MICROMETRE * MARGIN;
        double height = (stock.height() - 2 * EDGE_Y) * POINTS_A_MICROMETRE * MARGIN;
        for (int type = most; type >= least; type--) {
            double needed = 0;
            for (Block block : blocks) {
                needed += height(block, width, type);
            }
            if (needed <= height) {
                return OptionalInt.of(type);
            }
        }
        return OptionalInt.empty();
    }

    private static double height(Block block, double width, int type) {
        if (block instanceof Block.Heading h) {
            double size = type * HEADINGS[h.level() - 1];
            return lines(h.text(), Typeface.bold(), width / size) * size * LINE + type * AFTER;
        }
        if (block instanceof Block.Text t) {
            return lines(t.text(), Typeface.plain(), width / type) * type * LINE + type * AFTER;
        }
        if (block instanceof Block.Notice n) {
            return lines(n.text(), Typeface.bold(), width / type - 2 * BOX) * type * LINE + type * (AFTER + 2 * BOX);
        }
        if (block instanceof Block.Picture p) {
            return picture(p.svg()) + type * AFTER;
        }
        throw new IllegalArgumentException("a label holds no " + block.getClass().getSimpleName());
    }

    private static double picture(String svg) {
        Matcher m = HEIGHT.matcher(svg);
        if (!m.find()) {
            throw new IllegalArgumentException("a picture on a label needs its height in mm, in or pt");
        }
        double number = Double.parseDouble(m.group(1));
        return switch (m.group(2)) {
            case "mm" -> number * 72 / 25.4;
            case "in" -> number * 72;
            default -> number;
        };
    }

    /** Lines that a text takes. @param ems width of a line */
    static int lines(String text, Typeface face, double ems) {
        int lines = 0;
        for (String line : text.split("\n", -1)) {
            double used = -1;
            lines++;
            for (String word : line.split(" ")) {
                double w = face.width(word);
                double with = used < 0 ? w : used + face.width(" ") + w;
                if (used >= 0 && with > ems) {
                    lines++;
                    with = w;
                }
                int broken = (int) Math.floor(with / ems);
                lines += broken;
                used = with - broken * ems;
            }
        }
        return lines;
    }
}
