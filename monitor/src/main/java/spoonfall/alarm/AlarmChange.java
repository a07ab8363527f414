package spoonfall.alarm;

import java.util.Locale;

/** What happened to an alarm. */
public enum AlarmChange {
    /** What it warns of has begun. */
    RAISED,
    /** Somebody said that they know. */
    ACKNOWLEDGED,
    /** What it warned of is over. */
    CLEARED,
    /** Somebody put it aside for a while. */
    SHELVED,
    /** It came back from the shelf, because its time was up or because somebody wanted it back. */
    UNSHELVED,
    /** It means nothing now, by design. */
    SUPPRESSED,
    /** It means something again, and still stands. */
    UNSUPPRESSED;

    /** The name on the wire, such as {@code raised}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
