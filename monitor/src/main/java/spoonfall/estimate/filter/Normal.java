package spoonfall.estimate.filter;

/** The standard normal distribution. */
public final class Normal {
    private Normal() {}

    /** Its density at {@code x}. */
    static double density(double x) {
        return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }

    /** How much of it lies below {@code x}, to 1e-7 (Abramowitz and Stegun 1964, 26.2.17, from memory). */
    static double below(double x) {
        double k = 1 / (1 + 0.2316419 * Math.abs(x));
        double sum = k * (0.319381530 + k * (-0.356563782 + k * (1.781477937 + k * (-1.821255978 + k * 1.330274429))));
        double beyond = density(x) * sum;
        return x >= 0 ? 1 - beyond : beyond;
    }

    /** Below which value that part of it lies, to a thousandth; {@code part} is between 0.0001 and 0.9999. */
    public static double quantile(double part) {
        double low = -4;
        double high = 4;
        while (high - low > 1e-3) {
            double middle = (low + high) / 2;
            if (below(middle) < part) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
