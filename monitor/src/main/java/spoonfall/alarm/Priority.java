package spoonfall.alarm;

import java.util.Locale;

/** How soon the cook must act, most urgent first. */
public enum Priority {
    /** Act within seconds: the batch is lost otherwise. */
    HIGH,
    /** Act within minutes. */
    MEDIUM,
    /** Worth knowing. */
    LOW;

    /** The name on the wire, such as {@code high}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
