package spoonfall.plan;

import spoonfall.physics.Syrup;

/**
 * How thick the syrup is where the cook takes the pan off.
 *
 * @param solids the fraction of the syrup that is solids
 * @param doubt how far that may be off; one standard deviation
 */
record Finish(double solids, double doubt) {
    /** How far from the wanted rise cooks stop, in °C; common practice, no source. */
    private static final double STOP_C = 0.3;

    /** A marmalade's inverted share is 0 to 0.5, after acid and time (docs/science.md). */
    private static final double INVERTED_DOUBT = 0.12;

    /** The finish at a rise, with the doubt of the curve, of the stop and of the inversion. */
    static Finish at(double pressurePa, double riseC) {
        double inverted = Syrup.TYPICAL_INVERTED;
        double solids = Syrup.solids(pressurePa, riseC, inverted);
        double slopeC = Syrup.riseSlopeC(pressurePa, solids, inverted);
        double inversion = Syrup.riseByInvertedC(pressurePa, solids, inverted) * INVERTED_DOUBT / slopeC;
        double curve = Syrup.solidsDoubt(pressurePa, solids, inverted);
        return new Finish(solids, Math.hypot(Math.hypot(STOP_C / slopeC, inversion), curve));
    }
}
