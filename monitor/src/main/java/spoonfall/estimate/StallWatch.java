package spoonfall.estimate;

/**
 * Tells a pan that has stopped climbing from one that only seems to. It remembers where the pan was and how fast it
 * climbed; when the readings since then have climbed by less than a third of that, by more than chance makes of so noisy
 * a thermometer, the pan stands still. A dilute pan hardly climbs, so nothing is ever certain enough there.
 */
final class StallWatch {
    private static final double[] AGES_S = {90, 130, 180, 240, 330, 450, 600};
    private static final double SNAPSHOT_EVERY_S = 15;
    private static final double KNOWN_S = 150;
    private static final double LEAST_CLIMB_PER_MIN_C = 0.02;
    private static final double SLOW_PART = 0.38;
    private static final double SIGMAS = 1.5;
    private static final double LEAST_SIGNAL = 3.6;
    private static final double AGAIN_PART = 0.5;
    private static final double AGAIN_S = 75;
    private static final double FAR_C = 0.35;
    private static final double FAR_SIGMAS = 4;
    private static final double FALLING_S = 85;

    /** No pan is steadier than that, however fine its thermometer: burners cycle, and cooks stir. */
    private static final double UNSTEADY_C = 0.08;

    private static final double BEFORE_S = 60;
    private static final double LEVEL_S = 600;
    private static final double DROP_C = 0.25;
    private static final double DROP_SIGMAS = 2.5;
    private static final double COOLS_PER_MIN_C = -0.1;

    /** A pan that thin hardly climbs, and may be simmering its fruit before the sugar goes in. */
    private static final double THIN_C = 0.8;

    /** A thermometer must have had so many steps to take before its silence says something. */
    private static final double STEPS_TO_SEE = 2.5;

    private static final int POINTS = 160;
    private static final int SNAPSHOTS = 48;

    private final double[] times = new double[POINTS];
    private final double[] rises = new double[POINTS];
    private int points;
    private final double[] snapshotT = new double[SNAPSHOTS];
    private final double[] snapshotC = new double[SNAPSHOTS];
    private final double[] snapshotClimb = new double[SNAPSHOTS];
    private final double[] snapshotVariance = new double[SNAPSHOTS];
    private int snapshots;
    private double followedSinceT = Double.NaN;
    private boolean still;
    private boolean level;
    private boolean fell;
    private boolean falling;
    private double climbBefore;
    private double stillC;
    private double slope;
    private double slopeError;

    /** Begins afresh, with what came before forgotten. */
    void begin() {
        still = false;
        points = 0;
        lookAfresh();
    }

    /** What comes does not go on from where the pan was, as after a set test. */
    void lookAfresh() {
        snapshots = 0;
        followedSinceT = Double.NaN;
    }

    boolean still() {
        return still;
    }

    /** Whether it stands still because it cools, rather than at one height. */
    boolean falling() {
        return still && falling;
    }

    /** Whether it may be standing still, so that nothing else should be made of its being low. */
    boolean suspects() {
        return still || level;
    }

    /** Whether it fell, so that it comes back to where it was. */
    boolean fell() {
        return falling;
    }

    /** How fast it climbed before it stood still, in °C a minute. */
    double climbBefore() {
        return climbBefore;
    }

    /**
     * Takes a point.
     *
     * @param knownC the rise that the pan should show
     * @param climbPerMinC how fast it should be climbing
     * @param variance of one point, in °C²
     * @param stepC the thermometer's step
     * @param lowForS how long the readings have been far below what they should be; 0 if they are not
     */
    void point(
            double t, double riseC, double knownC, double climbPerMinC, double variance, double stepC, double lowForS) {
        times[points % POINTS] = t;
        rises[points % POINTS] = riseC;
        points++;
        if (still) {
            seeWhetherItClimbs(t, riseC, variance, lowForS);
            return;
        }
        if (lowForS >= FALLING_S && recentSlope(t, 35) < COOLS_PER_MIN_C) {
            stop(riseC, climbPerMinC, true);
            return;
        }
        fell = lowForS > 0 && (fell || dropped(t, lowForS, riseC, variance));
        level = lowForS > 0 && lowForS < LEVEL_S && !fell;
        if (lowForS == 0) {
            takeSnapshot(t, knownC, climbPerMinC, variance);
        } else if (!level) {
            return; // it cools, or something cold went in: that is another matter
        }
        if (knownC < THIN_C) {
            return;
        }
        for (double ageS : AGES_S) {
            int snapshot = olderThan(t - ageS);
            if (snapshot >= 0
                    && snapshotClimb[snapshot] * (t - snapshotT[snapshot]) / 60 >= STEPS_TO_SEE * stepC
                    && snapshotT[snapshot] - followedSinceT >= KNOWN_S
                    && riseC >= snapshotC[snapshot] - dropC(snapshotVariance[snapshot])
                    && standsStill(snapshot)) {
                stop(riseC, snapshotClimb[snapshot], false);
                return;
            }
        }
    }

