package spoonfall.estimate;

import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.filter.SyrupCurve;

/**
 * What was known of a pan before its readings fell and seemed to level lower, as after water was added. When they come back to
 * where it was, nothing had been added: it stood off the heat, or the thermometer had shifted, and what was known holds again.
 * The numbers are judgements, no source.
 */
final class BeforeTheFall {
    /** What comes back later than that does not come back from there. */
    private static final double KEPT_S = 900;

    private static final double GATE_C = 0.3;
    private static final double GATE_SIGMAS = 3;

    /** It may have boiled on meanwhile, and faster than was known. */
    private static final double ABOVE_TIMES = 1.5;

    /** What was below the boil of plain water so lately, in seconds, may be another pan when it boils again. */
    private static final double BELOW_LATELY_S = 180;

    private final FilterBank kept;
    private double keptT = Double.NaN;
    private double belowT = Double.NEGATIVE_INFINITY;

    BeforeTheFall(SyrupCurve curve) {
        kept = new FilterBank(curve);
    }

    /** It is another pan from now on. */
    void forget() {
        keptT = Double.NaN;
    }

    /** Takes note of a point. */
    void point(double t, double riseC) {
        belowT = riseC < 0 ? t : belowT;
    }

    /** Whether the pan did not boil a moment ago, so that something may have gone in, such as the sugar. */
    boolean boiledNoMore(double t) {
        return t - belowT < BELOW_LATELY_S;
    }

    /** Keeps what is known before the bank begins again lower, unless something is kept from which it has not come back. */
    void keep(double t, FilterBank bank) {
        if (Double.isNaN(keptT) || t - keptT > KEPT_S) {
            kept.copyFrom(bank);
            keptT = t;
        }
    }

    /**
     * Lets the bank go on from before the fall, if a point lies where the pan then was or has climbed to since.
     *
     * @param variance of one point, in °C²
     */
    boolean restore(double t, double riseC, double variance, FilterBank bank) {
        if (Double.isNaN(keptT) || t - keptT > KEPT_S) {
            return false;
        }
        double gateC = Math.max(GATE_C, GATE_SIGMAS * Math.sqrt(variance));
        double offC = riseC - kept.riseC();
        double climbedC = ABOVE_TIMES * Math.max(0, kept.climbPerMinC()) * (t - keptT) / 60;
        if (offC < -gateC || offC > gateC + climbedC) {
            return false;
        }
        bank.copyFrom(kept);
        bank.reanchor(riseC, variance);
        keptT = Double.NaN;
        return true;
    }
}
