package spoonfall.words;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * One line of what comes next.
 *
 * @param t seconds of the cook at which it is due, or was
 * @param untilT end of the interval, when the time is not sharper than one
 * @param text what it is
 * @param state whether it is done
 */
public record NextStep(double t, OptionalDouble untilT, String text, State state) {
    /** Whether a step is done. */
    public enum State {
        /** It happened. */
        DONE,
        /** It comes next. */
        NEXT,
        /** It comes later. */
        LATER;

        /** The name on the wire, such as {@code next}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
