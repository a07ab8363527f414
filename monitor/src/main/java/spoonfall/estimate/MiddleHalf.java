package spoonfall.estimate;

import java.util.Arrays;

/** The mean of the middle half: one wild value never counts, and values between a thermometer's steps are found. */
public final class MiddleHalf {
    private MiddleHalf() {}

    /**
     * The mean of the middle half of the first {@code count} values, which are put in order.
     *
     * @param count at least 1
     */
    public static double mean(double[] values, int count) {
        Arrays.sort(values, 0, count);
        int cut = count / 4;
        double sum = 0;
        for (int i = cut; i < count - cut; i++) {
            sum += values[i];
        }
        return sum / (count - 2 * cut);
    }
}
