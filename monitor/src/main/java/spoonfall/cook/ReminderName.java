package spoonfall.cook;

import java.util.Locale;

/**
 * What a cook is reminded of. A reminder is no alarm: nothing is wrong, and nobody is called. The leads are common practice,
 * no source.
 */
public enum ReminderName {
    /** The plates for the set tests belong in the freezer. */
    CHILL_PLATES(15 * 60),
    /** The jars must be warm when it sets. */
    WARM_JARS(10 * 60),
    /** It is thick, and nobody has stirred for a while. */
    STIR(0);

    private final double leadS;

    ReminderName(double leadS) {
        this.leadS = leadS;
    }

    /** How many seconds ahead it is said: of the set tests, or of the set; 0 where nothing is awaited. */
    public double leadS() {
        return leadS;
    }

    /** The name on the wire, such as {@code chill-plates}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
