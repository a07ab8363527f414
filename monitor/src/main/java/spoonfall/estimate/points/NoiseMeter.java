package spoonfall.estimate.points;

import spoonfall.series.Jitter;

/** Learns from the innovations how noisy the points are. */
final class NoiseMeter {
    private static final double FIRST_C = 0.1;
    private static final double LEAST_C = 0.015;
    private static final double LEARNS = 0.025;
    private static final double WILD = 6;

    /** Bubbles and burners make neighbouring points alike, so that many tell less than their number says. */
    private static final double ALIKE = 2.8;

    /**
     * What neighbouring points do not show is no noise: a pan that slowly cools, or whose heat was turned up, is off by more and
     * more. Burners that switch make slow noise; their points differ by a quarter of it.
     */
    private static final double MOST_JITTERS = 4;

    /** The same for a thermometer whose error is its steps. */
    private static final double MOST_STEPS = 0.35;

    private final Jitter jitter = new Jitter();
    private double variance = FIRST_C * FIRST_C;

    /** Takes a point, whatever was expected of it. */
    void pass(double riseC) {
        jitter.observe(riseC);
    }

    /**
     * Takes note of an innovation in °C, of which the filter itself expected {@code expectedVariance}.
     *
     * @param stepC the thermometer's step
     */
    void observe(double innovationC, double expectedVariance, double stepC) {
        double square = Math.min(innovationC * innovationC, WILD * (variance + expectedVariance));
        double seen = Math.max(0.2 * variance, square - expectedVariance);
        double mostC = Math.max(MOST_JITTERS * jitter.sigmaC(), MOST_STEPS * stepC);
        variance = Math.min(mostC * mostC, variance + LEARNS * (seen - variance));
    }

    /** The standard deviation of a point's noise, in °C. */
    double sigmaC() {
        return Math.sqrt(variance);
    }

    /** The variance of a point's noise, in °C², made larger by how alike neighbours are. */
    double variance(double stepC) {
        return ALIKE * Math.max(LEAST_C * LEAST_C, variance) + stepC * stepC / 12;
    }
}
