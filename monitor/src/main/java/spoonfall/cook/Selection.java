package spoonfall.cook;

/** Finds values by their rank without putting all in order: Hoare's selection (1961), the pivot the middle of three. */
final class Selection {
    private Selection() {}

    /** The middle of the first {@code count} values, at least one, all finite; they are left in another order. */
    static double median(double[] values, int count) {
        int middle = count / 2;
        double upper = ofRank(values, count, middle);
        if (count % 2 == 1) {
            return upper;
        }
        double lower = values[0];
        for (int i = 1; i < middle; i++) {
            lower = Math.max(lower, values[i]);
        }
        return (lower + upper) / 2;
    }

    /** The value that has {@code rank} others before it; those before it in the array are no larger. */
    private static double ofRank(double[] values, int count, int rank) {
        int low = 0;
        int high = count - 1;
        while (low < high) {
            double pivot = middleOf(values[low], values[(low + high) >>> 1], values[high]);
            int left = low;
            int right = high;
            while (left <= right) {
                while (values[left] < pivot) {
                    left++;
                }
                while (values[right] > pivot) {
                    right--;
                }
                if (left <= right) {
                    double swapped = values[left];
                    values[left++] = values[right];
                    values[right--] = swapped;
                }
            }
            if (rank <= right) {
                high = right;
            } else if (rank >= left) {
                low = left;
            } else {
                return values[rank];
            }
        }
        return values[rank];
    }

    private static double middleOf(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
