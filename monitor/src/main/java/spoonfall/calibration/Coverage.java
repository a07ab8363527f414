package spoonfall.calibration;

/**
 * Intervals for a doubt that is partly "anything within these limits" (rectangular) and partly noise (normal). Twice
 * the standard uncertainty would be too wide where the limits rule (GUM Supplement 1).
 */
final class Coverage {
    private static final double LEVEL = 0.95;
    private static final int PARTS = 200;
    private static final int STEPS = 60;

    private Coverage() {}

    /** Half the interval that holds the sum in 95 of 100 cases. */
    static double half95(double limit, double sigma) {
        if (sigma == 0) {
            return LEVEL * limit;
        }
        double low = 0;
        double high = limit + 6 * sigma;
        for (int i = 0; i < STEPS; i++) {
            double middle = (low + high) / 2;
            if (within(middle, limit, sigma) < LEVEL) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double within(double half, double limit, double sigma) {
        double sum = 0;
        for (int i = 0; i < PARTS; i++) {
            double off = limit * (2 * (i + 0.5) / PARTS - 1);
            sum += normal(half - off, sigma) - normal(-half - off, sigma);
        }
        return sum / PARTS;
    }

    /** The normal distribution function, by Abramowitz and Stegun 26.2.17 (off by less than 1e-7). */
    private static double normal(double x, double sigma) {
        double z = Math.abs(x / sigma);
        double t = 1 / (1 + 0.2316419 * z);
        double tail = Math.exp(-z * z / 2)
                / Math.sqrt(2 * Math.PI)
                * t
                * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return x > 0 ? 1 - tail : tail;
    }
}
