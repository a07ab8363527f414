package spoonfall.estimate.standing;

import spoonfall.estimate.filter.FilterBank;
import spoonfall.series.LineSums;

/**
 * Sees that a pan climbs again which had lost its heat without anybody being sure of it, as under a lid: by and by the filters
 * took its pace for nothing, and would take minutes to believe in another one. Heat that comes back is most likely what it was; where
 * only some of it was lost, it is what the climb says.
 * The numbers are judgements, no source.
 */
final class HeatBack {
    /** Less than such a part of its usual pace is none to speak of. */
    private static final double LOST_PART = 0.12;

    private static final double BACK_PART = 0.5;
    private static final double SURE_ERRORS = 2.5;

    /** Less than such a part of it is a heat that was turned down, or a lid. */
    private static final double LESS_PART = 0.6;

    /** What lies so much above what is known may be climbing faster than that. */
    private static final double BEHIND_C = 0.08;

    /** What lies so far above it was no climb that nobody saw: the reading jumped, or is its base's. */
    private static final double FAR_BEHIND_C = 0.5;

    private static final double OUTRUNS_TIMES = 1.5;
    private static final double OUTRUNS_ERRORS = 3;

    /** What climbs faster than it ever did by that is no heat that it had: its base may catch. */
    private static final double MORE_TIMES = 1.3;

    /** A pace of which so little is known, as a part of it, is not the usual one. */
    private static final double MOST_DOUBT = 0.25;

    private static final double LEARNS_MIN = 3;

    /** The heat may have been turned down for good. */
    private static final double FORGETS_MIN = 20;

    private double usualV = Double.NaN;
    private double lostT = Double.NaN;

    /** Begins afresh, with another pan. */
    void begin() {
        usualV = Double.NaN;
        lostT = Double.NaN;
    }

    /** How fast u usually falls, per minute. */
    double usualV() {
        return usualV;
    }

    /** For how many seconds it is known at {@code t} to have lost its heat; 0 if it has not. */
    double lostForS(double t) {
        return Double.isNaN(lostT) ? 0 : t - lostT;
    }

    /** Takes note of what is known of the pan at {@code t}, {@code minutes} after the last time. */
    void observe(double t, double minutes, FilterBank bank) {
        double v = bank.v();
        if (v < BACK_PART * usualV) {
            lostT = Double.isNaN(lostT) && v < LOST_PART * usualV ? t : lostT;
            usualV *= Math.exp(-minutes / FORGETS_MIN);
            return;
        }
        lostT = Double.NaN;
        if (bank.paceDoubt() < MOST_DOUBT) {
            usualV = Double.isNaN(usualV) ? v : usualV + (v - usualV) * -Math.expm1(-minutes / LEARNS_MIN);
        }
    }

    /** Whether a pan that lost some of its heat, and reads {@code riseC}, may be climbing faster than is known. */
    boolean mayOutrun(double riseC, FilterBank bank) {
        double behindC = riseC - bank.riseC();
        return bank.v() < LESS_PART * usualV && behindC > BEHIND_C && behindC < FAR_BEHIND_C;
    }

    /** Whether its latest readings surely climb faster than is known and by half of the usual pace, and no faster than they may with the heat that it had. */
    boolean outruns(LineSums line, FilterBank bank) {
        double usualPerMinC = bank.climbPerMinC(usualV);
        double outrunPerMinC = Math.max(BACK_PART * usualPerMinC, OUTRUNS_TIMES * bank.climbPerMinC());
        return line.leastSlope(OUTRUNS_ERRORS) > outrunPerMinC && line.slope() < MORE_TIMES * usualPerMinC;
    }

    /** Whether the latest readings, of which {@code line} tells by minutes, surely climb again as they usually would. */
    boolean back(LineSums line, FilterBank bank) {
        return line.leastSlope(SURE_ERRORS) >= BACK_PART * bank.climbPerMinC(usualV);
    }
}
