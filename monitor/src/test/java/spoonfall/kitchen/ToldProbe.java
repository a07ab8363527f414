package spoonfall.kitchen;

import org.jspecify.annotations.Nullable;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Reading;

/** A thermometer that says what the test tells it to, a second each, at once. */
public final class ToldProbe implements Probe {
    private final String name;
    private final double wobbleC;
    private final long startNanos = System.nanoTime();
    private volatile @Nullable ProbeListener listener;
    private int atS;

    /**
     * A thermometer that has said nothing yet.
     *
     * @param name as the kitchen calls it
     * @param wobbleC how far its readings sway about what it is told
     */
    public ToldProbe(String name, double wobbleC) {
        this.name = name;
        this.wobbleC = wobbleC;
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

    /** Says {@code temperatureC} for so many seconds. */
    public void say(double temperatureC, int seconds) {
        ProbeListener hears = listener;
        for (int i = 0; i < seconds && hears != null; i++) {
            atS++;
            double saidC = temperatureC + wobbleC * Math.sin(atS);
            hears.reading(Reading.good(name, startNanos + atS * 1_000_000_000L, saidC, "" + saidC));
        }
    }

    /** Says {@code temperatureC} so many seconds after its beginning. */
    void sayAt(double temperatureC, double seconds) {
        ProbeListener hears = listener;
        if (hears != null) {
            long atNanos = startNanos + Math.round(seconds * 1e9);
            hears.reading(Reading.good(name, atNanos, temperatureC, "" + temperatureC));
        }
    }

    /** Is plugged in. */
    void find(String description) {
        ProbeListener hears = listener;
        if (hears != null) {
            hears.found(name, description, startNanos);
        }
    }

    /** Is unplugged. */
    public void lose() {
        ProbeListener hears = listener;
        if (hears != null) {
            hears.lost(name, name + " was unplugged", startNanos);
        }
    }
}
