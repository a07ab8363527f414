package spoonfall.kitchen.clock;

import java.util.OptionalLong;
import java.util.function.LongSupplier;

/** Notices that the machine slept or that its wall clock was set, each once. Used by one thread alone. */
public final class ClockWatch {
    /** Less is a clock that is kept right; nobody sees it. */
    private static final long LEAST_SET_MILLIS = 60_000;

    private final LongSupplier clock;
    private long sleptNanos;
    private long setMillis;

    /** Watches a clock, if it is one that says such things. */
    public ClockWatch(LongSupplier clock) {
        this.clock = clock;
        if (clock instanceof AwakeClock awake) {
            sleptNanos = awake.sleptNanos();
            setMillis = awake.wallSetMillis();
        }
    }

    /** For how many seconds the machine slept since this was last asked. */
    public double sleptS() {
        if (!(clock instanceof AwakeClock awake)) {
            return 0;
        }
        long before = sleptNanos;
        sleptNanos = awake.sleptNanos();
        return (sleptNanos - before) / 1e9;
    }

    /** By how many milliseconds the wall clock was set since this was last asked; empty if it was not. */
    public OptionalLong wallClockSet() {
        if (!(clock instanceof AwakeClock awake)) {
            return OptionalLong.empty();
        }
        long by = awake.wallSetMillis() - setMillis;
        setMillis += by;
        return Math.abs(by) >= LEAST_SET_MILLIS ? OptionalLong.of(by) : OptionalLong.empty();
    }
}
