package spoonfall.alarm;

/** Whether what an alarm warns of is so at one instant. */
public enum Condition {
    /** It is so. */
    PRESENT,
    /** It is within the deadband: neither begins an alarm nor ends one. */
    UNDECIDED,
    /** It is not so. */
    ABSENT;

    /**
     * Compares a value that is too high with its limit.
     *
     * @param value what is measured
     * @param limit at or above it the condition is present
     * @param deadband at or below {@code limit - deadband} it is absent; same unit, not negative
     */
    public static Condition above(double value, double limit, double deadband) {
        if (value >= limit) {
            return PRESENT;
        }
        return value > limit - deadband ? UNDECIDED : ABSENT;
    }

    /** {@link #PRESENT} or {@link #ABSENT}. */
    public static Condition when(boolean present) {
        return present ? PRESENT : ABSENT;
    }
}
