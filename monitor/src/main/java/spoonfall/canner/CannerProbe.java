package spoonfall.canner;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What is known of the boil by the thermometer in the canner.
 *
 * @param state whether it is believed
 * @param temperatureC what it shows, in °C; empty when that is old
 * @param heardT when it was last heard; meaningless when it never was
 */
public record CannerProbe(State state, OptionalDouble temperatureC, double heardT) {
    /** Whether it is believed. */
    public enum State {
        /** No thermometer was ever heard: taps alone. */
        NONE,
        /** It watches the boil. */
        READING,
        /** Nothing of late: taps count until it is back. */
        SILENT,
        /** It shows what water cannot have: its tip is elsewhere, and taps count. */
        ODD,
        /** The cook said not to believe it. */
        SET_ASIDE;

        /** The name on the wire, such as {@code set-aside}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    static CannerProbe of(BoilSense sense, boolean byTaps, double t) {
        boolean speaks = sense.speaks(t);
        State state = State.READING;
        if (!sense.everHeard()) {
            state = State.NONE;
        } else if (byTaps) {
            state = State.SET_ASIDE;
        } else if (!speaks) {
            state = sense.odd() ? State.ODD : State.SILENT;
        }
        boolean shown = speaks || state == State.ODD;
        return new CannerProbe(state, shown ? sense.latestC() : OptionalDouble.empty(), sense.heardT());
    }
}
