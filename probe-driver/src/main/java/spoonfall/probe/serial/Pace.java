package spoonfall.probe.serial;

import java.util.concurrent.TimeUnit;

/**
 * When an instrument is asked next: once a second while it answers; when it keeps silent and others wait for their
 * turn on the same line, more and more seldom. Instants are monotonic nanoseconds; only differences have a meaning.
 */
final class Pace {
    /** From one question to the next. */
    static final long PERIOD_NANOS = TimeUnit.SECONDS.toNanos(1);

    /** The longest pause between questions to an instrument that keeps silent. */
    static final long LONGEST_PAUSE_NANOS = TimeUnit.SECONDS.toNanos(10);

    /** How long after its time has run out an answer may still come, and must not be taken for the next one. */
    static final long LATE_NANOS = TimeUnit.SECONDS.toNanos(1);

    private static final int PATIENCE = 3;
    private static final int MOST_DOUBLINGS = 10;

    private final boolean alone;
    private int silences;
    private long dueNanos;

    /** The pace of an instrument, which asking in vain costs nobody anything if it is {@code alone} on its line. */
    Pace(boolean alone) {
        this.alone = alone;
    }

    /** The line was opened: everything is due. */
    void restart(long nowNanos) {
        silences = 0;
        dueNanos = nowNanos;
    }

    /** How long until it is due; nothing or less when it is. */
    long waitNanos(long nowNanos) {
        return dueNanos - nowNanos;
    }

    /** It answered the question of {@code askedNanos}, well or not. */
    void answered(long askedNanos) {
        silences = 0;
        dueNanos = askedNanos + PERIOD_NANOS;
    }

    /** It let the time for the answer to the question of {@code askedNanos} run out. */
    void silent(long askedNanos) {
        silences++;
        dueNanos = askedNanos + pauseNanos();
    }

    /** It is not asked before {@code untilNanos}. */
    void hold(long untilNanos) {
        if (untilNanos - dueNanos > 0) {
            dueNanos = untilNanos;
        }
    }

    private long pauseNanos() {
        if (alone || silences < PATIENCE) {
            return PERIOD_NANOS;
        }
        int doublings = Math.min(silences - PATIENCE + 1, MOST_DOUBLINGS);
        return Math.min(PERIOD_NANOS << doublings, LONGEST_PAUSE_NANOS);
    }
}
