package spoonfall.afternoon;

import java.util.Locale;

/** Who or what began or ended a step. */
public enum By {
    /** Somebody said so. */
    HAND,
    /** The probe saw it. */
    PROBE,
    /** Its time was up. */
    CLOCK,
    /** Another timer said so, such as that of the jars. */
    TIMER;

    /** The name on the wire, such as {@code hand}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
