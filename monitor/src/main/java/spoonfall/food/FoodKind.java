package spoonfall.food;

import java.util.Locale;

/** What a food is to a preserve. */
public enum FoodKind {
    /** Fruit, whole or cut. */
    FRUIT,
    /** The peel of a fruit. */
    PEEL,
    /** Juice of a fruit. */
    JUICE,
    /** Sugar, dry or as a syrup. */
    SUGAR,
    /** Water. */
    WATER,
    /** Anything else, such as ginger. */
    OTHER;

    /** The name in tables and on the wire. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it comes from a fruit, and brings the fruit's pectin and acid. */
    public boolean fromFruit() {
        return this == FRUIT || this == PEEL || this == JUICE;
    }
}
