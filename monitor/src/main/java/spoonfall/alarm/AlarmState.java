package spoonfall.alarm;

import java.util.Locale;

/** Where an alarm is in its life cycle, by the states of ISA-18.2 that Spoonfall uses. */
public enum AlarmState {
    /** Nothing is wrong. */
    NORMAL,
    /** Something is wrong and nobody has said that they know. */
    UNACKNOWLEDGED,
    /** Something is wrong and somebody knows. */
    ACKNOWLEDGED,
    /** It is over, but nobody said that they knew. */
    RETURNED,
    /** Somebody put it aside for a while: it neither calls nor counts. */
    SHELVED,
    /** It means nothing now, by design: it neither calls nor counts, and is not shown. */
    SUPPRESSED;

    /** Whether what the alarm is about is still so, and counts. */
    public boolean active() {
        return this == UNACKNOWLEDGED || this == ACKNOWLEDGED;
    }

    /** The name on the wire, such as {@code unacknowledged}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
