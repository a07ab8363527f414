package spoonfall.series;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * The slopes between the points of a track. Lines are laid through nearly the same points again and again, and the slope between two
 * of them stays what it is: it is worked out once, for the first line through both.
 */
final class PairSlopes {
    private static final int NOBODY = -1;

    /** Of each point the slopes to the earlier ones, the nearest first; a point finds its row by its number. */
    private double[][] rows = new double[0][];

    private int[] numbers = new int[0];
    private int[] known = new int[0];
    private double[] all = new double[0];

    /**
     * The median of the slopes of all pairs of the points {@code from} to {@code to} (exclusive), which are ordered by x; empty if there
     * is none.
     *
     * @param number of the first of them: a point keeps its own as long as it is remembered, and the next has one more
     * @param low what the median is likely to be above, and {@code high} below: it is found sooner then
     */
    OptionalDouble median(double[] x, double[] y, int from, int to, int number, double low, double high) {
        if (rows.length < to - from) {
            makeRoom(2 * (to - from));
        }
        int count = 0;
        int at = number % rows.length;
        for (int i = from + 1; i < to; i++) {
            at = at + 1 == rows.length ? 0 : at + 1;
            if (numbers[at] != number + i - from) {
                numbers[at] = number + i - from;
                known[at] = 0;
            }
            int end = i;
            while (end > from && x[end - 1] == x[i]) {
                end--;
            }
            double[] row = rows[at];
            for (; known[at] < end - from; known[at]++) {
                int earlier = end - 1 - known[at];
                row[known[at]] = (y[i] - y[earlier]) / (x[i] - x[earlier]);
            }
            System.arraycopy(row, 0, all, count, end - from);
            count += end - from;
        }
        return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(Selection.median(all, count, low, high));
    }

    /** Room for so many numbers; what is in it is of no use to anybody once a median is asked for. */
    double[] room(int count) {
        if (all.length < count) {
            all = new double[count];
        }
        return all;
    }

    private void makeRoom(int points) {
        rows = new double[points][points];
        numbers = new int[points];
        known = new int[points];
        Arrays.fill(numbers, NOBODY);
        all = new double[points * (points - 1) / 2];
    }
}
