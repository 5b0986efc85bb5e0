package croftboard.forecast;

/** Single exponential smoothing: each new figure is worth a fixed weight, all before it the rest. */
final class Smoothing {
    private Smoothing() { }

    /**
     * What is expected before each figure, and after the last.
     *
     * @param weight above 0, at most 1
     * @return one more than there are figures; the first is not a number, as nothing was known
     */
    static double[] expected(double[] figures, double weight) {
        double[] expected = new double[figures.length + 1];
        expected[0] = Double.NaN;
        for (int i = 0; i < figures.length; i++) {
            expected[i + 1] = i == 0 ? figures[0] : weight * figures[i] + (1 - weight) * expected[i];
        }
        return expected;
    }
}
