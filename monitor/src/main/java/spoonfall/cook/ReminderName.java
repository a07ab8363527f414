package spoonfall.cook;

import java.util.Locale;

/** What a cook is reminded of. A reminder is no alarm: nothing is wrong, and nobody is called. */
public enum ReminderName {
    /** The plates for the set tests belong in the freezer. */
    CHILL_PLATES,
    /** The jars must be warm when it sets. */
    WARM_JARS,
    /** It is thick, and nobody has stirred for a while. */
    STIR;

    /** The name on the wire, such as {@code chill-plates}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
