package spoonfall.words;

import org.jspecify.annotations.Nullable;

/**
 * What is said of something stays until something else has been so for a while.
 *
 * <p>Not safe for use by several threads.
 */
final class Settled<T> {
    private final double afterS;
    private @Nullable T said;
    private double sinceT;

    /** A change is said after {@code afterS} seconds. */
    Settled(double afterS) {
        this.afterS = afterS;
    }

    /** What to say at {@code t} when {@code now} is so; to be asked in order. */
    T settle(double t, T now) {
        T before = said;
        if (before == null || t - sinceT >= afterS) {
            before = now;
        }
        if (before.equals(now)) {
            sinceT = t;
        }
        said = before;
        return before;
    }
}
