package spoonfall.browser;

import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** Says parts of a trace, or whatever it is told, at once and only when it is told to: the cook's time is the test's. */
final class SteppedProbe implements Probe {
    private final Trace trace;
    private final long startNanos;
    private volatile @Nullable ProbeListener listener;
    private int row;
    private double extraS;
    private double t;

    SteppedProbe(Trace trace, LongSupplier nanoClock) {
        this.trace = trace;
        startNanos = nanoClock.getAsLong();
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
    public void start(ProbeListener newListener) {
        listener = newListener;
        newListener.found(name(), "/dev/ttyUSB0: a trace", startNanos);
    }

    @Override
    public void close() {
        listener = null;
    }

    /** Goes on with the trace up to its second {@code untilS}; what was told in between comes on top. */
    void play(double untilS) {
        for (; row < trace.size() && trace.elapsedS(row) < untilS; row++) {
            t = trace.elapsedS(row) + extraS;
            say(trace.temperatureC(row).orElseThrow());
        }
    }

    /** Goes from {@code fromC} to {@code toC} within so many seconds. */
    void glide(double fromC, double toC, int seconds) {
        for (int i = 1; i <= seconds; i++) {
            t++;
            extraS++;
            say(fromC + (toC - fromC) * i / seconds);
        }
    }

    /** When it spoke last, on its clock. */
    long atNanos() {
        return startNanos + Math.round(t * 1e9);
    }

    private void say(double temperatureC) {
        ProbeListener hears = listener;
        if (hears != null) {
            hears.reading(Reading.good(name(), atNanos(), temperatureC, "" + temperatureC));
        }
    }
}
