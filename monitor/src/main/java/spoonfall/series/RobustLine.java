package spoonfall.series;

import java.util.Optional;
import java.util.OptionalDouble;

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
public record RobustLine(double slope, double atEnd, double endX, double scatter, double slopeError) {
    private static final double MAD_TO_SIGMA = 1.4826;

    /** Between one line and the next, five seconds later, the slope hardly ever changes by more of its errors. */
    private static final double LIKELY_ERRORS = 1.5;

    /** Nor does what the points stray, by more than to such parts of it. */
    private static final double LIKELY_LESS = 0.75;

    private static final double LIKELY_MORE = 1.33;

    private static final RobustLine UNKNOWN =
            new RobustLine(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    /**
     * Fits the points {@code from} to {@code to} (exclusive), which are ordered by x.
     *
     * @param near a line whose slope is likely to be about the same, as that of nearly the same points: this one is found sooner then
     * @param slopes between the points, as far as they are known from lines before
     * @param number of the first point, as they go by
     * @return empty for fewer than three points
     */
    static Optional<RobustLine> through(
            double[] x,
            double[] y,
            int from,
            int to,
            double endX,
            Optional<RobustLine> near,
            PairSlopes slopes,
            int number) {
        int n = to - from;
        if (n < 3) {
            return Optional.empty();
        }
        RobustLine likely = near.orElse(UNKNOWN);
        double slopeError = LIKELY_ERRORS * likely.slopeError;
        OptionalDouble median =
                slopes.median(x, y, from, to, number, likely.slope - slopeError, likely.slope + slopeError);
        if (median.isEmpty()) {
            return Optional.empty();
        }
        double slope = median.getAsDouble();
        double[] residuals = slopes.room(n);
        for (int i = 0; i < n; i++) {
            residuals[i] = y[from + i] - slope * (x[from + i] - endX);
        }
        double likelyEnd = likely.atEnd + likely.slope * (endX - likely.endX);
        double atEnd = Selection.median(residuals, n, likelyEnd - likely.scatter / 2, likelyEnd + likely.scatter / 2);
        double sumX = 0;
        for (int i = from; i < to; i++) {
            sumX += x[i];
        }
        double meanX = sumX / n;
        double spread = 0;
        for (int i = 0; i < n; i++) {
            residuals[i] = Math.abs(residuals[i] - atEnd);
            spread += (x[from + i] - meanX) * (x[from + i] - meanX);
        }
        double deviation = likely.scatter / MAD_TO_SIGMA;
        double scatter =
                MAD_TO_SIGMA * Selection.median(residuals, n, LIKELY_LESS * deviation, LIKELY_MORE * deviation);
        return Optional.of(new RobustLine(slope, atEnd, endX, scatter, scatter / Math.sqrt(spread)));
    }
}
