package spoonfall.kitchen.clock;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A monotonic clock that goes on while the machine sleeps, as Java's own does not on Linux: a pan goes on cooking beside a
 * laptop that was shut. Also says when somebody set the wall clock. Used by any thread.
 */
public final class AwakeClock implements LongSupplier {
    private static final Logger LOG = LoggerFactory.getLogger(AwakeClock.class);
    private static final Path UPTIME = Path.of("/proc/uptime");

    /** How long a sleep lasts at least; less is the coarseness of the system's own count. */
    private static final long SHORTEST_NANOS = TimeUnit.SECONDS.toNanos(2);

    private static final long LOOKS_EVERY_NANOS = TimeUnit.SECONDS.toNanos(1);

    /** The wall clock, which costs little to read, goes on in a sleep too: by so much apart, the system's count is asked at once. */
    private static final long APART_MILLIS = 500;

    private final LongSupplier nanoTime;
    private final Supplier<OptionalDouble> uptimeS;
    private final InstantSource wallClock;
    private final long wallMinusMillis;
    private long aheadNanos;
    private long lookedNanos;
    private long sleptNanos;
    private long apartMillis;

    /**
     * A clock made of others.
     *
     * @param nanoTime monotonic, and may stand still while the machine sleeps
     * @param uptimeS for how many seconds the system has run, sleep and all; empty if it does not say
     * @param wallClock the time of day
     */
    public AwakeClock(LongSupplier nanoTime, Supplier<OptionalDouble> uptimeS, InstantSource wallClock) {
        this.nanoTime = nanoTime;
        this.uptimeS = uptimeS;
        this.wallClock = wallClock;
        lookedNanos = nanoTime.getAsLong();
        aheadNanos = ahead(lookedNanos, lookedNanos);
        apartMillis = apartMillis(lookedNanos);
        wallMinusMillis = wallMillis();
    }

    /** The clocks of this machine; says so if a sleep of it will not be noticed. */
    public static AwakeClock ofSystem() {
        blind(System.getProperty("os.name", ""), uptimeS()).ifPresent(LOG::warn);
        return new AwakeClock(System::nanoTime, AwakeClock::uptimeS, InstantSource.system());
    }

    /**
     * Why a sleep will not be noticed, where it ought to be.
     *
     * @param system what the operating system is called
     * @param uptimeS for how many seconds it has run; empty if it does not say
     */
    static Optional<String> blind(String system, OptionalDouble uptimeS) {
        return uptimeS.isEmpty() && system.startsWith("Linux")
                ? Optional.of(UPTIME
                        + " cannot be read: if this computer sleeps, Spoonfall does not notice, and takes the time for"
                        + " shorter than it was. Let it read that file")
                : Optional.empty();
    }

    private static OptionalDouble uptimeS() {
        try {
            return OptionalDouble.of(Double.parseDouble(Files.readString(UPTIME).split(" ", 2)[0]));
        } catch (IOException | NumberFormatException e) {
            return OptionalDouble.empty(); // not Linux: there Java's own clock has to do
        }
    }

    @Override
    public synchronized long getAsLong() {
        long now = nanoTime.getAsLong();
        long apart = apartMillis(now);
        if (now - lookedNanos >= LOOKS_EVERY_NANOS || Math.abs(apart - apartMillis) >= APART_MILLIS) {
            apartMillis = apart;
            look(now);
        }
        return now + sleptNanos;
    }

    private long apartMillis(long now) {
        return wallClock.millis() - TimeUnit.NANOSECONDS.toMillis(now);
    }

    private void look(long now) {
        long ahead = ahead(now, lookedNanos);
        lookedNanos = now;
        long more = ahead - aheadNanos;
        if (more >= SHORTEST_NANOS) {
            sleptNanos += more;
        }
        aheadNanos = ahead;
    }

    /** How far the system's count is ahead of the other clock, in nanoseconds; what it was if the system does not say. */
    private long ahead(long now, long before) {
        OptionalDouble uptime = uptimeS.get();
        if (uptime.isPresent()) {
            return (long) (uptime.getAsDouble() * 1e9) - now;
        }
        return now == before ? 0 : aheadNanos;
    }

    /** For how many nanoseconds the machine slept since this clock began. */
    synchronized long sleptNanos() {
        getAsLong();
        return sleptNanos;
    }

    /** By how many milliseconds the wall clock was set since this clock began; a little more or less for its own drift. */
    synchronized long wallSetMillis() {
        return wallMillis() - wallMinusMillis;
    }

    private long wallMillis() {
        long now = getAsLong(); // asks after a sleep first, which is no setting of the clock
        return wallClock.millis() - TimeUnit.NANOSECONDS.toMillis(now);
    }
}
