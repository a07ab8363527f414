package spoonfall.kitchen.thermometer;

import java.util.Locale;
import java.util.Optional;

/**
 * How the probe is.
 *
 * @param name as the kitchen calls it
 * @param place where it is, such as a port's path
 * @param state in one word
 * @param detail in one sentence; may be empty
 * @param calibration what makes its readings true; empty if it was never calibrated
 * @param calibrationDue why it ought to be checked, with marks for units; empty if it need not be
 */
public record ProbeState(
        String name,
        String place,
        State state,
        String detail,
        Optional<Calibrated> calibration,
        Optional<String> calibrationDue) {
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
}
