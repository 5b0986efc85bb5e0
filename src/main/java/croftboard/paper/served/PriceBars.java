package croftboard.paper.served;

import java.util.Locale;

/** Twelve digits as bars with their digits below, drawn in modules of 0.33 mm with free edges left and right. */
public final class PriceBars {
    private static final String[] LEFT = {"0001101", "0011001", "0010011", "0111101", "0100011", "0110001", "0101111",
        "0111011", "0110111", "0001011"};
    private static final String EDGE = "101";
    private static final String MIDDLE = "01010";
    private static final int QUIET = 9;
    private static final int MODULES = 95;
    private static final double MODULE_MM = 0.33;
    private static final int BAR_HEIGHT = 24;
    private static final int GUARD = 3;
    private static final int HEIGHT = 36;
    private static final int DIGITS_AT = 34;

    private PriceBars() { }

    /** One character a module: 1 is a bar. */
    static String modules(String digits) {
        StringBuilder modules = new StringBuilder(EDGE);
        for (int i = 0; i < 6; i++) {
            modules.append(LEFT[digits.charAt(i) - '0']);
        }
        modules.append(MIDDLE);
        for (int i = 6; i < 12; i++) {
            for (char c : LEFT[digits.charAt(i) - '0'].toCharArray()) {
                modules.append(c == '0' ? '1' : '0');
            }
        }
        return modules.append(EDGE).toString();
    }

    public static String svg(PriceNumber number) {
        int wide = MODULES + 2 * QUIET;
        StringBuilder svg = new StringBuilder(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" "
                + "width=\"%.2fmm\" height=\"%.2fmm\" viewBox=\"0 0 %d %d\">", wide * MODULE_MM, HEIGHT * MODULE_MM, wide,
                HEIGHT));
        String modules = modules(number.digits());
        for (int from = 0; from < modules.length();) {
            int to = from;
            while (to < modules.length() && modules.charAt(to) == modules.charAt(from)) {
                to++;
            }
            if (modules.charAt(from) == '1') {
                boolean guard = from < 10 || from >= MODULES - 10 || from >= 45 && from < 50;
                svg.append(String.format(Locale.ROOT, "<rect x=\"%d\" y=\"0\" width=\"%d\" height=\"%d\"/>", QUIET + from,
                        to - from, BAR_HEIGHT + (guard ? GUARD : 0)));
            }
            from = to;
        }
        String d = number.digits();
        text(svg, 4, d.substring(0, 1));
        text(svg, QUIET + 28, d.substring(1, 6));
        text(svg, QUIET + 67, d.substring(6, 11));
        text(svg, QUIET + MODULES + 5, d.substring(11));
        return svg.append("</svg>").toString();
    }

    private static void text(StringBuilder svg, int x, String digits) {
        svg.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"%d\" font-size=\"9\" text-anchor=\"middle\">%s</text>", x,
                DIGITS_AT, digits));
    }
}