    private void takeSnapshot(double t, double knownC, double climbPerMinC, double variance) {
        if (Double.isNaN(followedSinceT)) {
            followedSinceT = t;
        }
        if (snapshots == 0 || t - snapshotT[(snapshots - 1) % SNAPSHOTS] >= SNAPSHOT_EVERY_S) {
            snapshotT[snapshots % SNAPSHOTS] = t;
            snapshotC[snapshots % SNAPSHOTS] = knownC;
            snapshotClimb[snapshots % SNAPSHOTS] = climbPerMinC;
            snapshotVariance[snapshots % SNAPSHOTS] = Math.max(0.65 * variance, UNSTEADY_C * UNSTEADY_C);
            snapshots++;
        }
    }

    /** Whether it has fallen below where it was a while before it went low. */
    private boolean dropped(double t, double lowForS, double riseC, double variance) {
        int before = olderThan(t - lowForS - BEFORE_S);
        return before < 0 || riseC < snapshotC[before] - dropC(variance);
    }

    /** Less than this below where it was is no fall, for a thermometer of that variance. */
    private static double dropC(double variance) {
        return Math.max(DROP_C, DROP_SIGMAS * Math.sqrt(variance));
    }

    private boolean standsStill(int snapshot) {
        double climb = snapshotClimb[snapshot];
        if (climb < LEAST_CLIMB_PER_MIN_C) {
            return false;
        }
        fit(snapshotT[snapshot], snapshotC[snapshot], climb, snapshotVariance[snapshot]);
        return slopeError > 0 && climb >= LEAST_SIGNAL * slopeError && slope + SIGMAS * slopeError < SLOW_PART * climb;
    }

    /** A line through the points since {@code sinceT}; those outside what either pan would show count as at its edge. */
    private void fit(double sinceT, double sinceC, double climb, double variance) {
        double edgeC = 2 * Math.sqrt(variance);
        double n = 0;
        double sumX = 0;
        double sumY = 0;
        double sumXx = 0;
        double sumXy = 0;
        for (int i = Math.max(0, points - POINTS); i < points; i++) {
            double x = (times[i % POINTS] - sinceT) / 60;
            if (x >= 0) {
                double highC = sinceC + climb * x + edgeC;
                double y = Math.max(sinceC - edgeC, Math.min(highC, rises[i % POINTS])) - sinceC;
                n++;
                sumX += x;
                sumY += y;
                sumXx += x * x;
                sumXy += x * y;
            }
        }
        double spread = sumXx - sumX * sumX / Math.max(1, n);
        slopeError = n >= 5 && spread > 0 ? Math.sqrt(variance / spread) : 0;
        slope = slopeError > 0 ? (sumXy - sumX * sumY / n) / spread : 0;
    }

    private void stop(double riseC, double climbPerMinC, boolean cools) {
        still = true;
        falling = cools;
        climbBefore = climbPerMinC;
        stillC = riseC;
        lookAfresh();
    }

    private void seeWhetherItClimbs(double t, double riseC, double variance, double lowForS) {
        stillC = Math.min(stillC, riseC);
        double climbs = recentSlope(t, AGAIN_S);
        double sigma = Math.sqrt(variance);
        boolean risen = riseC - stillC > Math.max(0.15, 3 * sigma) || (lowForS == 0 && falling);
        boolean risenFar = !falling && riseC - stillC > Math.max(FAR_C, FAR_SIGMAS * sigma);
        if (risenFar || (risen && climbs >= AGAIN_PART * climbBefore)) {
            still = false;
        }
    }

    /** The slope of the latest points, in °C a minute. */
    private double recentSlope(double t, double forS) {
        fit(t - forS, 0, 0, 1e6);
        return slope;
    }

    private int olderThan(double t) {
        for (int i = snapshots - 1; i >= Math.max(0, snapshots - SNAPSHOTS); i--) {
            if (snapshotT[i % SNAPSHOTS] <= t) {
                return i % SNAPSHOTS;
            }
        }
        return -1;
    }
}
