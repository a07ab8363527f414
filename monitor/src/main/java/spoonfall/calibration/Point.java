package spoonfall.calibration;

/**
 * One comparison of a thermometer with a reference.
 *
 * @param reference what it was compared with
 * @param shownC what the thermometer showed, in °C
 * @param noiseC standard uncertainty of that from noise, in °C
 * @param driftC standard uncertainty of that from a drift that is left, in °C
 */
public record Point(Reference reference, double shownC, double noiseC, double driftC) {
    /** A comparison without a drift. */
    public Point(Reference reference, double shownC, double noiseC) {
        this(reference, shownC, noiseC, 0);
    }

    /** The same plateau, compared with another reference. */
    public Point with(Reference other) {
        return new Point(other, shownC, noiseC, driftC);
    }

    /** Standard uncertainty of what it showed, from noise and drift, in °C. */
    public double shownUncertaintyC() {
        return Math.hypot(noiseC, driftC);
    }

    /** What must be added to what it shows there, in °C. */
    public double correctionC() {
        return reference.temperatureC() - shownC;
    }

    /** Standard uncertainty of the correction in °C: that of the reference and that of the plateau (GUM, 5.1.2). */
    public double uncertaintyC() {
        return Math.hypot(reference.limitC() / Math.sqrt(3), shownUncertaintyC());
    }

    /** Half the interval in °C that holds the true correction in 95 of 100 calibrations. */
    public double half95C() {
        return Coverage.half95(reference.limitC(), shownUncertaintyC());
    }
}
