package spoonfall.log;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.OptionalDouble;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** A trace run through a monitor of its own, row by row. */
public final class TraceReplay {
    private static final String PROBE = "pan";

    private final Trace trace;
    private final CookMonitor monitor;
    private int row;

    /** A replay of {@code trace}, measured against {@code settings}, that has not begun. */
    public TraceReplay(Trace trace, CookSettings settings) {
        this(trace, settings, ProbeTrust.unchecked(PROBE));
    }

    /** A replay of {@code trace} as if it came from a thermometer of which that is known. */
    public TraceReplay(Trace trace, CookSettings settings, ProbeTrust probe) {
        this.trace = trace;
        monitor = new CookMonitor(settings, 0, List.of(probe));
    }

    /** Whether there is another row. */
    public boolean hasNext() {
        return row < trace.size();
    }

    /** Seconds since the trace began, of the next row. */
    public double nextS() {
        return trace.elapsedS(row);
    }

    /** Takes the next row and returns what came of it. */
    public List<CookEvent> next() {
        if (!hasNext()) {
            throw new NoSuchElementException("the trace is over");
        }
        long atNanos = Math.round(trace.elapsedS(row) * 1e9);
        OptionalDouble temperatureC = trace.temperatureC(row);
        row++;
        return temperatureC.isPresent()
                ? monitor.accept(Reading.good(PROBE, atNanos, temperatureC.getAsDouble(), ""))
                : monitor.advanceTo(atNanos);
    }

    /** The monitor as it stands. */
    public CookMonitor monitor() {
        return monitor;
    }
}
