package spoonfall.series;

/**
 * How noisy the points are, told by how neighbours differ (von Neumann's mean square successive difference): a pan that cools
 * or stands makes no noise of it, as it does of what a filter expected.
 */
public final class Jitter {
    private static final double FIRST_C = 0.05;
    private static final double LEAST_C = 0.01;
    private static final double LEARNS = 0.025;
    private static final double WILD = 9;

    private double variance = FIRST_C * FIRST_C;
    private double last = Double.NaN;

    /** Takes a point. */
    public void observe(double riseC) {
        double step = Double.isNaN(last) ? 0 : riseC - last;
        double square = Math.min(step * step / 2, WILD * variance);
        variance = Math.max(LEAST_C * LEAST_C, variance + LEARNS * (square - variance));
        last = riseC;
    }

    /** The standard deviation of a point, in °C. */
    public double sigmaC() {
        return Math.sqrt(variance);
    }
}
