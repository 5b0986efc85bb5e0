package croftboard.forecast;

/** Logarithm of the gamma function for positive numbers, to about twelve digits: Stirling's series behind a recurrence. */
final class LogGamma {
    private static final double FAR = 9;
    private static final double HALF_LOG_TWO_PI = 0.9189385332046727;

    private LogGamma() { }

    static double of(double x) {
        double shift = 0;
        double y = x;
        while (y < FAR) {
            shift -= StrictMath.log(y);
            y++;
        }
        double z = 1 / (y * y);
        double series = (1.0 / 12 - z * (1.0 / 360 - z * (1.0 / 1260 - z * (1.0 / 1680 - z / 1188)))) / y;
        return shift + (y - 0.5) * StrictMath.log(y) - y + HALF_LOG_TWO_PI + series;
    }
}
