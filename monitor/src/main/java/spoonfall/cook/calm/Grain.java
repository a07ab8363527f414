package spoonfall.cook.calm;

/** How precisely a time ahead can be said. What is said how is a judgement, no source. */
enum Grain {
    /** To the minute: "in about 9 minutes". */
    MINUTE,
    /** To five minutes: "in about 20 minutes". */
    FIVE,
    /** By its interval alone: "in 15 to 30 minutes". */
    RANGE;

    private static final double NARROW_S = 300;
    private static final double MINUTE_SHARE = 0.35;
    private static final double FIVE_SHARE = 0.7;

    /** How precisely to say what is {@code s} seconds ahead and known to within {@code widthS} seconds. */
    static Grain of(double s, double widthS) {
        if (widthS <= Math.max(NARROW_S, MINUTE_SHARE * s)) {
            return MINUTE;
        }
        return widthS <= FIVE_SHARE * s ? FIVE : RANGE;
    }
}
