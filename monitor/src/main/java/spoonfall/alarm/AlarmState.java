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
    RETURNED;

    /** Whether what the alarm is about is still so. */
    public boolean active() {
        return this == UNACKNOWLEDGED || this == ACKNOWLEDGED;
    }

    /** The name on the wire, such as {@code unacknowledged}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
