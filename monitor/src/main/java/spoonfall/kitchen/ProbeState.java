package spoonfall.kitchen;

import java.util.Locale;

/**
 * How the probe is.
 *
 * @param name as the kitchen calls it
 * @param place where it is, such as a port's path
 * @param state in one word
 * @param detail in one sentence; may be empty
 */
public record ProbeState(String name, String place, State state, String detail) {
    /** How a probe is, in one word. */
    public enum State {
        /** Never heard yet. */
        WAITING,
        /** Its readings come. */
        READING,
        /** Nothing readable has come of late. */
        SILENT,
        /** The device is gone, cannot be opened or is not understood. */
        LOST,
        /** A recorded trace is over. */
        ENDED;

        /** The name on the wire, such as {@code reading}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    ProbeState with(State newState, String newDetail) {
        return new ProbeState(name, place, newState, newDetail);
    }

    ProbeState with(State newState) {
        return with(newState, detail);
    }
}
