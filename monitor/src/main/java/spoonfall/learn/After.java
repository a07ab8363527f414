package spoonfall.learn;

import java.util.Locale;

/** How long after cooking somebody looked. The later word on a batch counts. */
public enum After {
    /** A day: it is cold, and has set as far as it will for now. */
    DAY,
    /** A month. */
    MONTH;

    /** The name on the wire, such as {@code day}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
