package spoonfall.series;

/**
 * The latest points of a value over time, as far as they may be the highest since some moment: what a later point reaches is
 * forgotten, so that of a pan that climbs few are left to look through.
 */
public final class Peaks extends TimedPoints {
    private static final int ROOM = 16;

    /** Remembers the last {@code keepS} seconds. */
    public Peaks(double keepS) {
        super(keepS, ROOM);
    }

    /** Takes a point, later than those before. */
    public void add(double t, double value) {
        while (from < to && values[to - 1] <= value) {
            to--;
        }
        append(t, value);
    }

    /** The largest value of all; {@code otherwise} where there is no point. */
    public double highest(double otherwise) {
        return from == to ? otherwise : values[from];
    }

    /** The largest value since {@code sinceT}; {@code otherwise} where there is no point since then. */
    public double highestSince(double sinceT, double otherwise) {
        int first = firstSince(sinceT);
        return first == to ? otherwise : values[first];
    }

    /** Time of the newest point whose value is at least {@code value}; {@code otherwise} where there is none. */
    public double latestAtLeast(double value, double otherwise) {
        int last = to;
        while (last > from && values[last - 1] < value) {
            last--;
        }
        return last == from ? otherwise : times[last - 1];
    }
}
