package spoonfall.probe.hand;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.ProbeThread;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/**
 * A thermometer without a cable: somebody reads it and types what it shows. Its readings are heard on the thread that
 * types them, one at a time, before {@link #type} returns; its own thread says only that it is there.
 */
public final class HandProbe implements Probe {
    /** Where it is, for people. */
    public static final String PLACE = "typed by hand";

    private static final long LOOK_EVERY_MILLIS = 60_000;

    private final String name;
    private final LongSupplier nanoClock;
    private final ProbeThread thread;
    private final AtomicReference<@Nullable ProbeListener> listener = new AtomicReference<>();

    /**
     * A probe that has not started.
     *
     * @param name as the kitchen calls it
     * @param nanoClock the monotonic clock that stamps readings
     */
    public HandProbe(String name, LongSupplier nanoClock) {
        this.name = name;
        this.nanoClock = nanoClock;
        thread = new ProbeThread(name);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String place() {
        return PLACE;
    }

    @Override
    public void start(ProbeListener hears) {
        thread.start(() -> {
            hears.found(name, PLACE + ": type what the thermometer shows every minute or two", nanoClock.getAsLong());
            listener.set(hears);
            while (thread.pause(LOOK_EVERY_MILLIS)) {
                // nothing comes by itself
            }
        });
    }

    /**
     * Takes what somebody typed, as of now.
     *
     * @param temperatureC in °C
     * @param text what was typed, for the record
     * @return the reading; empty while the probe is not started yet or closed, and then nobody has heard it
     */
    public synchronized Optional<Reading> type(double temperatureC, String text) {
        ProbeListener hears = listener.get();
        if (hears == null) {
            return Optional.empty();
        }
        long atNanos = nanoClock.getAsLong();
        Quality quality = Reading.qualityOf(temperatureC);
        Reading reading = quality == Quality.GOOD
                ? Reading.good(name, atNanos, temperatureC, text)
                : Reading.bad(name, atNanos, text, quality);
        hears.reading(reading);
        return Optional.of(reading);
    }

    @Override
    public void close() {
        listener.set(null);
        thread.close(() -> {});
    }
}
