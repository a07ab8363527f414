package spoonfall.learn;

import spoonfall.physics.GelPoint;

/**
 * What is believed of a cook's taste before any batch: every part is normal, and those that must be positive are so in
 * their logarithm. The numbers and why they are so are in docs/decisions/013-learning.md.
 *
 * @param centreC the rise in °C that is right for a usual fruit
 * @param centreSdC how far that may be off for this cook, one standard deviation, in °C
 * @param fruitSdC how far a fruit may differ from a usual one, in °C
 * @param slope by how much a rise of 1 °C moves the log odds of a firmer set, the median
 * @param slopeLogSd how far the slope's logarithm may be off
 * @param halfRight half the width of "right" on the scale of the log odds, the median
 * @param beyond the width of "soft" and of "firm" on the same scale, the median
 * @param widthLogSd how far the logarithm of a width may be off
 */
record Prior(
        double centreC,
        double centreSdC,
        double fruitSdC,
        double slope,
        double slopeLogSd,
        double halfRight,
        double beyond,
        double widthLogSd) {
    Prior {
        double[] positive = {centreC, centreSdC, fruitSdC, slope, slopeLogSd, halfRight, beyond, widthLogSd};
        for (double one : positive) {
            if (!(one > 0)) {
                throw new IllegalArgumentException("a prior's numbers are above 0, not " + one);
            }
        }
    }

    /** The prior of the program: 8 °F is right, and a batch or two are soon stronger than that. */
    static Prior usual() {
        return new Prior(GelPoint.DEFAULT_RISE_C, 0.6, 0.4, 3, 0.4, 2, 3, 0.4);
    }
}
