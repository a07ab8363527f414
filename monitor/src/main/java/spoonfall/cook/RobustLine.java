package spoonfall.cook;

import java.util.Optional;

/**
 * A straight line through points of which some may be wild: the slope is the median of the slopes of all
 * pairs (Theil 1950, Sen 1968), so that up to 29 % of the points may be anything.
 *
 * @param slope per unit of x
 * @param atEnd value of the line at {@code endX}
 * @param endX where the line ends: the x the fit was asked for
 * @param scatter robust standard deviation of the points about the line (1.4826 times the median
 *     absolute deviation)
 * @param slopeError standard error of the slope, as for least squares with that scatter
 */
record RobustLine(double slope, double atEnd, double endX, double scatter, double slopeError) {
    private static final double MAD_TO_SIGMA = 1.4826;

    /**
     * Fits the points {@code from} to {@code to} (exclusive), which are ordered by x.
     *
     * @param near a line whose slope is likely to be about the same, as that of nearly the same points: it is found sooner then
     * @return empty for fewer than three points
     */
    static Optional<RobustLine> through(
            double[] x, double[] y, int from, int to, double endX, Optional<RobustLine> near) {
        int n = to - from;
        if (n < 3) {
            return Optional.empty();
        }
        double[] slopes = new double[n * (n - 1) / 2];
        int count = 0;
        for (int i = from; i < to; i++) {
            for (int j = i + 1; j < to; j++) {
                if (x[j] > x[i]) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        if (count == 0) {
            return Optional.empty();
        }
        double aboutSlope = near.isPresent() ? near.get().slope() : Double.NaN;
        double aboutError = near.isPresent() ? near.get().slopeError() : Double.NaN;
        double slope = Selection.median(slopes, count, aboutSlope - aboutError, aboutSlope + aboutError);
        double[] residuals = new double[n];
        for (int i = 0; i < n; i++) {
            residuals[i] = y[from + i] - slope * (x[from + i] - endX);
        }
        double atEnd = Selection.median(residuals, n);
        double meanX = 0;
        for (int i = from; i < to; i++) {
            meanX += x[i] / n;
        }
        double spread = 0;
        for (int i = 0; i < n; i++) {
            residuals[i] = Math.abs(residuals[i] - atEnd);
            spread += (x[from + i] - meanX) * (x[from + i] - meanX);
        }
        double scatter = MAD_TO_SIGMA * Selection.median(residuals, n);
        return Optional.of(new RobustLine(slope, atEnd, endX, scatter, scatter / Math.sqrt(spread)));
    }
}
