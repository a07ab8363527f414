package spoonfall.cook;

/**
 * The latest points of a value over time, as far as they may be the highest since some moment: what a later point reaches is
 * forgotten, so that of a pan that climbs few are left to look through.
 */
final class Peaks {
    private final double keepS;
    private double[] times = new double[16];
    private double[] values = new double[16];
    private int from;
    private int to;

    /** Remembers the last {@code keepS} seconds. */
    Peaks(double keepS) {
        this.keepS = keepS;
    }

    /** Takes a point, later than those before. */
    void add(double t, double value) {
        while (from < to && values[to - 1] <= value) {
            to--;
        }
        while (from < to && times[from] < t - keepS) {
            from++;
        }
        if (to == times.length) {
            makeRoom();
        }
        times[to] = t;
        values[to] = value;
        to++;
    }

    void clear() {
        from = 0;
        to = 0;
    }

    /** The largest value since {@code sinceT}; {@code otherwise} where there is no point since then. */
    double highestSince(double sinceT, double otherwise) {
        int first = to;
        while (first > from && times[first - 1] >= sinceT) {
            first--;
        }
        return first == to ? otherwise : values[first];
    }

    /** Time of the newest point whose value is at least {@code value}; {@code otherwise} where there is none. */
    double latestAtLeast(double value, double otherwise) {
        int last = to;
        while (last > from && values[last - 1] < value) {
            last--;
        }
        return last == from ? otherwise : times[last - 1];
    }

    private void makeRoom() {
        int size = to - from;
        double[] newTimes = 2 * size > times.length ? new double[2 * times.length] : times;
        double[] newValues = newTimes == times ? values : new double[newTimes.length];
        System.arraycopy(times, from, newTimes, 0, size);
        System.arraycopy(values, from, newValues, 0, size);
        times = newTimes;
        values = newValues;
        from = 0;
        to = size;
    }
}
