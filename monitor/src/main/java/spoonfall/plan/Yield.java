package spoonfall.plan;

import java.util.Locale;

/** What a batch filled, beside what was planned. */
public final class Yield {
    /** Who fills whole jars may be almost one off. */
    private static final double PART_OF_A_JAR = 0.5;

    private Yield() {}

    /**
     * Says so in two sentences.
     *
     * @param planned how many jars
     * @param many what they are called, such as "half-pint jars"
     * @param filled how many were
     */
    public static String words(Range planned, String many, int filled) {
        String beside = String.format(
                Locale.ROOT,
                "You filled %d; %.1f %s were planned (%.1f to %.1f).",
                filled,
                planned.middle(),
                many,
                planned.low(),
                planned.high());
        if (filled > planned.high() + PART_OF_A_JAR) {
            return beside + " That is more than planned: it was taken off thinner, or more went in than was written.";
        }
        if (filled < planned.low() - PART_OF_A_JAR) {
            return beside + " That is less than planned: it was boiled further, less went in, or much was skimmed off.";
        }
        return beside + " That is as planned.";
    }
}
