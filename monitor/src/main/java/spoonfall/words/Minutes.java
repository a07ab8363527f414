package spoonfall.words;

import spoonfall.cook.calm.HowLong;

/** Says a time ahead in words. */
final class Minutes {
    private static final long HOURS_FROM = 150;

    private Minutes() {}

    /** Such as "in about 9 minutes"; {@code s} seconds from now. */
    static String in(double s) {
        return about(HowLong.minutes(s));
    }

    /** The same, or "in 15 to 25 minutes" when that would be a guess, or "in more than 5 minutes" when even that is. */
    static String in(HowLong howLong) {
        if (howLong.isUnknown()) {
            return "too early to say";
        }
        if (howLong.isOpen()) {
            return "in more than " + howLong.least() + " minutes";
        }
        if (!howLong.isRange()) {
            return about(howLong.least());
        }
        return howLong.least() == 0
                ? "within " + howLong.most() + " minutes"
                : "in " + howLong.least() + " to " + howLong.most() + " minutes";
    }

    private static String about(long minutes) {
        if (minutes == 0) {
            return "any moment now";
        }
        if (minutes >= HOURS_FROM) {
            return "in about " + Math.round(minutes / 60.0) + " hours";
        }
        return minutes == 1 ? "in about a minute" : "in about " + minutes + " minutes";
    }
}
