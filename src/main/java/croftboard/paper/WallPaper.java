package croftboard.paper;

/**
 * Paper of twice the size of the kitchen's, upright: 11 x 17 inches, or A3.
 *
 * @param wide points between the margins. @param high the same, without the foot
 */
public record WallPaper(double wide, double high) {
    private static final double MARGIN = 0.55;
    private static final double FOOT = 0.75;
    private static final int POINTS = 72;

    /** @param paper letter or a4 */
    public static WallPaper of(String paper) {
        boolean a4 = paper.equals("a4");
        double wide = a4 ? 297 / 25.4 : 11;
        double high = a4 ? 420 / 25.4 : 17;
        return new WallPaper((wide - 2 * MARGIN) * POINTS, (high - MARGIN - FOOT) * POINTS);
    }
}
