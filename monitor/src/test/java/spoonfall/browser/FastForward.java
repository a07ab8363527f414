package spoonfall.browser;

import java.util.function.LongSupplier;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** Says the first part of a trace all at once, and then nothing: the cook stands still where it is to be seen. */
final class FastForward implements Probe {
    private final Trace trace;
    private final double untilS;
    private final boolean thenLost;
    private final LongSupplier nanoClock;

    FastForward(Trace trace, double untilS, boolean thenLost, LongSupplier nanoClock) {
        this.trace = trace;
        this.untilS = untilS;
        this.thenLost = thenLost;
        this.nanoClock = nanoClock;
    }

    @Override
    public String name() {
        return "pan";
    }

    @Override
    public String place() {
        return "/dev/ttyUSB0";
    }

    @Override
    public void start(ProbeListener listener) {
        long start = nanoClock.getAsLong();
        listener.found(name(), "/dev/ttyUSB0: a trace", start);
        for (int i = 0; i < trace.size() && trace.elapsedS(i) < untilS; i++) {
            long at = start + Math.round(trace.elapsedS(i) * 1e9);
            trace.temperatureC(i).ifPresent(c -> listener.reading(Reading.good(name(), at, c, Double.toString(c))));
        }
        if (thenLost) {
            listener.lost(name(), "/dev/ttyUSB0 was unplugged. Plug it in again; I keep looking.", start);
        }
    }

    @Override
    public void close() {
        // nothing is open
    }
}
