package spoonfall.kitchen.afternoon;

import java.time.Instant;

/** The seconds of an afternoon on the kitchen's clock, which never go back, and its beginning on the wall's. */
final class AfternoonClock {
    private final long originNanos;
    private Instant startedAt;
    private double t;

    /** A clock at second 0, which was at {@code originNanos} on the kitchen's clock. */
    AfternoonClock(long originNanos, Instant startedAt) {
        this.originNanos = originNanos;
        this.startedAt = startedAt;
    }

    /** The wall clock at second 0. */
    Instant startedAt() {
        return startedAt;
    }

    /** How many seconds after second 0 something was. */
    double secondsAt(long atNanos) {
        return (atNanos - originNanos) / 1e9;
    }

    /** Now, in seconds of the afternoon. */
    double now(long atNanos) {
        return reached(secondsAt(atNanos));
    }

    /** It is that second at least; answers with now. */
    double reached(double atT) {
        t = Math.max(t, atT);
        return t;
    }

    /** The latest second that it came to. */
    double latestT() {
        return t;
    }

    /** The wall clock was set by so many milliseconds. */
    void wallSet(long byMillis) {
        startedAt = startedAt.plusMillis(byMillis);
    }
}
