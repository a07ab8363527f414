package spoonfall.estimate.points;

/**
 * Whether the readings lie where the pan must be, or astray: far below it (a stir, a test, cold water, heat off), or far
 * above what the water that left allows (a hot base, a shifted probe). What is astray for a while is away, and is sat out
 * until it is back or has levelled somewhere else. The numbers are judgements, no source.
 */
public final class Astray {
    /** What is too low or too high for so long is away. */
    private static final double DIP_S = 14;

    private static final double HIGH_S = 28;

    /** What stays there for so long is where the pan is. */
    private static final double REANCHOR_LOW_S = 60;

    private static final double REANCHOR_HIGH_S = 150;

    /** What is off by less is neither: in °C, and in standard deviations. */
    private static final double LOW_GATE_C = 0.3;

    private static final double HIGH_GATE_C = 0.45;
    private static final double LOW_SIGMAS = 3.5;
    private static final double HIGH_SIGMAS = 4;

    /** From below it is back that close, and from above only closer still. */
    private static final double BACK_SIGMAS = 3;

    private static final double NEAR_C = 0.12;
    private static final double NEAR_SIGMAS = 1.3;

    /** What falls or rises faster than that is still on its way. */
    private static final double FALLS_PER_MIN_C = -0.15;

    private static final double RISES_PER_MIN_C = 0.6;

    /** Over so long it is seen whether readings stay, or only turn on their way back; within so much. */
    private static final double TURNS_S = 27;

    private static final double TURNS_PER_MIN_C = 1;

    /** What lies lower than that above the water boil does not boil with sugar in it. */
    private static final double BOILS_C = 0.3;

    /** No water that leaves makes a pan climb so fast, nor by so many times what it should: such readings are no pan's for so long. */
    private static final double IMPOSSIBLE_PER_MIN_C = 0.5;

    private static final double IMPOSSIBLE_TIMES = 2.5;
    private static final double HOLD_S = 1800;

    /** What was too hot cools away by and by: a reading that has nearly come down to the pan is a little above it for so long. */
    private static final double COOLS_S = 60;

    /** What was too hot and is no more than such a part of that, and at least so much lower, has come down. */
    private static final double DOWN_PART = 0.2;

    private static final double DOWN_C = 1;

    /** Once it has come down and stays for so long, it is read where the pan is, whatever was thought of that meanwhile. */
    private static final double DOWN_S = 60;

    private double lowSinceT = Double.NaN;
    private double highSinceT = Double.NaN;
    private boolean away;
    private boolean impossible;
    private double highestOffC;
    private double downSinceT = Double.NaN;
    private int back;
    private double nearSinceT = Double.NaN;

    /** The readings are the pan's again. */
    public void end() {
        impossible = false;
        highestOffC = 0;
        downSinceT = Double.NaN;
        nearSinceT = Double.NaN;
        away = false;
        lowSinceT = Double.NaN;
        highSinceT = Double.NaN;
    }

    /** Whether they have been so for long enough to be sat out. */
    public boolean away() {
        return away;
    }

    /** Whether they are too low, be it for a moment. */
    public boolean low() {
        return !Double.isNaN(lowSinceT);
    }

    /** Whether they are too high, be it for a moment. */
    public boolean high() {
        return !Double.isNaN(highSinceT);
    }

    /** Whether they lie where the pan must be. */
    public boolean none() {
        return !away && !low() && !high();
    }

    /** For how many seconds they have been too low or too high. */
    public double forS(double t) {
        return t - sinceT();
    }

    /** For how many seconds they have been too low; 0 if they are not. */
    public double lowForS(double t) {
        return low() ? Math.max(0.1, t - lowSinceT) : 0;
    }

    /** That they are low is a burner's pause. */
    public void notLow() {
        lowSinceT = Double.NaN;
    }

