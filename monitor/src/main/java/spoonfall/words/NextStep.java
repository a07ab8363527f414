package spoonfall.words;

import java.util.Locale;
import java.util.Optional;
import spoonfall.cook.calm.HowLong;

/**
 * One line of what comes next.
 *
 * @param t seconds of the cook at which it is due, or was
 * @param range the 90 % interval of that time, when it is a forecast
 * @param howLong how long until then, when it is a forecast
 * @param known whether {@code t} is more than the usual minutes where only the pan can tell
 * @param text what it is
 * @param state whether it is done
 */
public record NextStep(
        double t, Optional<Range> range, Optional<HowLong> howLong, boolean known, String text, State state) {
    /**
     * An interval of time.
     *
     * @param fromT its start in seconds of the cook
     * @param untilT its end
     */
    public record Range(double fromT, double untilT) {}

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
