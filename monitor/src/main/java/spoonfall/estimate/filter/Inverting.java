package spoonfall.estimate.filter;

import spoonfall.physics.Syrup;

/**
 * How the sugar is inverted by and by, which makes the rise grow at the same solids. The rise grows nearly in
 * proportion: by six tenths of the share that is inverted (Norrish, docs/science.md).
 */
public final class Inverting {
    private static final double FIRST_SHARE = 0.08;
    private static final double RISE_BY_SHARE = 0.6;
    private static final double TYPICAL = 1 + RISE_BY_SHARE * Syrup.TYPICAL_INVERTED;

    private final SyrupCurve curve;
    private double share = FIRST_SHARE;

    Inverting(SyrupCurve curve) {
        this.curve = curve;
    }

    /** Begins afresh, with another pan. */
    void begin() {
        share = FIRST_SHARE;
    }

    /** Has as much of its sugar inverted as another one. */
    void copyFrom(Inverting other) {
        share = other.share;
    }

    /** The scale of a pan whose sugar has just begun to be inverted, against the curve's typical share. */
    public static double firstScale() {
        return (1 + RISE_BY_SHARE * FIRST_SHARE) / TYPICAL;
    }

    /** What the scale gains a minute at the usual pace. */
    double growth(double u) {
        return RISE_BY_SHARE / TYPICAL * curve.inversionPerMin(u) * (1 - share);
    }

    /** Lets time pass at that pace. */
    void pass(double minutes, double u, double pace) {
        share += (1 - share) * (1 - Math.exp(-curve.inversionPerMin(u) * Math.max(0, pace) * minutes));
    }

    /** What the scale gains from now on in that many minutes on the way to {@code goalU}, from where {@code perMin} splits in a minute. */
    double gain(double minutes, double perMin, double goalU, double pace) {
        double rate = (perMin + curve.inversionPerMin(goalU)) / 2;
        return RISE_BY_SHARE / TYPICAL * (1 - share) * (1 - Math.exp(-rate * pace * minutes));
    }
}
