package spoonfall.probe;

/**
 * Hears what a {@link Probe} has to say. Called on the probe's own thread, one call at a time;
 * implementations hand over and return at once.
 */
public interface ProbeListener {
    /** A reading, good or bad. Instants never run backwards within one probe. */
    void reading(Reading reading);

    /**
     * The device is there and its bytes are understood.
     *
     * @param probe name of the probe
     * @param description one sentence saying where it is and how it is read, and why it was so
     *     recognised
     * @param atNanos monotonic instant
     */
    void found(String probe, String description, long atNanos);

    /**
     * The device went away, or cannot be opened or understood. Said once until the next {@link
     * #found}, or again when the reason changes.
     *
     * @param probe name of the probe
     * @param trouble one line naming the port, what is wrong and the way out
     * @param atNanos monotonic instant
     */
    void lost(String probe, String trouble, long atNanos);

    /** The probe has nothing more to say, as at the end of a recorded trace. */
    void ended(String probe, long atNanos);
}
