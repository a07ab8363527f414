package spoonfall.probe.trace;

import java.util.OptionalDouble;
import java.util.function.LongSupplier;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.ProbeThread;
import spoonfall.probe.Reading;

/**
 * Plays a recorded cook: each reading comes when the clock reaches its time, stamped with exactly that time.
 * The clock decides the pace; one that runs twenty times as fast plays twenty times as fast.
 */
public final class TraceProbe implements Probe {
    private static final long LOOK_EVERY_MILLIS = 10;

    private final String name;
    private final String place;
    private final Trace trace;
    private final LongSupplier nanoClock;
    private final ProbeThread thread;

    /**
     * A probe that has not started.
     *
     * @param name as the kitchen calls it
     * @param place the trace's file, for people
     * @param trace what it plays
     * @param nanoClock the clock of the cook, in nanoseconds
     */
    public TraceProbe(String name, String place, Trace trace, LongSupplier nanoClock) {
        this.name = name;
        this.place = place;
        this.trace = trace;
        this.nanoClock = nanoClock;
        thread = new ProbeThread(name);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String place() {
        return place;
    }

    @Override
    public void start(ProbeListener listener) {
        thread.start(() -> run(listener));
    }

    @Override
    public void close() {
        thread.close(() -> {});
    }

    private void run(ProbeListener hears) {
        long startNanos = nanoClock.getAsLong();
        hears.found(name, "a recorded cook, " + place, startNanos);
        for (int i = 0; i < trace.size(); i++) {
            long dueNanos = startNanos + Math.round(trace.elapsedS(i) * 1e9);
            if (!waitUntil(dueNanos)) {
                return;
            }
            OptionalDouble temperatureC = trace.temperatureC(i);
            if (temperatureC.isPresent()) {
                double value = temperatureC.getAsDouble();
                hears.reading(Reading.good(name, dueNanos, value, Double.toString(value)));
            }
        }
        hears.ended(name, startNanos + Math.round(trace.lastS() * 1e9));
    }

    /** Whether the time came before the probe was closed. */
    private boolean waitUntil(long dueNanos) {
        while (nanoClock.getAsLong() - dueNanos < 0) {
            if (!thread.pause(LOOK_EVERY_MILLIS)) {
                return false;
            }
        }
        return !thread.closing();
    }
}