    /** The readings since {@code t} turn out to be hotter than the pan, and until further notice. */
    public void doubt(double t) {
        highSinceT = misledUpwards() ? highSinceT : t;
        lowSinceT = Double.NaN;
        away = true;
        impossible = true;
        back = 0;
        nearSinceT = Double.NaN;
    }

    /** Whether they are away, above. */
    public boolean misledUpwards() {
        return away && high();
    }

    /**
     * Looks at a point while the readings are not away, and says whether it is astray.
     *
     * @param offC how far it is above what was expected
     * @param sigmaC how far it may be
     * @param offTheHeat whether the pan stands off the heat, so that low points are no noise
     * @param points the latest of them, of which this is the last
     * @param climbPerMinC how fast the pan should climb
     */
    public boolean look(double t, double offC, double sigmaC, boolean offTheHeat, Points points, double climbPerMinC) {
        boolean low = offC < -(offTheHeat ? LOW_GATE_C : Math.max(LOW_GATE_C, LOW_SIGMAS * sigmaC));
        boolean high = offC > Math.max(HIGH_GATE_C, HIGH_SIGMAS * sigmaC);
        lowSinceT = low ? low() ? lowSinceT : t : Double.NaN;
        highSinceT = high ? high() ? highSinceT : t : Double.NaN;
        if (!low && !high) {
            return false;
        }
        away = low ? t - lowSinceT >= DIP_S : t - highSinceT >= HIGH_S;
        back = 0;
        double mostPerMinC = Math.max(IMPOSSIBLE_PER_MIN_C, IMPOSSIBLE_TIMES * climbPerMinC);
        if (high && points.slopePerMinC() > mostPerMinC) {
            impossible = true;
        }
        return true;
    }

    /** Looks at a point while the readings are away, and says whether they are back. */
    public boolean back(double t, double offC, double sigmaC) {
        comesDown(t, offC);
        // From below it comes back with the boil; from above it creeps back, and is not back before it is there.
        double gateC = low() ? Math.max(LOW_GATE_C, BACK_SIGMAS * sigmaC) : Math.max(NEAR_C, NEAR_SIGMAS * sigmaC);
        back = Math.abs(offC) < gateC ? back + 1 : 0;
        if (back == 0) {
            nearSinceT = Double.NaN;
        } else if (Double.isNaN(nearSinceT)) {
            nearSinceT = t;
        }
        boolean cools = impossible && !low() && offC > 0 && t - nearSinceT < COOLS_S;
        return back >= 2 && !cools;
    }

    private void comesDown(double t, double offC) {
        highestOffC = Math.max(highestOffC, offC);
        if (low() || offC > Math.min(DOWN_PART * highestOffC, highestOffC - DOWN_C)) {
            downSinceT = Double.NaN;
        } else if (Double.isNaN(downSinceT)) {
            downSinceT = t;
        }
    }

    /** Whether they stay where they are, away: the pan, which boils by the rise {@code riseC}, is somewhere else. */
    public boolean levelled(double t, double riseC, Points points, double climbPerMinC) {
        if ((low() && riseC < BOILS_C) || !steady(points, climbPerMinC)) {
            return false;
        }
        double perMinC = points.slopePerMinC();
        boolean cameDown = t - downSinceT >= DOWN_S;
        boolean held = impossible && !cameDown && forS(t) < HOLD_S;
        boolean level = !held && perMinC > FALLS_PER_MIN_C && perMinC < RISES_PER_MIN_C + 2 * climbPerMinC;
        return level && forS(t) >= (low() ? REANCHOR_LOW_S : REANCHOR_HIGH_S);
    }

    /** Whether they stay where they are but for what water and a little noise do, and do not only turn on their way. */
    public boolean steady(Points points, double climbPerMinC) {
        return Math.abs(points.slopePerMinC(TURNS_S)) < TURNS_PER_MIN_C + 2 * climbPerMinC;
    }

    /** Since when they have been too low or too high. */
    private double sinceT() {
        return low() ? lowSinceT : highSinceT;
    }
}
