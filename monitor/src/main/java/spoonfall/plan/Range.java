package spoonfall.plan;

/**
 * A figure with its doubt: nine in ten lie between {@code low} and {@code high}.
 *
 * @param low one in twenty is less
 * @param middle the best guess
 * @param high one in twenty is more
 */
public record Range(double low, double middle, double high) {
    /** A normal distribution has nine in ten within so many standard deviations. */
    private static final double NINE_IN_TEN = 1.645;

    /** Refuses what is out of order or no number. */
    public Range {
        if (!(low <= middle && middle <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
            throw new IllegalArgumentException(
                    "a range goes from low to high, not " + low + ", " + middle + ", " + high);
        }
    }

    /** A figure whose doubt is the same on both sides, but which is never less than nothing. */
    static Range about(double middle, double doubt) {
        double away = NINE_IN_TEN * Math.abs(doubt);
        return new Range(Math.min(middle, Math.max(0, middle - away)), middle, middle + away);
    }

    /** A figure that is as easily so many times too large as too small. */
    static Range within(double middle, double relativeDoubt) {
        double times = Math.exp(NINE_IN_TEN * Math.abs(relativeDoubt));
        return new Range(middle / times, middle, middle * times);
    }
}
