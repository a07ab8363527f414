package spoonfall.estimate.standing;

/**
 * Tells whether a pan was ever seen to climb since it began to boil. Fruit and water that simmer without their sugar stand where
 * they boil, for an hour and more, and by the weather and a thermometer that is off they may read as high as a thin syrup: what
 * was never seen to climb has not stopped. The numbers are judgements, no source.
 */
final class Climbed {
    /** By then the thermometer has arrived where the pan boils. */
    private static final double ARRIVES_S = 75;

    /** What has climbed by so much has sugar in it. */
    private static final double CLIMBED_C = 0.2;

    /** So has what boils so high: water boils so far off by no weather and no thermometer that is worth having. */
    private static final double SWEET_C = 1.6;

    private double beganT = Double.NaN;
    private double lowestC = Double.POSITIVE_INFINITY;

    /** Begins afresh, with another pan. */
    void begin() {
        beganT = Double.NaN;
        lowestC = Double.POSITIVE_INFINITY;
    }

    /** Takes note of how high the pan is known to be at {@code t}. */
    void observe(double t, double riseC) {
        beganT = Double.isNaN(beganT) ? t : beganT;
        if (t - beganT >= ARRIVES_S) {
            lowestC = Math.min(lowestC, riseC);
        }
    }

    /** Whether one that is {@code riseC} high surely has sugar in it. */
    boolean surely(double riseC) {
        return riseC >= Math.max(Thin.KNOWN_C, Math.min(SWEET_C, lowestC + CLIMBED_C));
    }
}
