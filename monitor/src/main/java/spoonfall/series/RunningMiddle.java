package spoonfall.series;

import java.util.Arrays;

/** The mean of the middle half of the latest values of a track, again and again: they are kept in order as they come and go. */
final class RunningMiddle {
    private double[] ordered = new double[16];

    /** The values in order are those numbered from here... */
    private int first;

    /** ...to here, exclusive. */
    private int end;

    /**
     * The mean of the middle half of the values {@code from} to {@code to} (exclusive), at least one, all finite.
     *
     * @param oldest where the oldest value is that is still remembered
     * @param number of the first of them: a value keeps its own as long as it is remembered, and the next has one more
     */
    double of(double[] values, int oldest, int from, int to, int number) {
        int isEnd = number + to - from;
        boolean goesOn = number >= first && number < end && isEnd >= end && number - first <= from - oldest;
        if (!goesOn) {
            first = number;
            end = number;
        }
        for (; first < number; first++) {
            takeOut(values[from + first - number]);
        }
        if (ordered.length < to - from) {
            ordered = Arrays.copyOf(ordered, 2 * (to - from));
        }
        for (; end < isEnd; end++) {
            putIn(values[from + end - number]);
        }
        return MiddleHalf.meanOfOrdered(ordered, to - from);
    }

    private void takeOut(double value) {
        int at = 0;
        while (ordered[at] != value) {
            at++;
        }
        for (int last = end - first - 1; at < last; at++) {
            ordered[at] = ordered[at + 1];
        }
    }

    private void putIn(double value) {
        int at = end - first;
        for (; at > 0 && ordered[at - 1] > value; at--) {
            ordered[at] = ordered[at - 1];
        }
        ordered[at] = value;
    }
}
