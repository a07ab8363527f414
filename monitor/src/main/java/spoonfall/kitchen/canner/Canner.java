package spoonfall.kitchen.canner;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** The thermometer in the canner, kept apart from every pan: no cook is measured by it. Used by any thread. */
public final class Canner implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Canner.class);

    /** How old a temperature may be to be shown (common practice, no source). */
    private static final long FRESH_NANOS = TimeUnit.SECONDS.toNanos(10);

    private final Probe probe;
    private final LongSupplier nanoClock;
    private final Thermometry thermometry;
    private final Thermometer thermometer;
    private final List<CannerListener> listeners = new CopyOnWriteArrayList<>();
    private OptionalDouble latestC = OptionalDouble.empty();
    private long latestNanos;

    /**
     * How the canner's thermometer is.
     *
     * @param probe its name
     * @param state whether it is heard
     * @param detail one sentence for people; may be empty
     * @param temperatureC in °C; empty when nothing fresh is known
     */
    public record Seen(String probe, ProbeState.State state, String detail, OptionalDouble temperatureC) {}

    /**
     * A canner whose thermometer has not started.
     *
     * @param opener opens its one probe
     * @param nanoClock the monotonic clock of our own time
     * @param thermometry what is known of the thermometer
     */
    public Canner(Function<LongSupplier, Probe> opener, LongSupplier nanoClock, Thermometry thermometry) {
        this.probe = opener.apply(nanoClock);
        this.nanoClock = nanoClock;
        this.thermometry = thermometry;
        this.thermometer = new Thermometer(probe, thermometry);
    }

    /** Adds a listener, which hears whatever comes from now on. */
    public void listen(CannerListener listener) {
        listeners.add(listener);
    }

    /** How it is now. */
    public synchronized Seen seen() {
        boolean fresh = latestC.isPresent() && nanoClock.getAsLong() - latestNanos <= FRESH_NANOS;
        boolean silent = thermometer.state() == ProbeState.State.READING && !fresh;
        ProbeState.State state = silent ? ProbeState.State.SILENT : thermometer.state();
        boolean shown = fresh && state == ProbeState.State.READING;
        return new Seen(probe.name(), state, thermometer.detail(), shown ? latestC : OptionalDouble.empty());
    }

    /** The clock by which its readings are stamped. */
    public LongSupplier clock() {
        return nanoClock;
    }

    /** Starts hearing its thermometer. */
    public void start() {
        probe.start(new Ear());
    }

    @Override
    public void close() {
        probe.close();
    }

    private synchronized Reading heard(Reading raw) {
        Reading reading = thermometer.corrected(raw);
        if (reading.quality() == Quality.GOOD) {
            latestC = reading.temperatureC();
            latestNanos = nanoClock.getAsLong();
            thermometer.becomes(ProbeState.State.READING);
        }
        return reading;
    }

    private synchronized void becomes(ProbeState.State state, String detail) {
        thermometer.becomes(state, detail);
    }

    private synchronized void found(Optional<String> identity, String description) {
        identity.ifPresent(thermometer::identify);
        String detail =
                thermometer.bookTrouble().map(why -> description + " " + why).orElse(description);
        thermometer.becomes(ProbeState.State.WAITING, detail);
    }

    /** Hears the probe, on the probe's thread, and hands over. */
    private final class Ear implements ProbeListener {
        @Override
        public void reading(Reading raw) {
            Reading reading = heard(raw);
            listeners.forEach(listener -> listener.reading(reading));
        }

        @Override
        public void found(String name, String description, long atNanos) {
            LOG.info("{}: {}", name, description);
            Canner.this.found(thermometry.identity().apply(name), description);
        }

        @Override
        public void lost(String name, String trouble, long atNanos) {
            LOG.warn("{}: {}", name, trouble);
            becomes(ProbeState.State.LOST, trouble);
            listeners.forEach(listener -> listener.lost(trouble));
        }

        @Override
        public void ended(String name, long atNanos) {
            String over = "The recording is over.";
            becomes(ProbeState.State.ENDED, over);
            listeners.forEach(listener -> listener.lost(over));
        }
    }
}
