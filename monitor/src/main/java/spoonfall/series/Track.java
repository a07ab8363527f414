package spoonfall.series;

import java.util.Optional;
import java.util.OptionalDouble;

/** The latest points of a value over time, oldest first and in order of time, forgetting what is older than it needs. */
public final class Track extends TimedPoints {
    private static final int ROOM = 64;

    private double[] part = new double[16];
    private final PairSlopes slopes = new PairSlopes();
    private final RunningMiddle latest = new RunningMiddle();
    private int added;

    /** Remembers the last {@code keepS} seconds. */
    public Track(double keepS) {
        super(keepS, ROOM);
    }

    /** Takes a point, no earlier than those before. */
    public void add(double t, double value) {
        append(t, value);
        added++;
    }

    /** Time of the oldest point that is remembered. */
    public OptionalDouble oldestT() {
        return from == to ? OptionalDouble.empty() : OptionalDouble.of(times[from]);
    }

    /** Time of the newest point. */
    public OptionalDouble newestT() {
        return from == to ? OptionalDouble.empty() : OptionalDouble.of(times[to - 1]);
    }

    /**
     * The mean of the middle half of the points since {@code sinceT}, or of the last {@code least} if those are
     * more.
     */
    public OptionalDouble middleSince(double sinceT, int least) {
        int first = Math.max(from, Math.min(firstSince(sinceT), to - least));
        return first >= to
                ? OptionalDouble.empty()
                : OptionalDouble.of(latest.of(values, from, first, to, added - (to - first)));
    }

    /** The mean of the middle half of the points after {@code sinceT} up to {@code untilT}. */
    public OptionalDouble middleBetween(double sinceT, double untilT) {
        int end = to;
        while (end > from && times[end - 1] > untilT) {
            end--;
        }
        int first = end;
        while (first > from && times[first - 1] > sinceT) {
            first--;
        }
        return middle(first, end);
    }

    private OptionalDouble middle(int first, int end) {
        if (first >= end) {
            return OptionalDouble.empty();
        }
        int count = end - first;
        if (part.length < count) {
            part = new double[2 * count];
        }
        return OptionalDouble.of(MiddleHalf.mean(values, first, end, part));
    }

    /** The largest value since {@code sinceT}: found at once where that is not long ago. */
    public OptionalDouble highestSince(double sinceT) {
        double highest = Double.NEGATIVE_INFINITY;
        int first = to;
        for (; first > from && times[first - 1] >= sinceT; first--) {
            highest = Math.max(highest, values[first - 1]);
        }
        return first == to ? OptionalDouble.empty() : OptionalDouble.of(highest);
    }

    /** The largest value from {@code sinceT} to {@code untilT}, however long that is. */
    public OptionalDouble highestBetween(double sinceT, double untilT) {
        int first = firstSince(sinceT);
        int end = firstAfter(untilT);
        return first >= end ? OptionalDouble.empty() : OptionalDouble.of(Selection.highest(values, first, end));
    }

    /** Time of the oldest point later than {@code t}; infinite if there is none. */
    public double nextAfter(double t) {
        int next = firstAfter(t);
        return next < to ? times[next] : Double.POSITIVE_INFINITY;
    }

    /** The mean of the points within a second of {@code t}, or else what lies between those before and after it. */
    public OptionalDouble around(double t) {
        OptionalDouble close = middleBetween(t - 1.25, t + 1.25);
        if (close.isPresent()) {
            return close;
        }
        int next = firstAfter(t);
        if (next == from || next == to) {
            return OptionalDouble.empty();
        }
        double part = (t - times[next - 1]) / (times[next] - times[next - 1]);
        return OptionalDouble.of(values[next - 1] + part * (values[next] - values[next - 1]));
    }

    /** The newest value no younger than {@code t}. */
    public OptionalDouble valueAt(double t) {
        int after = firstAfter(t);
        return after == from ? OptionalDouble.empty() : OptionalDouble.of(values[after - 1]);
    }

    /** Time of the newest point whose value is at least {@code value}. */
    public OptionalDouble latestAtLeast(double value) {
        for (int i = to - 1; i >= from; i--) {
            if (values[i] >= value) {
                return OptionalDouble.of(times[i]);
            }
        }
        return OptionalDouble.empty();
    }

    /** Time of the newest point whose value is at most {@code value}. */
    public OptionalDouble latestAtMost(double value) {
        for (int i = to - 1; i >= from; i--) {
            if (values[i] <= value) {
                return OptionalDouble.of(times[i]);
            }
        }
        return OptionalDouble.empty();
    }

    /** A line through the points since {@code sinceT}, if they cover at least half of that time; {@code near} is likely to be like it. */
    public Optional<RobustLine> lineSince(double sinceT, double nowT, Optional<RobustLine> near) {
        int first = firstSince(sinceT);
        if (first >= to || times[to - 1] - times[first] < (nowT - sinceT) / 2) {
            return Optional.empty();
        }
        return RobustLine.through(times, values, first, to, nowT, near, slopes, added - (to - first));
    }

    private int firstAfter(double untilT) {
        return firstSince(Math.nextUp(untilT));
    }
}
