package spoonfall.estimate;

/** Learns from the innovations how noisy the points are. */
final class NoiseMeter {
    private static final double FIRST_C = 0.1;
    private static final double LEAST_C = 0.015;
    private static final double LEARNS = 0.03;
    private static final double WILD = 6;

    /** Bubbles and burners make neighbouring points alike, so that many tell less than their number says. */
    private static final double ALIKE = 2.8;

    private double variance = FIRST_C * FIRST_C;

    /** Takes note of an innovation in °C, of which the filter itself expected {@code expectedVariance}. */
    void observe(double innovationC, double expectedVariance) {
        double square = Math.min(innovationC * innovationC, WILD * (variance + expectedVariance));
        double seen = Math.max(0.2 * variance, square - expectedVariance);
        variance += LEARNS * (seen - variance);
    }

    /** The variance of a point's noise, in °C², made larger by how alike neighbours are. */
    double variance(double stepC) {
        return ALIKE * Math.max(LEAST_C * LEAST_C, variance) + stepC * stepC / 12;
    }
}
