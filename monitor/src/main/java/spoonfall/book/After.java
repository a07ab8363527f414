package spoonfall.book;

import java.util.Locale;

/** How long after the cook a jar was looked at: a set goes on for a day, and a taste for weeks. */
public enum After {
    /** A day. */
    DAY,
    /** A month. */
    MONTH;

    /** The name on the wire, such as {@code day}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The one of that name.
     *
     * @throws IllegalArgumentException with one line that says which there are
     */
    public static After named(String name) {
        return Named.in(values(), After::wireName, name, "a time after the cook");
    }
}
