package spoonfall.canning;

import java.util.Locale;

/** What is in the jars. */
public enum Food {
    /** Citrus peel in jelly. */
    MARMALADE,
    /** Crushed or cut fruit. */
    JAM,
    /** Strained juice. */
    JELLY,
    /** Anything else: no time is published for it here. */
    OTHER;

    /** The name on the wire, such as {@code marmalade}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** How a sentence begins with it. */
    String title() {
        return name().charAt(0) + wireName().substring(1);
    }
}
