package spoonfall.words;

/** Says a time ahead no more precisely than it is known. */
final class Minutes {
    private static final double VAGUE_WIDTH_S = 300;
    private static final double VAGUE_SHARE = 0.7;
    private static final double HOURS_FROM_S = 2.5 * 3600;

    private Minutes() {}

    /** Such as "in about 9 minutes"; {@code s} seconds from now. */
    static String in(double s) {
        if (s < 40) {
            return "any moment now";
        }
        if (s >= HOURS_FROM_S) {
            return "in about " + Math.round(s / 3600) + " hours";
        }
        long minutes = Math.max(1, Math.round(s / 60));
        return minutes == 1 ? "in about a minute" : "in about " + minutes + " minutes";
    }

    /** Such as "in about 9 minutes" or, when that would be a guess, "in 15 to 25 minutes". */
    static String in(double s, double lowS, double highS) {
        double widthS = highS - lowS;
        if (widthS <= VAGUE_WIDTH_S || widthS <= VAGUE_SHARE * s) {
            return in(s);
        }
        long low = Math.max(5, 5 * (long) Math.floor(lowS / 300));
        long high = Math.max(low + 5, 5 * (long) Math.ceil(highS / 300));
        return "in " + low + " to " + high + " minutes";
    }
}
