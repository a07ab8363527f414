package spoonfall.estimate;

import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.points.Points;
import spoonfall.estimate.standing.Thin;

/**
 * What was known of a pan when its boil ended, for when it boils again: less water than before it cannot have kept, and more than
 * the same heat drives off it cannot have lost. So the heat is known better from the boil before than from the short way back.
 * The numbers are judgements, no source.
 */
final class LastBoil {
    /** What was watched for less than that, in seconds, was not known. */
    private static final double LEAST_S = 180;

    private static final double ABOVE_C = 0.3;
    private static final double ABOVE_TIMES = 1.5;

    private static final double SHORT_C = 0.5;
    private static final double COMES_PER_MIN_C = 0.4;

    /** A reading so soon after the boil began may be off by that much. */
    private static final double DOUBT_C = 0.15;

    private double beganT = Double.NaN;
    private double endedT = Double.NaN;

    /** The pan boils and begins to be known. */
    void begins(double t) {
        beganT = t;
        endedT = Double.NaN;
    }

    /**
     * The boil ends.
     *
     * @param t when something was last known of it
     */
    void ends(double t) {
        endedT = t - beganT >= LEAST_S ? t : Double.NaN;
    }

    /** It is another pan. */
    void forget() {
        endedT = Double.NaN;
    }

    /** Whether a boil before is remembered; what is known of it is still in the bank. */
    boolean knows(FilterBank bank) {
        return !Double.isNaN(endedT) && bank.riseC() >= Thin.KNOWN_C;
    }

    /** Whether it is still well below where it boiled and climbs towards that, if only in a coarse thermometer's steps. */
    boolean comesBack(double riseC, Points points, FilterBank bank) {
        return riseC < bank.riseC() - SHORT_C && points.slopePerMinC() > COMES_PER_MIN_C;
    }

    /** Lets the bank go on with the heat of the boil before, from a reading; false if that was another pan or none. */
    boolean goOn(double t, double riseC, double variance, FilterBank bank) {
        if (!knows(bank)) {
            return false;
        }
        double mostC = bank.riseC() + ABOVE_C + ABOVE_TIMES * Math.max(0, bank.climbPerMinC()) * (t - endedT) / 60;
        if (riseC < Thin.KNOWN_C || riseC > mostC) {
            return false;
        }
        bank.reanchor(riseC, variance + DOUBT_C * DOUBT_C);
        beganT = t - LEAST_S;
        endedT = Double.NaN;
        return true;
    }
}
