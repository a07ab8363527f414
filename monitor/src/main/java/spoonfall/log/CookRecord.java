package spoonfall.log;

import java.util.Arrays;

/**
 * Every reading of one cook as the monitor took it, in memory. At a million readings (more than a day at ten
 * a second) the older half is thinned to every second reading, so that memory has a limit.
 *
 * <p>Not safe for use by several threads.
 */
public final class CookRecord {
    private static final int MOST = 1_000_000;

    private double[] times = new double[4096];
    private double[] temperatures = new double[4096];
    private int size;

    /**
     * Adds a good reading.
     *
     * @param t seconds of the cook; not before the last one
     * @param temperatureC in °C
     */
    public void add(double t, double temperatureC) {
        if (size == MOST) {
            thin();
        }
        if (size == times.length) {
            int larger = Math.min(MOST, 2 * size);
            times = Arrays.copyOf(times, larger);
            temperatures = Arrays.copyOf(temperatures, larger);
        }
        times[size] = t;
        temperatures[size] = temperatureC;
        size++;
    }

    /** Takes the latest reading away. */
    public void removeLast() {
        if (size == 0) {
            throw new IllegalStateException("there is no reading to take away");
        }
        size--;
    }

    /** How many readings it holds. */
    public int size() {
        return size;
    }

    /** Seconds of the cook at reading {@code i}. */
    public double t(int i) {
        return times[i];
    }

    /** Temperature in °C of reading {@code i}. */
    public double temperatureC(int i) {
        return temperatures[i];
    }

    /** A copy of the record as it is now. */
    public CookRecord copy() {
        CookRecord copy = new CookRecord();
        copy.times = Arrays.copyOf(times, Math.max(1, size));
        copy.temperatures = Arrays.copyOf(temperatures, Math.max(1, size));
        copy.size = size;
        return copy;
    }

    private void thin() {
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (i >= size / 2 || i % 2 == 0) {
                times[kept] = times[i];
                temperatures[kept] = temperatures[i];
                kept++;
            }
        }
        size = kept;
    }
}
