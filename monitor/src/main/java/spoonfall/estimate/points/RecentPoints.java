package spoonfall.estimate.points;

import spoonfall.series.LineSums;

/** The points of the last minutes, in the order in which they came. */
public final class RecentPoints {
    private static final int KEPT = 32;

    /** Fewer make no line. */
    private static final int LEAST = 5;

    private final double[] times = new double[KEPT];
    private final double[] rises = new double[KEPT];
    private int taken;

    /** Forgets them. */
    public void clear() {
        taken = 0;
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return taken == 0;
    }

    /** Takes one. */
    public void add(double t, double riseC) {
        times[taken % KEPT] = t;
        rises[taken % KEPT] = riseC;
        taken++;
    }

    /** When the latest came; to be asked when there is one. */
    public double latestT() {
        return times[(taken - 1) % KEPT];
    }

    /** How high it lay. */
    public double latestC() {
        return rises[(taken - 1) % KEPT];
    }

    /** How high the latest {@code count} lay; NaN where they are fewer. */
    public double meanC(int count) {
        if (taken < count) {
            return Double.NaN;
        }
        double sumC = 0;
        for (int i = taken - count; i < taken; i++) {
            sumC += rises[i % KEPT];
        }
        return sumC / count;
    }

    /** Whether more than such a share of them is the same as the one before. */
    public boolean mostlySame(double share) {
        int same = 0;
        int count = Math.min(taken, KEPT) - 1;
        double later = latestC();
        for (int i = taken - 2; i >= taken - 1 - count; i--) {
            double earlier = rises[i % KEPT];
            same += earlier == later ? 1 : 0;
            later = earlier;
        }
        return same > share * count;
    }

    /** The slope of those of the last {@code forS} seconds before {@code t}, in °C a minute; 0 where they make no line. */
    public double slopePerMinC(double t, double forS) {
        LineSums line = line(t, forS);
        return line.count() >= LEAST && line.spreadX() > 0 ? line.slope() : 0;
    }

    /** The sums of a line through them, over minutes. */
    public LineSums line(double t, double forS) {
        LineSums line = new LineSums();
        int from = taken;
        while (from > Math.max(0, taken - KEPT) && sinceMin(from - 1, t, forS) >= 0) {
            from--;
        }
        for (int i = from; i < taken; i++) {
            line.add(sinceMin(i, t, forS), rises[i % KEPT]);
        }
        return line;
    }

    /** How many minutes a point came after {@code forS} before {@code t}. */
    private double sinceMin(int point, double t, double forS) {
        return (times[point % KEPT] - t + forS) / 60;
    }
}
