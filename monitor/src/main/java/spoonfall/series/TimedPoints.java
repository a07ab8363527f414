package spoonfall.series;

/** The latest points of a value over time, oldest first, from {@link #from} to {@link #to} (exclusive); what is older than is needed is forgotten. */
abstract class TimedPoints {
    private final double keepS;
    double[] times;
    double[] values;
    int from;
    int to;

    /** Remembers the last {@code keepS} seconds, at first with room for so many points. */
    TimedPoints(double keepS, int room) {
        this.keepS = keepS;
        times = new double[room];
        values = new double[room];
    }

    /** Forgets all of them. */
    public final void clear() {
        from = 0;
        to = 0;
    }

    /** Puts a point after those that are remembered. */
    final void append(double t, double value) {
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

    /** Where the oldest point is that is no older than {@code sinceT}; {@link #to} where there is none. */
    final int firstSince(double sinceT) {
        int low = from;
        int high = to;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (times[middle] >= sinceT) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private void makeRoom() {
        int size = to - from;
        double[] newTimes = size * 2 > times.length ? new double[times.length * 2] : times;
        double[] newValues = newTimes == times ? values : new double[newTimes.length];
        System.arraycopy(times, from, newTimes, 0, size);
        System.arraycopy(values, from, newValues, 0, size);
        times = newTimes;
        values = newValues;
        from = 0;
        to = size;
    }
}
