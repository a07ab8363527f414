package spoonfall.estimate;

import java.util.Arrays;

/** Gathers readings at any pace into points, one a slot, each the mean of the middle half of its readings. */
final class Points {

    /** Readings of a shorter while are too few, as those that begin in the middle of a slot. */
    private static final double LEAST_S = 4;

    private static final int KEPT = 16;

    /** Over so long it is seen whether the pan still warms; no pan that boils climbs so fast. */
    private static final double WARMS_OVER_S = 27;

    private static final double WARMS_PER_MIN_C = 1.5;

    /** Where a pan is below the height of its last boil, less is enough. */
    private static final double WARMS_BACK_PER_MIN_C = 0.6;

    private final Slots slots = new Slots();
    private double[] bucket = new double[64];
    private int inBucket;
    private double sumT;
    private double sinceT;
    private final double[] recentT = new double[KEPT];
    private final double[] recentC = new double[KEPT];
    private int taken;

    void accept(double t, double riseC) {
        if (inBucket == 0) {
            sinceT = t;
            sumT = 0;
        }
        if (inBucket == bucket.length) {
            bucket = Arrays.copyOf(bucket, 2 * inBucket);
        }
        bucket[inBucket++] = riseC;
        sumT += t;
    }

    /** Finishes a point if a slot begins at {@code t}, and says whether it did; that is the latest from now on. */
    boolean take(double t) {
        if (inBucket == 0 || t - sinceT < LEAST_S || !slots.begins(t)) {
            return false;
        }
        recentT[taken % KEPT] = sumT / inBucket;
        recentC[taken % KEPT] = MiddleHalf.mean(bucket, inBucket);
        taken++;
        inBucket = 0;
        return true;
    }

    void clear() {
        inBucket = 0;
        taken = 0;
    }

    /** The mean time of the latest point's readings. */
    double latestT() {
        return recentT[(taken - 1) % KEPT];
    }

    /** The latest point, as the rise in °C. */
    double latestC() {
        return recentC[(taken - 1) % KEPT];
    }

    /** The slope of the last minute's points, in °C a minute; 0 while there are too few. */
    double slopePerMinC() {
        return slopePerMinC(60);
    }

    /** The slope of the points of the last {@code lastS} seconds, in °C a minute; 0 while there are too few. */
    double slopePerMinC(double lastS) {
        double n = 0;
        double sumX = 0;
        double sumC = 0;
        double sumXx = 0;
        double sumXc = 0;
        for (int i = 0; i < Math.min(taken, KEPT); i++) {
            double x = (recentT[i] - latestT()) / 60;
            if (x >= -lastS / 60) {
                n++;
                sumX += x;
                sumC += recentC[i];
                sumXx += x * x;
                sumXc += x * recentC[i];
            }
        }
        double spread = n * sumXx - sumX * sumX;
        return spread <= 0 ? 0 : (n * sumXc - sumX * sumC) / spread;
    }

    /** Whether the pan is still on its way to the boil: thick syrup boils some degrees above water, and a slow hob takes a minute for those. */
    boolean warms() {
        return slopePerMinC(WARMS_OVER_S) > WARMS_PER_MIN_C;
    }

    /** The same for one that is known to boil higher than it is. */
    boolean warmsBack() {
        return slopePerMinC(WARMS_OVER_S) > WARMS_BACK_PER_MIN_C;
    }
}
