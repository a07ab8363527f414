package spoonfall.canner;

import java.util.Locale;

/** How the lid of a jar is. */
public enum Seal {
    /** Nobody has looked yet. */
    UNKNOWN,
    /** The middle of the lid is drawn down and does not move. */
    SEALED,
    /** It gives when pressed. */
    UNSEALED;

    /** The name on the wire, such as {@code sealed}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
