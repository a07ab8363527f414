package spoonfall.estimate.points;

import java.util.Arrays;
import spoonfall.series.LineSums;
import spoonfall.series.MiddleHalf;
import spoonfall.series.Slots;

/** Gathers readings at any pace into points, one a slot, each the mean of the middle half of its readings. */
public final class Points {

    /** Readings of a shorter while are too few, as those that begin in the middle of a slot. */
    private static final double LEAST_S = 4;

    /** Over so long it is seen whether the pan still warms. */
    private static final double WARMS_OVER_S = 27;

    /** What surely climbs faster than that does not boil yet, or the thermometer has not arrived. */
    private static final double WARMS_PER_MIN_C = 0.7;

    private static final double SURE_ERRORS = 2;
    private static final int LEAST_TO_BE_SURE = 3;

    private final Slots slots = new Slots();
    private double[] bucket = new double[64];
    private double[] ordered = new double[64];
    private int inBucket;
    private double sumT;
    private double sinceT;
    private final RecentPoints recent = new RecentPoints();
    private int inLatest;

    /**
     * The readings of one point, as the rise in °C.
     *
     * @param count how many they are
     */
    record Spread(double lowestC, double highestC, double meanC, double firstC, double lastC, int count) {}

    /** Takes a reading, as the rise in °C. */
    public void accept(double t, double riseC) {
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
    public boolean take(double t) {
        if (inBucket == 0 || t - sinceT < LEAST_S || !slots.begins(t)) {
            return false;
        }
        recent.add(sumT / inBucket, MiddleHalf.mean(bucket, 0, inBucket, ordered));
        inLatest = inBucket;
        inBucket = 0;
        return true;
    }

    /** Forgets the way here. */
    public void clear() {
        inBucket = 0;
        recent.clear();
    }

    /** The mean time of the latest point's readings. */
    public double latestT() {
        return recent.latestT();
    }

    /** The latest point, as the rise in °C. */
    public double latestC() {
        return recent.latestC();
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
    public double slopePerMinC() {
        return slopePerMinC(60);
    }

    /** The slope of the points of the last {@code lastS} seconds, in °C a minute; 0 while there are too few. */
    public double slopePerMinC(double lastS) {
        LineSums line = recent.line(latestT(), lastS);
        return line.spreadX() > 0 ? line.slope() : 0;
    }

    /**
     * Whether the pan is still on its way to the boil: thick syrup boils some degrees above water, for which a slow hob takes a
     * minute or two.
     */
    public boolean warms() {
        LineSums line = recent.line(latestT(), WARMS_OVER_S);
        return line.count() >= LEAST_TO_BE_SURE && line.slope() - SURE_ERRORS * line.slopeError() > WARMS_PER_MIN_C;
    }
}
