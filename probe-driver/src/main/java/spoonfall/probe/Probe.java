package spoonfall.probe;

/**
 * A thermometer: something that gives readings, one after another, until it is closed.
 *
 * <p>A probe is started once and closed once. It owns one thread, named {@code probe-NAME}, on which
 * it calls its listener; probes on one line share theirs, named {@code probe-NAME+NAME}, and one that is read by hand
 * is heard on the thread that types.
 * Losing the device never ends a probe: it says so once and looks for the device until it is back or
 * the probe is closed.
 */
public interface Probe extends AutoCloseable {
    /** Name of the probe, as the kitchen calls it. */
    String name();

    /** Where it is, for people: a port's path or a file's name. */
    String place();

    /**
     * Starts reading.
     *
     * @param listener hears readings and changes, on the probe's thread
     * @throws IllegalStateException if it was started or closed before
     */
    void start(ProbeListener listener);

    /**
     * Stops reading and frees the device. Returns when the probe's thread has ended, or goes on for other probes on
     * the same line only; its listener is not called any more. May be called again.
     */
    @Override
    void close();
}
