package spoonfall.estimate;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Gathers readings at any pace into points, one a slot, each the mean of the middle half of its readings. */
final class Points {

    /** Readings of a shorter while are too few, as those that begin in the middle of a slot. */
    private static final double LEAST_S = 4;

    private static final int KEPT = 16;

    /** Over so long it is seen whether the pan still warms. */
    private static final double WARMS_OVER_S = 27;

    /** What surely climbs faster than that does not boil yet, or the thermometer has not arrived. */
    private static final double WARMS_PER_MIN_C = 0.7;

    /** And what warmed slowly until now: once it boils it climbs by less than a fiftieth of that. */
    private static final double WARMS_PART = 0.2;

    private static final double LEAST_WARMS_PER_MIN_C = 0.15;

    /** So slow a pan has time to be looked at for longer. */
    private static final double SLOWLY_OVER_S = 60;

    private static final double SURE_ERRORS = 2;
    private static final int LEAST_TO_BE_SURE = 3;

    private final Slots slots = new Slots();
    private double[] bucket = new double[64];
    private double[] ordered = new double[64];
    private int inBucket;
    private double sumT;
    private double sinceT;
    private final double[] recentT = new double[KEPT];
    private final double[] recentC = new double[KEPT];
    private int taken;
    private int inLatest;

    /**
     * The readings of one point, as the rise in °C.
     *
     * @param count how many they are
     */
    record Spread(double lowestC, double highestC, double meanC, double firstC, double lastC, int count) {}

    void accept(double t, double riseC) {
        if (inBucket == 0) {
            sinceT = t;
            sumT = 0;
        }
        if (inBucket == bucket.length) {
            bucket = Arrays.copyOf(bucket, 2 * inBucket);
            ordered = new double[2 * inBucket];
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
        recentC[taken % KEPT] = MiddleHalf.mean(bucket, 0, inBucket, ordered);
        taken++;
        inLatest = inBucket;
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

    /** How the latest point's readings lie; to be asked before the next reading comes. */
    Spread latestSpread() {
        double lowestC = bucket[0];
        double highestC = bucket[0];
        double sumC = 0;
        for (int i = 0; i < inLatest; i++) {
            lowestC = Math.min(lowestC, bucket[i]);
            highestC = Math.max(highestC, bucket[i]);
            sumC += bucket[i];
        }
        return new Spread(lowestC, highestC, sumC / inLatest, bucket[0], bucket[inLatest - 1], inLatest);
    }

    /** The slope of the last minute's points, in °C a minute; 0 while there are too few. */
    double slopePerMinC() {
        return slopePerMinC(60);
    }

    /** The slope of the points of the last {@code lastS} seconds, in °C a minute; 0 while there are too few. */
    double slopePerMinC(double lastS) {
        return line(lastS).perMinC();
    }

    /**
     * Whether the pan is still on its way to the boil: thick syrup boils some degrees above water, for which a slow hob takes a
     * minute or two.
     *
     * @param warmedPerMinC how fast it warmed before; empty if that is not known
     */
    boolean warms(OptionalDouble warmedPerMinC) {
        double mostPerMinC = Math.min(
                WARMS_PER_MIN_C,
                Math.max(LEAST_WARMS_PER_MIN_C, WARMS_PART * warmedPerMinC.orElse(Double.POSITIVE_INFINITY)));
        return climbsBeyond(WARMS_PER_MIN_C, WARMS_OVER_S)
                || (mostPerMinC < WARMS_PER_MIN_C && climbsBeyond(mostPerMinC, SLOWLY_OVER_S));
    }

    private boolean climbsBeyond(double perMinC, double overS) {
        Line line = line(overS);
        return line.n() >= LEAST_TO_BE_SURE && line.perMinC() - SURE_ERRORS * line.errorPerMinC() > perMinC;
    }

    private Line line(double lastS) {
        LineSums sums = new LineSums();
        for (int i = 0; i < Math.min(taken, KEPT); i++) {
            double x = (recentT[i] - latestT()) / 60;
            if (x >= -lastS / 60) {
                sums.add(x, recentC[i]);
            }
        }
        int n = sums.count();
        return sums.spreadX() > 0
                ? new Line(n, sums.slope(), sums.slopeError())
                : new Line(n, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * A least-squares line.
     *
     * @param errorPerMinC the standard error of its slope by what the points stray from it; no number for fewer than three
     */
    private record Line(int n, double perMinC, double errorPerMinC) {}
}
