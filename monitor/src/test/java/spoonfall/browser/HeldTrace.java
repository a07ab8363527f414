package spoonfall.browser;

import org.jspecify.annotations.Nullable;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** Says a trace as far as the test lets it, at once, and waits there. */
final class HeldTrace implements Probe {
    private final String name;
    private final Trace trace;
    private final long startNanos = System.nanoTime();
    private volatile @Nullable ProbeListener listener;
    private int next;

    HeldTrace(String name, Trace trace) {
        this.name = name;
        this.trace = trace;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String place() {
        return "/dev/" + name;
    }

    @Override
    public void start(ProbeListener newListener) {
        listener = newListener;
    }

    @Override
    public void close() {
        listener = null;
    }

    /** Goes on until {@code untilS} seconds of the trace. */
    void playUntil(double untilS) {
        ProbeListener hears = listener;
        for (; hears != null && next < trace.size() && trace.elapsedS(next) < untilS; next++) {
            long at = startNanos + Math.round(trace.elapsedS(next) * 1e9);
            trace.temperatureC(next).ifPresent(c -> hears.reading(Reading.good(name, at, c, Double.toString(c))));
        }
    }
}
