package spoonfall.settest;

import java.util.Locale;

/** How near to its set a preserve was seen to be. */
public enum TestStep {
    /** Well below: drops fall one by one, the plate runs. */
    FAR,
    /** A few tenths of a degree below: drops join, the plate thickens. */
    NEAR,
    /** Below, nobody said how far. */
    NOT_YET,
    /** At its set or beyond: it sheets off, it wrinkles. */
    SET;

    /** The name on the wire, such as {@code not-yet}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
