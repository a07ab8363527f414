package spoonfall.alarm;

import java.util.Locale;

/** What happened to an alarm. */
public enum AlarmChange {
    /** What it warns of has begun. */
    RAISED,
    /** Somebody said that they know. */
    ACKNOWLEDGED,
    /** What it warned of is over. */
    CLEARED;

    /** The name on the wire, such as {@code raised}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
