package spoonfall.estimate;

import java.util.Arrays;

/** The mean of the middle half: one wild value never counts, and values between a thermometer's steps are found. */
public final class MiddleHalf {
    private static final int FEW = 16;

    private MiddleHalf() {}

    /**
     * The mean of the middle half of the first {@code count} values, all finite, which are put in order.
     *
     * @param count at least 1
     */
    public static double mean(double[] values, int count) {
        sort(values, count);
        int cut = count / 4;
        double sum = 0;
        for (int i = cut; i < count - cut; i++) {
            sum += values[i];
        }
        return sum / (count - 2 * cut);
    }

    private static void sort(double[] values, int count) {
        if (count > FEW) {
            Arrays.sort(values, 0, count);
            return;
        }
        // By insertion: for a few this is done before the other has looked for what is no number.
        for (int i = 1; i < count; i++) {
            double value = values[i];
            int at = i;
            for (; at > 0 && values[at - 1] > value; at--) {
                values[at] = values[at - 1];
            }
            values[at] = value;
        }
    }
}
