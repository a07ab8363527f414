package spoonfall.food;

/**
 * How much of a food dissolves, as percent of its mass: what counts as solids in a pan.
 *
 * @param low at least, 0 or more
 * @param high at most, up to 100
 */
public record Solubles(double low, double high) {
    /** A range that holds nine in ten is so many standard deviations wide. */
    private static final double NINE_IN_TEN = 2 * 1.645;

    /** Refuses what is no range of percents. */
    public Solubles {
        if (!(low >= 0 && high <= 100 && low <= high)) {
            throw new IllegalArgumentException(
                    "soluble solids must be 0 to 100 %, the lower first, not " + low + " to " + high);
        }
    }

    /** What lies in the middle, in percent. */
    public double middle() {
        return (low + high) / 2;
    }

    /** One standard deviation in percent: the range is taken to hold nine in ten. */
    public double doubt() {
        return (high - low) / NINE_IN_TEN;
    }
}
