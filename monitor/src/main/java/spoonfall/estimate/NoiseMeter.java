package spoonfall.estimate;

/** Learns from the innovations how noisy the points are. */
final class NoiseMeter {
    private static final double FIRST_C = 0.1;
    private static final double LEAST_C = 0.015;
    private static final double LEARNS = 0.03;
    private static final double WILD = 6;

    /** Bubbles and burners make neighbouring points alike, so that many tell less than their number says. */
    private static final double ALIKE = 2.8;

    /** Over minutes the innovations of this thermometer may be more alike than that; beyond so much they are a drift. */
    private static final double MOST_ALIKE = 9;

    private static final double ALIKE_LEARNS = 0.02;
    private static final double WILD_SIGMAS = 2.5;
    private static final double MOST_CORRELATED = 0.9;

    private double variance = FIRST_C * FIRST_C;
    private double product = (ALIKE - 1) / (ALIKE + 1);
    private double square = 1;
    private double last;

    /** Takes note of an innovation in °C, of which the filter itself expected {@code expectedVariance}. */
    void observe(double innovationC, double expectedVariance) {
        follow(innovationC / Math.sqrt(variance + expectedVariance));
        double off = Math.min(innovationC * innovationC, WILD * (variance + expectedVariance));
        double seen = Math.max(0.2 * variance, off - expectedVariance);
        variance += LEARNS * (seen - variance);
    }

    /**
     * How many times more alike neighbouring points are than they are usually taken for, by the correlation of each innovation
     * with the next: (1 + r) / (1 - r) points tell as much as one (a first-order autoregression, from any textbook).
     */
    double alikeTimes() {
        double correlated = Math.max(0, Math.min(MOST_CORRELATED, product / square));
        double alike = (1 + correlated) / (1 - correlated);
        return Math.max(ALIKE, Math.min(MOST_ALIKE, alike)) / ALIKE;
    }

    private void follow(double sigmas) {
        double z = Math.max(-WILD_SIGMAS, Math.min(WILD_SIGMAS, sigmas));
        product += ALIKE_LEARNS * (z * last - product);
        square += ALIKE_LEARNS * (z * z - square);
        last = z;
    }

    /** The variance of a point's noise, in °C², made larger by how alike neighbours are. */
    double variance(double stepC) {
        return ALIKE * Math.max(LEAST_C * LEAST_C, variance) + stepC * stepC / 12;
    }
}
