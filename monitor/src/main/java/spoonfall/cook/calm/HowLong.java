package spoonfall.cook.calm;

/**
 * How long until something, in whole minutes and no more precisely than it is known.
 *
 * @param least the same as {@code most} where one number says it; 0 when it may be any moment now
 * @param most the most, not less than {@code least}; {@link #UNKNOWN} when nobody can say
 */
public record HowLong(long least, long most) {
    /** As many minutes as nobody can say. */
    public static final long UNKNOWN = Long.MAX_VALUE;

    /** Validates the order. */
    public HowLong {
        if (least < 0 || most < least) {
            throw new IllegalArgumentException("how long is out of order: " + least + ", " + most);
        }
    }

    static HowLong about(long minutes) {
        return new HowLong(minutes, minutes);
    }

    static HowLong moreThan(long minutes) {
        return new HowLong(minutes, UNKNOWN);
    }

    /** Whether it is only known that it is more than the least. */
    public boolean isOpen() {
        return most == UNKNOWN;
    }

    /** Whether nobody can say yet. */
    public boolean isUnknown() {
        return isOpen() && least == 0;
    }

    /** Whether it is only known to lie between two numbers. */
    public boolean isRange() {
        return least < most;
    }

    /** Whole minutes: 0 when it is any moment now. */
    public static long minutes(double s) {
        return s < 40 ? 0 : Math.max(1, Math.round(s / 60));
    }
}
